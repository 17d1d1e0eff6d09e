package faintwind.calibration.fit.health;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Sums of products over the blocks of one run, weighted by what is known of them. The rests of a
 * run lie in the same draught, and its turning has one speed: beside what each block does by
 * itself, they are off together. So many blocks do not make the mean of a run surer than the means
 * of runs are, which scatter between them; they do show what changes within it.
 */
final class Deviations {
  private final List<HeatBlock> blocks;
  private final double scatter;

  /**
   * The blocks of a run.
   *
   * @param blocks in order
   * @param scatter standard deviation between the rests of healthy runs
   */
  Deviations(List<HeatBlock> blocks, double scatter) {
    this.blocks = blocks;
    this.scatter = scatter;
  }

  /**
   * aᵀ C⁻¹ b, with C the covariance of the blocks: diagonal, and one common part for the rests and
   * one for the turning (Sherman and Morrison 1950).
   */
  double product(ToDoubleFunction<HeatBlock> a, ToDoubleFunction<HeatBlock> b) {
    return product(a, b, true) + product(a, b, false);
  }

  private double product(
      ToDoubleFunction<HeatBlock> a, ToDoubleFunction<HeatBlock> b, boolean turning) {
    double own = 0;
    double byA = 0;
    double byB = 0;
    double common = 1;
    for (HeatBlock block : blocks) {
      if ((block.phase() == Phase.TURNING) == turning) {
        double weight = 1 / (block.u() * block.u());
        double shared = turning ? block.u_run() : scatter;
        double ofA = a.applyAsDouble(block);
        double ofB = b.applyAsDouble(block);
        own += weight * ofA * ofB;
        byA += weight * ofA * shared;
        byB += weight * ofB * shared;
        common += weight * shared * shared;
      }
    }
    return own - byA * byB / common;
  }
}
