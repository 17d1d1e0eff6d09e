package faintwind.calibration.fit.squares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** By hand: with R the identity the damped step is y/(1 + λ d²). */
class BoundedStepTest {
  private static final double[] ALIKE = {1, 1};

  private static Triangle identity(double one, double other) {
    return Triangle.of(
        Linearised.triangular(new double[] {one, other}, new double[][] {{1, 0}, {0, 1}}));
  }

  @Test
  void aStepWithinATenthOfTheBoundIsWhole() {
    BoundedStep step = BoundedStep.of(identity(3, 4), ALIKE, 4.55, 0);
    assertThat(step.back).containsExactly(3, 4);
    assertThat(step.damping).isZero();
  }

  @Test
  void aLongerStepIsDampedToTheBound() {
    for (double bound : new double[] {0.01, 0.5, 1, 4.5}) {
      BoundedStep step = BoundedStep.of(identity(3, 4), ALIKE, bound, 0);
      double length = Math.hypot(step.back[0], step.back[1]);
      assertThat(length).isBetween(0.9 * bound, 1.1 * bound);
      assertThat(step.damping).isCloseTo(5 / length - 1, within(1e-9 * step.damping));
      assertThat(step.back[1] / step.back[0]).isCloseTo(4 / 3.0, within(1e-12));
    }
  }

  /** Scaled by 2 in the first variable: 3/(1 + 4 λ) and 4/(1 + λ). */
  @Test
  void lengthIsThatInScaledVariables() {
    BoundedStep step = BoundedStep.of(identity(3, 4), new double[] {2, 1}, 2, 0);
    assertThat(step.back[0]).isCloseTo(3 / (1 + 4 * step.damping), within(1e-12));
    assertThat(step.back[1]).isCloseTo(4 / (1 + step.damping), within(1e-12));
    assertThat(Math.hypot(2 * step.back[0], step.back[1])).isBetween(1.8, 2.2);
  }

  @Test
  void theDampingBeforeIsOnlyAStart() {
    for (double before : new double[] {0.01, 1, 1000}) {
      BoundedStep step = BoundedStep.of(identity(3, 4), ALIKE, 1, before);
      assertThat(Math.hypot(step.back[0], step.back[1])).isBetween(0.9, 1.1);
    }
  }
}
