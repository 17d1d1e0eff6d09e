package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.RunSet;
import faintwind.files.Sha256;
import faintwind.files.run.ChainFile;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Finds the very recordings that a calibration was made from, by the SHA-256 of its inputs. */
public final class FormulaRuns {
  private FormulaRuns() {}

  /** Every runs table that is on record, the last kept first. */
  public static List<Path> tables(InstrumentState state, Path folder) {
    List<Path> tables = new ArrayList<>();
    state.standing(FileAdded.class).stream()
        .filter(line -> line.event().kind() == FileRole.RUNS_TABLE)
        .forEach(line -> tables.add(folder.resolve(line.event().file())));
    Collections.reverse(tables);
    return tables;
  }

  /**
   * The runs of a calibration, with what is on record of the build.
   *
   * @param tables where they may be
   * @return refused where no table with all its files is the one of the calibration, naming the
   *     files of the nearest that are missing or changed
   * @throws IOException where a file that is there cannot be read
   */
  public static Checked<RunSet> of(Calibration calibration, List<Path> tables) throws IOException {
    Map<String, String> inputs = calibration.origin().inputSha256();
    List<String> nearest = List.of();
    for (Path table : tables) {
      if (!inputs.containsKey(String.valueOf(table.getFileName())) || !Files.exists(table)) {
        continue;
      }
      List<String> differing = differing(inputs, table);
      if (differing.isEmpty()) {
        return read(table);
      }
      nearest = nearest.isEmpty() || differing.size() < nearest.size() ? differing : nearest;
    }
    return Checked.refused(
        nearest.isEmpty()
            ? Problem.warning("formula-runs.missing", Where.NOWHERE, "")
            : Problem.warning("formula-runs.changed", Where.NOWHERE, String.join(", ", nearest)));
  }

  private static List<String> differing(Map<String, String> inputs, Path table) throws IOException {
    List<String> differing = new ArrayList<>();
    for (Map.Entry<String, String> input : inputs.entrySet()) {
      Path file = table.resolveSibling(input.getKey());
      if (!Files.isRegularFile(file) || !Sha256.of(file).equals(input.getValue())) {
        differing.add(input.getKey());
      }
    }
    boolean chainCameLater =
        !inputs.containsKey(ChainFile.NAME) && Files.exists(table.resolveSibling(ChainFile.NAME));
    if (chainCameLater) {
      differing.add(ChainFile.NAME);
    }
    return differing;
  }

  private static Checked<RunSet> read(Path table) throws IOException {
    Checked<BuildRecord> build = BuildRecord.around(table);
    return RunsTable.read(table)
        .then(
            runs ->
                build.map(
                    record ->
                        new RunSet(runs.runSet().runs(), runs.runSet().chain(), record.facts())
                            .counted()));
  }
}
