package faintwind.command;

import faintwind.job.record.HandOver;
import faintwind.message.Checked;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code faintwind unpack ARCHIVE.zip INTO}. */
@Command(
    name = "unpack",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class UnpackCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "ARCHIVE.zip", descriptionKey = "faintwind.unpack.archive")
  private Path archive = Path.of("");

  @Parameters(index = "1", paramLabel = "INTO", descriptionKey = "faintwind.unpack.into")
  private Path into = Path.of("");

  public UnpackCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Checked<HandOver.TakenIn> taken = HandOver.unpack(archive, into);
    return terminal.end(
        taken,
        it -> {
          terminal.say("unpack.done", it.folder().toString());
          terminal.say("pack.head", it.head());
        });
  }
}
