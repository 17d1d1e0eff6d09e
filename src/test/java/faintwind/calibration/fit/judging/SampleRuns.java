package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.files.run.RunFile;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import faintwind.physics.AirState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The sample runs (simulated, invented: see their README), and how a formula reads their probe log:
 * noiseless holds at twelve speeds, by the heat balance over the last third of each.
 */
public final class SampleRuns {
  private static final Path FOLDER = Path.of("src/test/resources/sample-runs");
  private static final double REACH_S = 15;

  private SampleRuns() {}

  public static RunSet of(String bench) {
    try {
      return value(RunsTable.read(FOLDER.resolve(bench + "/in/runs.csv"))).runSet();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static <T> T value(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  /**
   * One hold of the probe log.
   *
   * @param true_m_s true speed
   * @param read_m_s speed read
   */
  record Hold(double true_m_s, double read_m_s) {
    double relative() {
      return read_m_s / true_m_s - 1;
    }
  }

  /** The holds of a bench's probe log from 0.1 to 3 m/s as the fit reads them. */
  static List<Hold> probe(String bench, FitResult fit) {
    try {
      Recording log =
          value(
              RunFile.read(
                  FOLDER.resolve(bench + "/in/field_probe.csv"),
                  "probe",
                  SignalChain.Input.VOLTAGE));
      List<String> truth =
          Files.readAllLines(FOLDER.resolve(bench + "/truth/field_probe_truth.csv"));
      List<Hold> holds = new ArrayList<>();
      int from = 1;
      while (from < truth.size()) {
        String speed = truth.get(from).split(",", -1)[1];
        int to = from;
        while (to + 1 < truth.size() && truth.get(to + 1).split(",", -1)[1].equals(speed)) {
          to++;
        }
        double true_m_s = Double.parseDouble(speed);
        double start_s = Double.parseDouble(truth.get(from).split(",", -1)[0]);
        double stop_s = Double.parseDouble(truth.get(to).split(",", -1)[0]);
        if (true_m_s > 0.0999 && true_m_s < 3.01) {
          double third_s = stop_s - (stop_s - start_s) / 3;
          holds.add(new Hold(true_m_s, read(fit, log, third_s, stop_s)));
        }
        from = to + 1;
      }
      return holds;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double read(FitResult fit, Recording log, double from_s, double to_s) {
    Formula formula = fit.formula();
    Recording part = log.window(from_s, to_s);
    AirState cal = fit.setting().referenceAir();
    AirPoint air =
        AirPoint.of(
            new AirState(
                part.air_K().map(Series::mean).orElse(cal.temperature_K()),
                part.pressure_Pa().map(Series::mean).orElse(cal.pressure_Pa()),
                cal.relativeHumidity()));
    OptionalDouble supply =
        part.supply_V().isPresent()
            ? OptionalDouble.of(part.supply_V().get().mean())
            : OptionalDouble.empty();
    List<Double> speeds = new ArrayList<>();
    for (double t = from_s; t <= to_s - REACH_S; t += 5) {
      double bead = formula.delta_K(log.signal().at(t), air.air_K());
      double slope =
          (formula.delta_K(log.signal().at(t + REACH_S), air.air_K())
                  - formula.delta_K(log.signal().at(t - REACH_S), air.air_K()))
              / (2 * REACH_S);
      double delta = bead + formula.path().beadTime_s() * slope;
      double loss = (formula.heating_K_s(supply) - slope) / delta;
      speeds.add(formula.speed_m_s(loss, delta, air));
    }
    return new Median().evaluate(speeds.stream().mapToDouble(Double::doubleValue).toArray());
  }

  static double rms(List<Hold> holds) {
    return Math.sqrt(
        holds.stream().mapToDouble(h -> h.relative() * h.relative()).average().orElseThrow());
  }
}
