package faintwind.accuracy;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.JobWatch;
import faintwind.job.field.Convert;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A converted field log beside its true speed, row by row. */
record ScoredLog(List<Row> rows) {

  /**
   * One row.
   *
   * @param time_s time
   * @param truth_m_s true speed
   * @param speed_m_s reading
   * @param u95_m_s its stated uncertainty
   * @param flag its flag
   */
  record Row(double time_s, double truth_m_s, double speed_m_s, double u95_m_s, String flag) {
    boolean usable() {
      return flag.isEmpty();
    }
  }

  /** Rows of one steady true speed, from its begin to its end. */
  record Hold(double truth_m_s, List<Row> rows) {}

  ScoredLog {
    rows = List.copyOf(rows);
  }

  static ScoredLog convert(
      Calibration calibration, Path log, Path truth, SpeedSettings settings, Path scratch)
      throws IOException {
    Path out = scratch.resolve("speeds.csv");
    Checked<?> done = new Convert(calibration, "test", settings).file(log, out, JobWatch.NOBODY);
    if (!done.isOk()) {
      throw new IllegalStateException(log + ": " + done.problems());
    }
    return beside(Files.readAllLines(out), Files.readAllLines(truth));
  }

  private static ScoredLog beside(List<String> speeds, List<String> truths) {
    List<Row> rows = new ArrayList<>();
    int truth = 1;
    for (String line : speeds.subList(1, speeds.size())) {
      String[] cells = line.split(",", -1);
      int last = cells.length - 1;
      double time_s = Double.parseDouble(cells[0]);
      String[] true_ = truths.get(truth).split(",", -1);
      while (truth < truths.size() - 1 && Double.parseDouble(true_[0]) < time_s - 1e-6) {
        truth++;
        true_ = truths.get(truth).split(",", -1);
      }
      if (!cells[last - 2].isEmpty()) {
        rows.add(
            new Row(
                time_s,
                Double.parseDouble(true_[1]),
                Double.parseDouble(cells[last - 2]),
                Double.parseDouble(cells[last - 1]),
                cells[last]));
      }
    }
    return new ScoredLog(rows);
  }

  /** Runs of constant true speed of at least 300 s. */
  List<Hold> holds() {
    List<Hold> holds = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= rows.size(); i++) {
      boolean ends = i == rows.size() || rows.get(i).truth_m_s() != rows.get(from).truth_m_s();
      if (ends) {
        if (rows.get(i - 1).time_s() - rows.get(from).time_s() >= 300) {
          holds.add(new Hold(rows.get(from).truth_m_s(), rows.subList(from, i)));
        }
        from = i;
      }
    }
    return holds;
  }
}
