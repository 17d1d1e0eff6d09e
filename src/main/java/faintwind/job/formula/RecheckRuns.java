package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.Recheck;
import faintwind.files.Sha256;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Reads the runs of a short check: a runs table like any other, of one or two speeds. */
public final class RecheckRuns {
  private RecheckRuns() {}

  /**
   * What came of a check.
   *
   * @param runs each run that says how fast the air moved
   * @param files the table and its recordings, by their names in the table
   * @param sha256 of the calibration
   */
  public record Check(List<Recheck.AtRun> runs, Map<String, Path> files, String sha256) {
    public Check {
      runs = List.copyOf(runs);
    }

    /** Whether every run agrees. */
    public boolean agrees() {
      return runs.stream().allMatch(run -> run.en().isSatisfactory());
    }

    /** What each run showed, a sentence each. */
    public List<String> said(Messages words) {
      return runs.stream().map(run -> said(run, words)).toList();
    }

    private static String said(Recheck.AtRun run, Messages words) {
      return words.text(
          run.en().isSatisfactory() ? "recheck.agrees" : "recheck.differs",
          run.run(),
          Numerals.compact(run.speed_m_s(), 3),
          Numerals.compact(run.u95_m_s(), 2),
          Numerals.compact(run.read_m_s(), 3),
          Numerals.compact(run.u95_read_m_s(), 2),
          Numerals.signed(run.en().value(), 2));
    }
  }

  /**
   * What a calibration reads at the runs of a table.
   *
   * @return refused where one of the two cannot be read, or no run says how fast the air moved
   * @throws IOException where something that is there cannot be read
   */
  public static Checked<Check> check(Path calibration, Path table) throws IOException {
    Checked<Calibration> by = OpenCalibration.read(calibration);
    Checked<RunsTable> turned = RunsTable.readForCheck(table);
    String sha256 = Files.isRegularFile(calibration) ? Sha256.of(calibration) : "";
    return by.then(
        known ->
            turned.then(
                runs -> {
                  List<Recheck.AtRun> found = Recheck.of(known, runs.runSet().runs());
                  return found.isEmpty()
                      ? Checked.refused(
                          Problem.error("recheck.none", Where.file(table.toString()), ""))
                      : Checked.ok(new Check(found, runs.files(), sha256));
                }));
  }
}
