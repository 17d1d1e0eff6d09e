package faintwind.command.record;

import faintwind.job.record.BeginInstrument;
import faintwind.message.Checked;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code faintwind new FOLDER [--name NAME] [--design DESIGN.json]}. */
@Command(name = "new")
public final class NewCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Option(names = "--name", paramLabel = "NAME", descriptionKey = "faintwind.new.name")
  private @Nullable String name;

  @Option(names = "--design", paramLabel = "DESIGN.json", descriptionKey = "faintwind.new.design")
  private @Nullable Path design;

  public NewCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    BeginInstrument job = new BeginInstrument(InstrumentOptions.clock(), at.who());
    Checked<Path> begun =
        job.begin(at.folder(), Optional.ofNullable(name), Optional.ofNullable(design));
    if (!begun.isOk()) {
      return terminal.refuse(begun.problems());
    }
    terminal.report(begun.problems());
    terminal.say("new.begun", at.folder().toString());
    return ExitCode.DONE.number();
  }
}
