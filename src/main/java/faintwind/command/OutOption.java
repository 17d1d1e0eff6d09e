package faintwind.command;

import faintwind.job.OutputPath;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The one file that a command writes, with what every command understands. */
final class OutOption {
  @Option(names = "--out", required = true, paramLabel = "FILE", descriptionKey = "out")
  private Path out = Path.of("");

  @Mixin private StandardOptions common = new StandardOptions();

  Path path() {
    return out;
  }

  /** Why nothing may be written there, if so. */
  Optional<Problem> trouble(List<Path> inputs) throws IOException {
    return output(out).trouble(inputs);
  }

  /** A further output under the same rule for what is in the way. */
  OutputPath output(Path further) {
    return common.output(further);
  }
}
