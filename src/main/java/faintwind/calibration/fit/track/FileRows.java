package faintwind.calibration.fit.track;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The rows of every run that shares one file, as one recording.
 *
 * @param file the file
 * @param runs its runs in order of time
 * @param signal every row once, in order of time
 */
public record FileRows(String file, List<Run> runs, Series signal) {

  public static FileRows of(String file, List<Run> runs) {
    List<Run> sorted =
        runs.stream()
            .sorted(Comparator.comparingDouble(r -> r.recording().signal().first_s()))
            .toList();
    return new FileRows(
        file, sorted, join(sorted, r -> Optional.of(r.recording().signal())).orElseThrow());
  }

  /** One channel of all runs joined; empty where no run has it. */
  public Optional<Series> channel(Function<Run, Optional<Series>> channel) {
    return join(runs, channel);
  }

  private static Optional<Series> join(List<Run> runs, Function<Run, Optional<Series>> channel) {
    TreeMap<Double, Double> rows = new TreeMap<>();
    for (Run run : runs) {
      channel
          .apply(run)
          .ifPresent(
              series -> {
                for (int i = 0; i < series.size(); i++) {
                  rows.put(series.time_s(i), series.value(i));
                }
              });
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    double[] times = rows.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    double[] values = rows.values().stream().mapToDouble(Double::doubleValue).toArray();
    return Optional.of(Series.of(times, values));
  }

  /** Index in {@link #runs} of the run to which a time belongs. */
  int runAt(double t_s) {
    int found = 0;
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).recording().signal().first_s() <= t_s) {
        found = i;
      }
    }
    return found;
  }

  /** Usual step between rows, s. */
  public double step_s() {
    return medianStep(signal);
  }

  public static double medianStep(Series series) {
    if (series.size() < 2) {
      return 1;
    }
    double[] steps = new double[series.size() - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = series.time_s(i + 1) - series.time_s(i);
    }
    return new Median().evaluate(steps);
  }
}
