package faintwind.calibration.fit.solving;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Looks for what went wrong with the speeds of several runs at once and bends the formula, so that
 * the runs that contradict it are not those that are wrong.
 */
final class SpeedPatterns {
  private SpeedPatterns() {}

  /**
   * Two runs whose speeds were exchanged bend the formula and blame others; where the speeds
   * scatter, each two that are near in speed are freed together, and the pair is taken whose
   * recordings ask for the speed of the other.
   */
  static Optional<FitResult> withoutExchanged(FitResult fit, BooleanSupplier cancelled) {
    boolean scatter = SetAside.speedsScatter(fit) || !fit.setup().freed().isEmpty();
    List<String> runs = scatter ? SetAside.bySpeed(fit) : List.of();
    Optional<FitResult> best = Optional.empty();
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1;
          j <= i + 2 && j < runs.size() && runs.size() >= OwnChoices.LEAST_FOR_PATTERN;
          j++) {
        Set<String> pair = new HashSet<>(fit.aside());
        pair.addAll(List.of(runs.get(i), runs.get(j)));
        FitResult trial = Refinement.freed(fit, pair, cancelled).fromExpected();
        boolean better =
            trial.runScatter() < OwnChoices.HALF * Math.max(fit.runScatter(), OwnChoices.SCATTERED)
                && LeftOutRuns.exchanged(trial, runs.get(i), runs.get(j))
                && best.map(b -> trial.deviance() < b.deviance()).orElse(true);
        best = better ? Optional.of(trial) : best;
      }
    }
    return best;
  }

  /** Where the speeds change for good from one run on, those of the lesser side are freed. */
  static FitResult withoutChanged(FitResult fit, BooleanSupplier cancelled) {
    if (!SetAside.speedsScatter(fit)) {
      return fit;
    }
    List<String> runs = SetAside.turned(fit);
    Optional<FitResult> best = Optional.empty();
    for (int k = 2; k + 2 <= runs.size(); k++) {
      boolean late = runs.size() - k <= k;
      Set<String> freed = new HashSet<>(late ? runs.subList(k, runs.size()) : runs.subList(0, k));
      freed.addAll(fit.aside());
      FitResult trial = Refinement.freed(fit, freed, cancelled).fromExpected();
      boolean better =
          SetAside.speedChange(trial).isPresent()
              && trial.runScatter() < OwnChoices.HALF * fit.runScatter()
              && best.map(b -> trial.runScatter() < b.runScatter()).orElse(true);
      best = better ? Optional.of(trial) : best;
    }
    return best.orElse(fit);
  }
}
