package faintwind.calibration.fit.foretelling;

import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.fit.numerics.Layout;
import faintwind.calibration.fit.setup.CarriedKnown;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/** What uncertainty a fit to come gives to the air speeds read with its formula. */
public final class ExpectedUncertainty {
  private final ExpectedFormula formula;
  private final Knowledge.Settled settled;
  private final double[] beforehand;
  private final CarriedKnown carried;

  ExpectedUncertainty(
      ExpectedFormula formula,
      Knowledge.Settled settled,
      double[] beforehand,
      CarriedKnown carried) {
    this.formula = formula;
    this.settled = settled;
    this.beforehand = beforehand;
    this.carried = carried;
  }

  /** Relative standard uncertainty at a speed. */
  public double u(double speed_m_s) {
    RealVector weights = weights(speed_m_s);
    double allowed = carried.allowed();
    return Math.sqrt(weights.dotProduct(settled.times(weights)) + allowed * allowed);
  }

  /**
   * Where it comes from at a speed, relative: the share of a prior r in the variance is (gᵀ C
   * e_r)²/σ_r², as in the budget of a fit; what is left is the recordings' own.
   */
  public List<BudgetShare> budget(double speed_m_s) {
    RealVector weights = weights(speed_m_s);
    RealVector through = settled.times(weights);
    int formulaSize = formula.size();
    int arm = formulaSize + Layout.CARRIED;
    int asymmetry = formulaSize + Layout.ASYMMETRY;
    int radii = formulaSize + Layout.ARM;
    int form = beforehand.length - FormDoubt.NODES;
    double carriedPart = of(through, formulaSize, arm) + carried.allowed() * carried.allowed();
    double radiusPart = of(through, radii, form);
    double directionPart = of(through, asymmetry, asymmetry + 1);
    double formPart = of(through, form, beforehand.length) + of(through, 0, formulaSize);
    double all = u(speed_m_s) * u(speed_m_s);
    double own = Math.max(0, all - carriedPart - radiusPart - directionPart - formPart);
    return List.of(
        new BudgetShare("carried", Math.sqrt(carriedPart)),
        new BudgetShare("radius", Math.sqrt(radiusPart)),
        new BudgetShare("direction", Math.sqrt(directionPart)),
        new BudgetShare("form", Math.sqrt(formPart)),
        new BudgetShare("recordings", Math.sqrt(own)));
  }

  private double of(RealVector through, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      double share = through.getEntry(i) / beforehand[i];
      sum += share * share;
    }
    return sum;
  }

  /** A doubt that the field log shares with the runs is no error: its sign is the other one. */
  private RealVector weights(double speed_m_s) {
    int first = beforehand.length - FormDoubt.NODES;
    double[] weights = Arrays.copyOf(formula.gradient(speed_m_s), beforehand.length);
    double[] doubt = FormDoubt.at(speed_m_s);
    for (int i = 0; i < doubt.length; i++) {
      weights[first + i] = -doubt[i];
    }
    return new ArrayRealVector(weights, false);
  }
}
