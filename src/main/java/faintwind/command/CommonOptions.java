package faintwind.command;

import faintwind.job.OutputPath;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** What every command that writes understands. */
public class CommonOptions {
  @Option(names = "--force", descriptionKey = "force")
  private boolean force;

  /** Where an output goes, and whether it may replace what is there. */
  public OutputPath output(Path path) {
    return new OutputPath(path, force ? OutputPath.Existing.REPLACE : OutputPath.Existing.KEEP);
  }
}
