package faintwind.command.record;

import faintwind.job.record.AtInstrument;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import faintwind.terminal.WhoOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The instrument that a command writes to, and in whose name. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class InstrumentOptions {
  @Parameters(index = "0", paramLabel = "FOLDER", descriptionKey = "instrument-folder")
  private Path folder = Path.of("");

  @Mixin private WhoOption who = new WhoOption();

  Path folder() {
    return folder;
  }

  String who() {
    return who.name();
  }

  public static Clock clock() {
    return Clock.system(ZoneId.systemDefault());
  }

  AtInstrument instrument(Terminal terminal) {
    return new AtInstrument(folder, clock(), who.name(), terminal.messages().locale());
  }
}
