package faintwind.calibration.fit.solving;

import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.fit.health.Slip;
import faintwind.calibration.run.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the formula of the other runs reads each moved run. */
public final class LeftOutRuns {
  private LeftOutRuns() {}

  /**
   * Each moved run's speed as the formula of the others reads it. The run's own speed enters the
   * fit as one prior, so leaving it out is a deletion in closed form: with estimate e, variance v
   * and prior variance s², it is e/(1 − v/s²) with variance 1/(1/v − 1/s²).
   */
  public static List<LeftOut> of(FitResult fit) {
    List<LeftOut> found = new ArrayList<>();
    double[] values = fit.values();
    double[][] covariance = fit.covariance();
    for (Run run : fit.setting().heated()) {
      Integer column = fit.setup().speedColumns().get(run.name());
      if (column == null) {
        continue;
      }
      double spread = fit.setup().unknowns().get(column).spread();
      double variance = covariance[column][column];
      double known = 1 - variance / (spread * spread);
      if (known < 0.02) {
        continue;
      }
      double usual = Math.hypot(fit.setup().statedSpread(run.name()), fit.runScatter());
      double speed = RunOutcomes.airSpeed_m_s(fit, run);
      double u = Math.sqrt(variance / known + usual * usual);
      found.add(new LeftOut(run.name(), speed, speed * (1 + values[column] / known), speed * u));
    }
    return found;
  }

  /** Moved runs that the others contradict. */
  public static List<LeftOut> contradicting(FitResult fit) {
    return of(fit).stream()
        .filter(r -> !fit.setting().leftOut().contains(r.run()))
        .filter(
            r -> {
              double off = Math.abs(r.foretold_m_s() - r.speed_m_s());
              return off > OwnChoices.CONTRADICTS * r.u_m_s()
                  && off > OwnChoices.LEAST_CONTRADICTION * r.speed_m_s();
            })
        .toList();
  }

  /** Whether the recordings of two runs ask for the speed that was written of the other. */
  public static boolean exchanged(FitResult fit, String one, String other) {
    List<LeftOut> all = of(fit);
    Optional<LeftOut> first = all.stream().filter(r -> r.run().equals(one)).findFirst();
    Optional<LeftOut> second = all.stream().filter(r -> r.run().equals(other)).findFirst();
    return first.isPresent()
        && second.isPresent()
        && !Slip.isNear(first.get().speed_m_s(), second.get().speed_m_s())
        && Slip.isNear(first.get().foretold_m_s(), second.get().speed_m_s())
        && Slip.isNear(second.get().foretold_m_s(), first.get().speed_m_s());
  }

  /** Root mean square of the relative errors. */
  public static double rms(List<LeftOut> runs) {
    return Math.sqrt(
        runs.stream()
            .mapToDouble(r -> Math.pow(r.foretold_m_s() / r.speed_m_s() - 1, 2))
            .average()
            .orElse(0));
  }
}
