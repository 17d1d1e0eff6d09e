package faintwind.job.field;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.SignalChain;
import faintwind.files.AtomicFile;
import faintwind.files.run.LeftOutTable;
import faintwind.files.run.RunFile;
import faintwind.job.FreeName;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A runs table whose recordings a foreign logger made: run files take their place. */
public final class ForeignRuns {
  /** The problem that says that a recording is a foreign logger's. */
  public static final String FOREIGN = "file.foreign";

  private ForeignRuns() {}

  /** Whether a file is a recording, and one that needs a profile. */
  public static boolean isForeign(Path recording) throws IOException {
    return Files.isRegularFile(recording)
        && RunFile.read(recording, recording.toString(), SignalChain.Input.VOLTAGE)
            .problems()
            .stream()
            .anyMatch(problem -> problem.id().equals(FOREIGN));
  }

  /**
   * Writes a run file for each foreign recording beside it, and a table that names them.
   *
   * @param profile what the lines of the recordings mean
   * @return the new table, beside the one before
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Path> toRunFiles(Path table, ImportProfile profile) throws IOException {
    Checked<List<String>> named = LeftOutTable.recordings(table);
    if (!(named instanceof Checked.Ok<List<String>> ok)) {
      return Checked.refused(named.problems());
    }
    Map<String, String> names = new TreeMap<>();
    for (String name : ok.value()) {
      Path recording = table.resolveSibling(name);
      if (isForeign(recording)) {
        Checked<Path> made = ForeignLog.toRunFile(recording, profile);
        if (!(made instanceof Checked.Ok<Path> run)) {
          return Checked.refused(made.problems());
        }
        String fresh = String.valueOf(run.value().getFileName());
        names.put(name, Path.of(name).resolveSibling(fresh).toString().replace('\\', '/'));
      }
    }
    Checked<String> text = LeftOutTable.renamed(table, names);
    if (!(text instanceof Checked.Ok<String> whole)) {
      return Checked.refused(text.problems());
    }
    Path fresh = FreeName.beside(table, "runs.csv");
    AtomicFile.write(fresh, whole.value().getBytes(StandardCharsets.UTF_8));
    return Checked.ok(fresh);
  }
}
