package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: two levels and where the second begins. */
class LastingChangeTest {
  private static final double LEAST = 0.02;

  @Test
  void twoLevelsAreFoundWithPlaceAndSize() {
    LastingChange step = in(new double[] {1, 1.001, 0.999, 1.1, 1.101, 1.099}, LEAST).orElseThrow();
    assertThat(step.from()).isEqualTo(3);
    assertThat(step.size()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void aFallIsNegative() {
    LastingChange step = in(new double[] {1, 1, 0.9, 0.9, 0.9}, LEAST).orElseThrow();
    assertThat(step.from()).isEqualTo(2);
    assertThat(step.size()).isCloseTo(-0.1, within(1e-12));
  }

  @Test
  void twoNumbersOnEachSideAreNeeded() {
    assertThat(in(new double[] {1, 1, 1, 1.2}, LEAST)).isEmpty();
    assertThat(in(new double[] {1, 1.2, 1.2, 1.2}, LEAST)).isEmpty();
    assertThat(in(new double[] {1, 1, 1.2, 1.2}, LEAST)).isPresent();
  }

  @Test
  void oneOutlierIsNoLastingChange() {
    assertThat(in(new double[] {1, 1, 1, 1.2, 1, 1, 1}, LEAST)).isEmpty();
  }

  @Test
  void aChangeBelowTheLeastOrWithinTheScatterDoesNotCount() {
    assertThat(in(new double[] {1, 1, 1, 1.019, 1.019, 1.019}, LEAST)).isEmpty();
    assertThat(in(new double[] {1, 1, 1, 1.021, 1.021, 1.021}, LEAST)).isPresent();
    assertThat(in(new double[] {0.95, 1.05, 1, 1.05, 1.15, 1.1}, LEAST)).isEmpty();
  }

  /**
   * Healthy scatter of 0.003 between six: a step is sure above 6 · 0.003 · √(1/3 + 1/3) = 0.0147.
   */
  @Test
  void aStepIsHeldAgainstTheLeastScatter() {
    assertThat(in(levels(0.0146), 0)).isEqualTo(Optional.empty());
    assertThat(in(levels(0.0148), 0)).map(LastingChange::from).contains(3);
  }

  /** Runs that did not turn: nothing speaks for or against. */
  private static Optional<LastingChange> in(double[] rests, double least) {
    return LastingChange.in(rests, Collections.nCopies(rests.length, Optional.empty()), least);
  }

  private static double[] levels(double size) {
    return new double[] {0, 0, 0, size, size, size};
  }
}
