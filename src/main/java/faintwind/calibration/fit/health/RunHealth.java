package faintwind.calibration.fit.health;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The heat that one run took, block by block.
 *
 * @param run name
 * @param blocks in order of time
 */
public record RunHealth(String run, List<HeatBlock> blocks) {
  private static final Set<Phase> REST = EnumSet.of(Phase.BEFORE, Phase.AFTER);

  public RunHealth {
    blocks = List.copyOf(blocks);
  }

  /**
   * A mean of blocks.
   *
   * @param ratio heat taken over heat expected
   * @param u its standard uncertainty
   * @param delta_K mean difference
   */
  public record Mean(double ratio, double u, double delta_K) {}

  /** Mean over the rests, where there are any. */
  public Optional<Mean> rest() {
    return mean(REST);
  }

  private Optional<Mean> mean(Set<Phase> phases) {
    List<HeatBlock> own = blocks.stream().filter(b -> phases.contains(b.phase())).toList();
    if (own.isEmpty()) {
      return Optional.empty();
    }
    double weights = own.stream().mapToDouble(b -> 1 / (b.u() * b.u())).sum();
    double ratio = own.stream().mapToDouble(b -> b.ratio() / (b.u() * b.u())).sum() / weights;
    double delta = own.stream().mapToDouble(HeatBlock::delta_K).average().orElseThrow();
    return Optional.of(new Mean(ratio, 1 / Math.sqrt(weights), delta));
  }
}
