package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.WanderDeviance;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the strength of the wandering that makes the residuals of a fit most likely, one factor
 * after the other on a logarithmic scale.
 */
public final class WanderSearch {
  private static final double LEAST = 1e-6;
  private static final double MOST = 30;

  /** Scale of the draught's range: that of a slow speed squared, m²/s². */
  private static final double SLOW = 0.01;

  private final List<WanderDeviance> tracks = new ArrayList<>();

  /** Looks at the residuals of the problem's last integration. */
  public WanderSearch(RunProblem problem) {
    for (int k = 0; k < problem.tracks().size(); k++) {
      tracks.add(
          new WanderDeviance(
              problem.tracks().get(k).rows, problem.course(k), problem.residuals(k)));
    }
  }

  public Wander from(Wander start) {
    Wander best = start;
    double least = deviance(best);
    for (double factor = 8; factor > 1.05; factor = Math.sqrt(factor)) {
      boolean better = true;
      while (better) {
        better = false;
        for (int which = 0; which < 8; which++) {
          Wander next = moved(best, which, factor);
          double deviance = next.equals(best) ? least : deviance(next);
          if (deviance < least - 1e-6) {
            least = deviance;
            best = next;
            better = true;
          }
        }
      }
    }
    return best;
  }

  private static Wander moved(Wander wander, int which, double factor) {
    double by = which % 2 == 0 ? factor : 1 / factor;
    double rest = which / 2 == 0 ? clamp(wander.rest_s() * by, 1) : wander.rest_s();
    double turning = which / 2 == 1 ? clamp(wander.turning_s() * by, 1) : wander.turning_s();
    double draught =
        which / 2 == 2 ? clamp(wander.draught_m2_s() * by, SLOW) : wander.draught_m2_s();
    double white =
        which / 2 == 3
            ? Math.min(5, Math.max(0.4, wander.white() * Math.sqrt(by)))
            : wander.white();
    return new Wander(rest, turning, draught, white);
  }

  private static double clamp(double strength, double unit) {
    return Math.min(MOST * unit, Math.max(LEAST * unit, strength));
  }

  private double deviance(Wander wander) {
    double sum = 0;
    for (WanderDeviance track : tracks) {
      sum += track.of(wander);
    }
    return sum;
  }
}
