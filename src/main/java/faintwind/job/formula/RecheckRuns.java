package faintwind.job.formula;

import faintwind.calibration.run.Run;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Reads the runs of a short check: a runs table like any other, of one or two speeds. */
public final class RecheckRuns {
  private RecheckRuns() {}

  /**
   * The runs with their recordings.
   *
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<List<Run>> read(Path table) throws IOException {
    return RunsTable.readForCheck(table).map(runs -> runs.runSet().runs());
  }
}
