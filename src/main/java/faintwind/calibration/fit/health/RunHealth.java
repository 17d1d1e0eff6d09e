package faintwind.calibration.fit.health;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.List;
import java.util.Optional;

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
  Optional<MeanHeat> rest() {
    return mean(blocks.stream().filter(b -> b.phase() != Phase.TURNING).toList());
  }

  /** The same over the turning. */
  Optional<MeanHeat> turning() {
    return mean(blocks.stream().filter(b -> b.phase() == Phase.TURNING).toList());
  }

  private static Optional<MeanHeat> mean(List<HeatBlock> own) {
    if (own.isEmpty()) {
      return Optional.empty();
    }
    double weights = own.stream().mapToDouble(b -> 1 / (b.u() * b.u())).sum();
    double ratios = own.stream().mapToDouble(b -> b.ratio() / (b.u() * b.u())).sum();
    double shared = own.stream().mapToDouble(b -> b.u_run() / (b.u() * b.u())).sum() / weights;
    return Optional.of(new MeanHeat(ratios / weights, Math.hypot(shared, 1 / Math.sqrt(weights))));
  }
}
