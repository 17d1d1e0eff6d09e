package faintwind.calibration.fit.foretelling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** By hand: the parts that an expected uncertainty is made of. */
class ForetellingPartsTest {
  /** Nodes from 0.02 m/s on, each twice the one before. */
  @Test
  void doubtGoesStraightFromNodeToNode() {
    assertThat(FormDoubt.at(0.02)[0]).isEqualTo(1);
    assertThat(FormDoubt.at(0.08)[2]).isCloseTo(1, within(1e-9));
    double[] between = FormDoubt.at(0.04 * Math.sqrt(2));
    assertThat(between[1]).isCloseTo(0.5, within(1e-9));
    assertThat(between[2]).isCloseTo(0.5, within(1e-9));
    double[] quarter = FormDoubt.at(0.02 * Math.pow(2, 0.25));
    assertThat(quarter[0]).isCloseTo(0.75, within(1e-9));
    for (double speed_m_s : new double[] {0.001, 0.3, 1, 100}) {
      assertThat(DoubleStream.of(FormDoubt.at(speed_m_s)).sum()).isCloseTo(1, within(1e-9));
    }
    assertThat(FormDoubt.at(0.001)[0]).isEqualTo(1);
    assertThat(FormDoubt.at(100)[8]).isCloseTo(1, within(1e-5));
  }

  private static RealMatrix matrix(double[]... rows) {
    return new Array2DRowRealMatrix(rows);
  }

  private static double[] covarianceTimes(Knowledge knowledge, double... vector) {
    return knowledge.settled().times(new ArrayRealVector(vector)).toArray();
  }

  /** (4 2; 2 2) without its second unknown: 4 − 2 · 2/2 = 2, a variance of a half. */
  @Test
  void whatIsLeftOutTakesItsPartAway() {
    Knowledge left = Knowledge.leavingOut(matrix(new double[] {4, 2}, new double[] {2, 2}), 1);
    assertThat(covarianceTimes(left, 3)).containsExactly(new double[] {1.5}, within(1e-9));
    Knowledge whole = Knowledge.leavingOut(matrix(new double[] {4, 2}, new double[] {2, 2}), 2);
    assertThat(covarianceTimes(whole, 1, 0))
        .containsExactly(new double[] {0.5, -0.5}, within(1e-9));
  }

  /** (1 0; 0 4) and (3 0; 0 0): 4 and 4. */
  @Test
  void independentKnowledgeAddsUp() {
    Knowledge one = new Knowledge(matrix(new double[] {1, 0}, new double[] {0, 4}));
    Knowledge other = new Knowledge(matrix(new double[] {3, 0}, new double[] {0, 0}));
    assertThat(covarianceTimes(one.plus(other), 1, 2))
        .containsExactly(new double[] {0.25, 0.5}, within(1e-12));
    assertThat(one.plus(Knowledge.none())).isSameAs(one);
    assertThat(Knowledge.none().plus(one)).isSameAs(one);
  }

  private static final ExpectedFormula FORMULA =
      new ExpectedFormula(new ExpectedResponse(500, 150, 32, 0.007));

  /** The still-air difference that was told; the losses over it are 1/400 and 1/190 a second. */
  @Test
  void theFormulaIsThatOfWhatIsExpected() {
    ExpectedFormula formula = new ExpectedFormula(new ExpectedResponse(400, 190, 32, 0.007));
    assertThat(formula.steadyDelta_K(0)).isCloseTo(32, within(1e-6));
    assertThat(formula.steadyDelta_K(1)).isCloseTo(32 * 190 / 400.0, within(0.15));
    assertThat(formula.timeConstant_s(1)).isBetween(175.0, 190.0);
    assertThat(formula.timeConstant_s(0)).isBetween(300.0, 400.0);
    double[] all = new double[formula.size() + 2];
    formula.putInto(all);
    assertThat(Arrays.copyOf(all, 1)[0]).isPositive();
    assertThat(all[all.length - 1]).isZero();
  }

  /**
   * One per cent more forced convection reads a speed lower, by 1 % over the exponent of a half.
   */
  @Test
  void theGradientIsRelative() {
    double[] at1 = FORMULA.gradient(1);
    assertThat(at1).hasSize(FORMULA.size());
    assertThat(at1[1]).isBetween(-2.2, -1.5);
    assertThat(FORMULA.gradient(1)).containsExactly(at1);
    at1[1] = 0;
    assertThat(FORMULA.gradient(1)[1]).isNotZero();
  }
}
