package faintwind.command;

import faintwind.job.record.HandOver;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code faintwind pack FOLDER --out ARCHIVE.zip}. */
@Command(name = "pack")
public final class PackCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "FOLDER", descriptionKey = "instrument-folder")
  private Path folder = Path.of("");

  @Mixin private OutOption out = new OutOption();

  public PackCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Optional<Problem> trouble = out.trouble(List.of(folder));
    if (trouble.isPresent()) {
      return terminal.misuse(trouble.get());
    }
    Checked<String> packed = HandOver.pack(folder, out.path());
    return terminal.end(
        packed,
        it -> {
          terminal.say("pack.written", out.path().toString());
          terminal.say("pack.head", it);
        });
  }
}
