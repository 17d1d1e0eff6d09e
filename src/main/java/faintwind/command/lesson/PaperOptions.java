package faintwind.command.lesson;

import faintwind.command.CommonOptions;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A class and the page that is written about it, on the command line. */
final class PaperOptions {
  @Parameters(paramLabel = "FOLDER", descriptionKey = "faintwind.class.folder")
  private Path folder = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      descriptionKey = "faintwind.class.out")
  private Path out = Path.of("");

  @Mixin private CommonOptions common = new CommonOptions();

  Path folder() {
    return folder;
  }

  Path out() {
    return out;
  }

  CommonOptions common() {
    return common;
  }
}
