package faintwind.calibration.fit.health;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Sums of products over the blocks of one run, weighted by what is known of them. Beside what each
 * block does by itself, the rests near in time lie in the same draught, and all the turning has one
 * speed. So the many blocks of a rest do not make it surer than the rests of other runs are, which
 * scatter between them.
 */
final class Deviations {
  private final List<HeatBlock> blocks;
  private final DecompositionSolver covariance;

  /**
   * The blocks of a run.
   *
   * @param blocks in order
   * @param scatter standard deviation between the rests of healthy runs
   */
  Deviations(List<HeatBlock> blocks, double scatter) {
    this.blocks = blocks;
    int n = blocks.size();
    RealMatrix all = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        all.setEntry(i, j, shared(blocks.get(i), blocks.get(j), scatter));
      }
      all.addToEntry(i, i, blocks.get(i).u() * blocks.get(i).u());
    }
    covariance = new CholeskyDecomposition(all).getSolver();
  }

  private static double shared(HeatBlock one, HeatBlock other, double scatter) {
    boolean turning = one.phase() == Phase.TURNING;
    if (turning != (other.phase() == Phase.TURNING)) {
      return 0;
    }
    double apart_s = Math.abs(one.from_s() - other.from_s());
    return turning
        ? one.u_run() * other.u_run()
        : scatter * scatter * Math.exp(-apart_s / OwnChoices.MEMORY_S);
  }

  /** aᵀ C⁻¹ b, with C the covariance of the blocks. */
  double product(ToDoubleFunction<HeatBlock> a, ToDoubleFunction<HeatBlock> b) {
    return vector(a).dotProduct(covariance.solve(vector(b)));
  }

  private RealVector vector(ToDoubleFunction<HeatBlock> of) {
    return new ArrayRealVector(blocks.stream().mapToDouble(of).toArray());
  }
}
