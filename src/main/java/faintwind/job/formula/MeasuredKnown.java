package faintwind.job.formula;

import faintwind.calibration.Measured;
import faintwind.calibration.Measured.By;
import faintwind.files.Sha256;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * What is known of the measurement of runs without asking anybody.
 *
 * @param sha256 of the runs table
 * @param dated when it was, where the recordings say so
 * @param by what the instrument's record knows of operator, place, arm, meter and logger
 */
public record MeasuredKnown(String sha256, Optional<Measured> dated, Map<By, String> by) {
  public MeasuredKnown {
    by = Map.copyOf(by);
  }

  /**
   * Looks at the recordings of a runs table and at the record around it.
   *
   * @return refused where the table cannot be read
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<MeasuredKnown> of(Path table) throws IOException {
    Checked<BuildRecord> record = BuildRecord.around(table);
    Checked<RunsTable> runs = RunsTable.read(table);
    String sha256 = Files.exists(table) ? Sha256.of(table) : "";
    return record.then(
        known ->
            runs.map(
                read ->
                    new MeasuredKnown(
                        sha256,
                        MeasuredWhen.NOT_SAID.of(read.runSet().runs(), known.by()),
                        known.by())));
  }

  /** Whether a formula was made from these runs. */
  public boolean isOf(KeepFormula.Kept kept) {
    return kept.formula().calibration().origin().inputSha256().containsValue(sha256);
  }
}
