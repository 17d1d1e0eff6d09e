package faintwind.calibration.plan;

import faintwind.calibration.run.Uncertain;
import java.util.Comparator;
import java.util.List;

/**
 * The arm on the bench.
 *
 * @param radii_m radii at which the balls can sit, to the ball's centre, m; at least one; sorted
 *     with the smallest first
 * @param way how data and power come off the arm
 */
public record ArmSetup(List<Uncertain> radii_m, DataWay way) {
  public ArmSetup {
    if (radii_m.isEmpty() || radii_m.stream().anyMatch(r -> !(r.value() > 0))) {
      throw new IllegalArgumentException("radii_m = " + radii_m + ", allowed: one or more above 0");
    }
    radii_m =
        radii_m.stream().sorted(Comparator.comparingDouble(Uncertain::value)).distinct().toList();
  }
}
