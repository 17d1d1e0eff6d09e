package faintwind.command.lesson;

import faintwind.job.lesson.SignOff;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a teacher signs, on the command line. */
final class SignOptions {
  @Parameters(index = "0", paramLabel = "FOLDER", descriptionKey = "faintwind.class.folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "PAIR", descriptionKey = "faintwind.class.pair")
  private int pair;

  @Parameters(index = "2", paramLabel = "STEP", descriptionKey = "faintwind.class.step")
  private String step = "";

  @Parameters(
      index = "3",
      arity = "0..1",
      paramLabel = "WHAT",
      descriptionKey = "faintwind.class.what")
  private @Nullable String what;

  @Option(
      names = "--because",
      required = true,
      paramLabel = "REASON",
      descriptionKey = "faintwind.class.because")
  private String because = "";

  @Option(
      names = "--code",
      required = true,
      paramLabel = "CODE",
      descriptionKey = "faintwind.class.code")
  private String code = "";

  Path folder() {
    return folder;
  }

  String code() {
    return code;
  }

  SignOff.Signed signed() {
    return new SignOff.Signed(pair, step, Optional.ofNullable(what), because);
  }
}
