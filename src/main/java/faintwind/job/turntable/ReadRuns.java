package faintwind.job.turntable;

import faintwind.calibration.run.RunSet;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;

/** Reads a runs table with its recordings, to look at them before anything is fitted. */
public final class ReadRuns {
  private ReadRuns() {}

  /**
   * The runs, or everything that is wrong with the table and its files.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<RunSet> read(Path table) throws IOException {
    return RunsTable.read(table).map(RunsTable::runSet);
  }
}
