package faintwind.calibration.fit;

/**
 * Finds the strength of the wandering that makes the residuals of a fit most likely, one factor
 * after the other on a logarithmic scale.
 */
final class WanderSearch {
  private static final double LEAST = 1e-6;
  private static final double MOST = 30;

  private final RunProblem problem;

  /** Looks at the residuals of the problem's last integration. */
  WanderSearch(RunProblem problem) {
    this.problem = problem;
  }

  Wander from(Wander start) {
    Wander best = start;
    double least = deviance(best);
    for (double factor = 8; factor > 1.05; factor = Math.sqrt(factor)) {
      boolean better = true;
      while (better) {
        better = false;
        for (int which = 0; which < 6; which++) {
          Wander next = moved(best, which, factor);
          double deviance = deviance(next);
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
    return switch (which / 2) {
      case 0 -> new Wander(clamp(wander.rest_s() * by), wander.moved_s(), wander.white());
      case 1 -> new Wander(wander.rest_s(), clamp(wander.moved_s() * by), wander.white());
      default ->
          new Wander(
              wander.rest_s(),
              wander.moved_s(),
              Math.min(5, Math.max(0.7, wander.white() * Math.sqrt(by))));
    };
  }

  private static double clamp(double strength) {
    return Math.min(MOST, Math.max(LEAST, strength));
  }

  private double deviance(Wander wander) {
    double sum = 0;
    for (int k = 0; k < problem.tracks().size(); k++) {
      sum +=
          Whitening.of(problem.tracks().get(k).rows, problem.course(k), wander)
              .deviance(problem.residuals(k));
    }
    return sum;
  }
}
