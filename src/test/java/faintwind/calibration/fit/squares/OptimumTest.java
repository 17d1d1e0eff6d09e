package faintwind.calibration.fit.squares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** By hand: J = (1 1; 0 1; 0 0; 0 0) has JᵀJ = (1 1; 1 2), whose inverse is (2 -1; -1 1). */
class OptimumTest {
  private static final Offset<Double> EXACT = within(1e-12);
  private final Optimum optimum =
      Optimum.at(
          new double[] {5, 6},
          new Linearised(
              new double[] {1, 1, 4, 0}, new double[][] {{1, 1}, {0, 1}, {0, 0}, {0, 0}}));

  @Test
  void sumOfSquaresAndDeviationAreThoseOfTheResiduals() {
    assertThat(optimum.point()).containsExactly(5, 6);
    assertThat(optimum.sumOfSquares()).isCloseTo(18, EXACT);
    assertThat(optimum.residualDeviation()).isCloseTo(3, EXACT);
  }

  @Test
  void covarianceIsTheInverseOfTheCurvature() {
    assertThat(optimum.unitCovariance()[0]).containsExactly(new double[] {2, -1}, EXACT);
    assertThat(optimum.unitCovariance()[1]).containsExactly(new double[] {-1, 1}, EXACT);
    assertThat(optimum.beyondCurvature()).containsExactly(0, 0);
  }

  /** Where the first is held, JᵀJ leaves the second a variance of 1/2; where the second is, 1. */
  @Test
  void roomAroundAHeldVariableIsWhatTheOthersHave() {
    assertThat(optimum.logVolumeAround(0)).isCloseTo(Math.log(Math.sqrt(0.5)), EXACT);
    assertThat(optimum.logVolumeAround(1)).isCloseTo(0, EXACT);
    assertThat(optimum.withVariance(0, 8).logVolumeAround(0))
        .isCloseTo(Math.log(Math.sqrt(0.5)), EXACT);
  }

  /** Variance 8 for 2: all moves with (2, -1)/2, six more of its square: -1 - 3 and 1 + 1.5. */
  @Test
  void aWiderVarianceTakesTheOthersAlong() {
    Optimum wider = optimum.withVariance(0, 8);
    assertThat(wider.unitCovariance()[0]).containsExactly(new double[] {8, -4}, EXACT);
    assertThat(wider.unitCovariance()[1]).containsExactly(new double[] {-4, 2.5}, EXACT);
    assertThat(wider.lesserCovariance()).isDeepEqualTo(wider.curvatureCovariance());
    assertThat(wider.curvatureCovariance()[0]).containsExactly(new double[] {2, -1}, EXACT);
    assertThat(wider.beyondCurvature())
        .containsExactly(new double[] {Math.sqrt(6), -Math.sqrt(6) / 2}, EXACT);
  }

  @Test
  void aNarrowerVarianceHasNothingBeyondTheCurvature() {
    Optimum narrower = optimum.withVariance(1, 0.5);
    assertThat(narrower.unitCovariance()[1]).containsExactly(new double[] {-0.5, 0.5}, EXACT);
    assertThat(narrower.lesserCovariance()).isDeepEqualTo(narrower.unitCovariance());
    assertThat(narrower.beyondCurvature()).containsExactly(new double[] {0, 0}, EXACT);
  }
}
