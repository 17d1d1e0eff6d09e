package faintwind.job.turntable;

import faintwind.calibration.run.Recording;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.SignalChain;
import faintwind.files.run.FileKind;
import faintwind.files.run.RunFile;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a runs table with its recordings, to look at them before anything is fitted. */
public final class ReadRuns {
  private ReadRuns() {}

  /** Whether a file is a recording in the form of a run file, not a table of runs. */
  public static boolean isRecording(Path file) throws IOException {
    return Files.exists(file)
        && FileKind.of(file) == FileKind.RUN_FILE
        && RunFile.read(file, file.toString(), SignalChain.Input.VOLTAGE).isOk();
  }

  /**
   * The runs, or everything that is wrong with the table and its files; of a recording by itself
   * what is wrong with that.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<RunSet> read(Path table) throws IOException {
    if (Files.exists(table) && FileKind.of(table) != FileKind.RUNS_TABLE) {
      // what is said of a recording says more than which columns of a table it has not
      Checked<Recording> read = RunFile.read(table, table.toString(), SignalChain.Input.VOLTAGE);
      if (!read.isOk()) {
        return Checked.refused(read.problems());
      }
    }
    return RunsTable.read(table).map(RunsTable::runSet);
  }
}
