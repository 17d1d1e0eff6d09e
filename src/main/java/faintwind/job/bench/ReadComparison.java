package faintwind.job.bench;

import faintwind.calibration.Calibration;
import faintwind.calibration.field.SpeedSeries;
import faintwind.files.air.SpeedsFile;
import faintwind.files.calibration.CalibrationFile;
import faintwind.job.bench.BenchRow.Kind;
import faintwind.job.bench.CompareBench.One;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.LogConverted;
import faintwind.report.plot.PlotPoints;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads instruments that are to be compared, as far as each can be read. */
public final class ReadComparison {
  private static final int POINTS = 600;
  private static final double HOUR_s = 3600;

  private ReadComparison() {}

  /**
   * Reads them. One that cannot be read is among them with its reason; the others are compared.
   *
   * @return refused where none can be read
   */
  public static Checked<CompareBench> of(List<Path> folders, Messages words, OffsetDateTime now) {
    ReadBench bench = new ReadBench(words);
    List<One> ones = new ArrayList<>();
    for (Path folder : folders) {
      try {
        ones.add(
            bench
                .look(folder, now)
                .fold(
                    (looked, notes) -> one(folder, looked, now),
                    refused -> unread(ReadBench.broken(folder, words.lines(refused)))));
      } catch (IOException world) {
        ones.add(unread(ReadBench.broken(folder, String.valueOf(world.getMessage()))));
      }
    }
    boolean any = ones.stream().anyMatch(one -> one.row().need().kind() != Kind.BROKEN);
    return any
        ? Checked.ok(new CompareBench(ones))
        : Checked.refused(ones.stream().map(ReadComparison::problem).toList());
  }

  private static Problem problem(One one) {
    Where where = Where.file(one.row().folder().toString());
    return Problem.error("bench-compare.unread", where, one.row().need().reason());
  }

  private static One unread(BenchRow row) {
    return new One(row, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static One one(Path folder, ReadBench.Looked looked, OffsetDateTime now) {
    Optional<Calibration> calibration =
        looked.row().inForce().flatMap(f -> calibration(folder, f.file()));
    Optional<PlotPoints> log =
        looked
            .view()
            .state()
            .last(LogConverted.class)
            .flatMap(line -> log(folder.resolve(line.event().speeds())));
    return new One(looked.row(), looked.view().situation(now).sheet(), calibration, log);
  }

  /** Empty where its file is not there or cannot be read; that is said. */
  private static Optional<Calibration> calibration(Path folder, String file) {
    try {
      return CalibrationFile.read(folder.resolve(file), file)
          .fold((it, notes) -> Optional.of(it), problems -> Optional.empty());
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<PlotPoints> log(Path speeds) {
    try {
      return SpeedsFile.read(speeds)
          .fold((file, notes) -> thinned(file.rows()), problems -> Optional.empty());
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  /** Means over equal stretches, speed and uncertainty alike; those without a reading left out. */
  private static Optional<PlotPoints> thinned(SpeedSeries rows) {
    if (rows.size() == 0) {
      return Optional.empty();
    }
    double from_s = rows.time_s(0);
    double span_s = rows.time_s(rows.size() - 1) - from_s;
    double[] speed = new double[POINTS];
    double[] u95 = new double[POINTS];
    int[] count = new int[POINTS];
    for (int i = 0; i < rows.size(); i++) {
      if (rows.isUsed(i)) {
        int at =
            (int)
                Math.min(POINTS - 1, span_s > 0 ? POINTS * (rows.time_s(i) - from_s) / span_s : 0);
        speed[at] += rows.speed_m_s(i);
        u95[at] += rows.u95_m_s(i);
        count[at]++;
      }
    }
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      if (count[i] > 0) {
        double mean = speed[i] / count[i];
        double wide = u95[i] / count[i];
        double hours = (i + 0.5) / POINTS * span_s / HOUR_s;
        points.add(new double[] {hours, mean, Math.max(0, mean - wide), mean + wide});
      }
    }
    return points.isEmpty()
        ? Optional.empty()
        : Optional.of(
            PlotPoints.withBand(
                column(points, 0), column(points, 1), column(points, 2), column(points, 3)));
  }

  private static double[] column(List<double[]> points, int column) {
    return points.stream().mapToDouble(p -> p[column]).toArray();
  }
}
