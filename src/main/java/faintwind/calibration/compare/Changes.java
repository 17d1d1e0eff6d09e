package faintwind.calibration.compare;

import faintwind.calibration.Calibration;
import faintwind.calibration.EnScore;
import faintwind.calibration.Parameter;
import faintwind.calibration.compare.Comparison.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Numbers of the formula by two calibrations, where both have the same: parameters are bound to one
 * another, so one that moved alone says less than the speeds do.
 */
record Changes(Calibration earlier, Calibration later) {
  private static final double COVERAGE = 2;

  List<Change> list() {
    List<Change> changes = new ArrayList<>();
    for (Parameter before : earlier.formula().parameters()) {
      later.formula().parameters().stream()
          .filter(after -> after.name().equals(before.name()))
          .findFirst()
          .flatMap(after -> change(before, after))
          .ifPresent(changes::add);
    }
    changes.sort(Comparator.comparingDouble(c -> -Math.abs(c.en().value())));
    return changes;
  }

  private static Optional<Change> change(Parameter before, Parameter after) {
    double u = COVERAGE * Math.hypot(before.u(), after.u());
    return u > 0
        ? Optional.of(
            new Change(
                before.name(),
                before.unit(),
                before.value(),
                after.value(),
                EnScore.ofDifference(after.value() - before.value(), u)))
        : Optional.empty();
  }
}
