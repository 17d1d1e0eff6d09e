package faintwind.calibration.fit.solving;

import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.fit.numerics.Minimum;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** Frees the runs whose speed contradicts the others of it. */
final class ContradictingSpeeds {
  private ContradictingSpeeds() {}

  /**
   * Runs whose speed contradicts the others are freed of it, and the fit is made again; a run that
   * then agrees, because another one had bent the formula, counts after all.
   */
  static FitResult freed(FitResult fit, BooleanSupplier cancelled) {
    Set<String> off = contradicting(fit);
    off.removeIf(run -> !fit.setup().counts(run));
    if (off.isEmpty() || counting(fit) - off.size() < OwnChoices.LEAST_COUNTING) {
      return fit;
    }
    FitResult without = freed(fit, off, cancelled);
    Set<String> still = contradicting(without);
    still.retainAll(off);
    if (still.isEmpty()) {
      return fit;
    }
    return still.size() == off.size() ? without : freed(fit, still, cancelled);
  }

  private static Set<String> contradicting(FitResult fit) {
    return LeftOutRuns.contradicting(fit).stream()
        .map(LeftOut::run)
        .collect(Collectors.toCollection(HashSet::new));
  }

  private static long counting(FitResult fit) {
    return fit.setup().speedColumns().keySet().stream().filter(fit.setup()::counts).count();
  }

  /**
   * The fit that these runs are freed in too: from where it rests, and from what was expected,
   * because the runs that contradict may have drawn it into a valley that it does not leave without
   * them; the likelier of both.
   */
  private static FitResult freed(FitResult fit, Set<String> runs, BooleanSupplier cancelled) {
    Set<String> free = new HashSet<>(fit.setup().freed());
    free.addAll(runs);
    FitResult near = Refinement.freed(fit, free, cancelled).fromWhere(fit);
    try {
      FitResult anew = Refinement.freed(fit, free, cancelled).fromExpected();
      return anew.deviance() < near.deviance() - OwnChoices.ONE_VALLEY ? anew : near;
    } catch (Minimum.NoneFound none) {
      return near;
    }
  }
}
