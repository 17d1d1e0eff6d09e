package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.wander.RoomBounds;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.WanderDeviance;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the strength of the wandering that makes the residuals of a fit most likely, one factor
 * after the other on a logarithmic scale.
 */
public final class WanderSearch {
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
        for (int which = 0; which < 10; which++) {
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

  /** One of the five by a factor, the others as they are; the same where a room does no more. */
  private static Wander moved(Wander wander, int which, double factor) {
    double by = which % 2 == 0 ? factor : 1 / factor;
    double root = Math.sqrt(by);
    return switch (which / 2) {
      case 0 -> RoomBounds.within(wander.withRest_s(wander.rest_s() * by));
      case 1 -> RoomBounds.within(wander.withTurning_s(wander.turning_s() * by));
      case 2 -> RoomBounds.within(wander.withDraught_m2_s(wander.draught_m2_s() * by));
      case 3 -> RoomBounds.within(wander.withWhite(wander.white() * root));
      default -> RoomBounds.within(wander.withMemory_s(wander.memory_s() * root));
    };
  }

  private double deviance(Wander wander) {
    double sum = RoomBounds.deviance(wander);
    for (WanderDeviance track : tracks) {
      sum += track.of(wander);
    }
    return sum;
  }
}
