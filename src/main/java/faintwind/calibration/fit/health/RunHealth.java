package faintwind.calibration.fit.health;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The heat that one run took, block by block.
 *
 * @param run name
 * @param blocks in order of time
 */
public record RunHealth(String run, List<HeatBlock> blocks) {
  public RunHealth {
    blocks = List.copyOf(blocks);
  }

  /** Heat taken over heat expected, the mean over the rests, where there are any. */
  public OptionalDouble rest() {
    List<HeatBlock> own = blocks.stream().filter(b -> b.phase() != Phase.TURNING).toList();
    if (own.isEmpty()) {
      return OptionalDouble.empty();
    }
    double weights = own.stream().mapToDouble(b -> 1 / (b.u() * b.u())).sum();
    double ratios = own.stream().mapToDouble(b -> b.ratio() / (b.u() * b.u())).sum();
    return OptionalDouble.of(ratios / weights);
  }
}
