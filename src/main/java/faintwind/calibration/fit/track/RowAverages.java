package faintwind.calibration.fit.track;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import java.util.ArrayList;
import java.util.List;

/**
 * Averages rows over short spans: hardly where the arm's motion changes (the mean of a curve lies
 * off the curve, and the start carries what is known of the carried air), finely for a minute after
 * it, coarsely elsewhere.
 */
public final class RowAverages {
  private static final double BEFORE_S = 6;
  private static final double FINEST_S = 1;
  private static final double FINEST_FOR_S = 20;
  private static final double FINE_S = 3;
  private static final double COARSE_S = 8;
  private static final double FINE_FOR_S = 60;

  private RowAverages() {}

  /** Averaged rows of a file without the rows at {@code left out}. */
  public static Track.Rows of(FileRows file, List<Integer> leftOut) {
    Series signal = file.signal();
    List<double[]> rows = new ArrayList<>();
    double[] changes = changes(file);
    double step = file.step_s();
    double sumTime = 0;
    double sumValue = 0;
    int count = 0;
    double from = 0;
    for (int i = 0; i < signal.size(); i++) {
      if (leftOut.contains(i)) {
        continue;
      }
      double t = signal.time_s(i);
      boolean gap = count > 0 && t - sumTime / count > 3 * step + width(changes, from);
      if (count > 0 && (gap || t - from >= width(changes, from) || crosses(changes, from, t))) {
        rows.add(new double[] {sumTime / count, sumValue / count, count});
        count = 0;
        sumTime = 0;
        sumValue = 0;
      }
      if (count == 0) {
        from = t;
      }
      sumTime += t;
      sumValue += signal.value(i);
      count++;
    }
    if (count > 0) {
      rows.add(new double[] {sumTime / count, sumValue / count, count});
    }
    return pack(file, rows);
  }

  private static Track.Rows pack(FileRows file, List<double[]> rows) {
    int n = rows.size();
    double[] time = new double[n];
    double[] value = new double[n];
    int[] count = new int[n];
    int[] run = new int[n];
    for (int i = 0; i < n; i++) {
      time[i] = rows.get(i)[0];
      value[i] = rows.get(i)[1];
      count[i] = (int) rows.get(i)[2];
      run[i] = file.runAt(time[i]);
    }
    return new Track.Rows(time, value, count, run);
  }

  /** Times at which something changes, sorted. */
  static double[] changes(FileRows file) {
    List<Double> times = new ArrayList<>();
    times.add(file.signal().first_s());
    for (Run run : file.runs()) {
      run.arm().ifPresent(arm -> times.add(arm.spinStart_s()));
      run.arm().ifPresent(arm -> times.add(arm.spinStop_s()));
      if (run.reference_m_s().isPresent()) {
        times.add(run.recording().signal().first_s());
      }
    }
    return times.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private static double width(double[] changes, double t) {
    double width = COARSE_S;
    for (double change : changes) {
      if (t >= change - BEFORE_S && t < change + FINEST_FOR_S) {
        return FINEST_S;
      }
      if (t >= change - BEFORE_S && t < change + FINE_FOR_S) {
        width = FINE_S;
      }
    }
    return width;
  }

  private static boolean crosses(double[] changes, double from, double to) {
    for (double change : changes) {
      if (from < change && to >= change) {
        return true;
      }
    }
    return false;
  }
}
