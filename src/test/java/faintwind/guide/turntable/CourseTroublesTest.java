package faintwind.guide.turntable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.guide.turntable.Trouble.Kind;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Signals of straight pieces on an instrument of 400 s in still air and 100 s at 1 m/s. */
class CourseTroublesTest {
  /** Settles at 60 in still air and at 15 at 1 m/s. */
  private static final ExpectedCourse COURSE = new ExpectedCourse(0, 0.15, 0.0025, 0.0075);

  private static CourseTroubles after(int duration_s, DoubleUnaryOperator signal) {
    return after(duration_s, signal, COURSE);
  }

  private static CourseTroubles after(
      int duration_s, DoubleUnaryOperator signal, ExpectedCourse course) {
    SignalHistory history = new SignalHistory();
    for (int t = 0; t <= duration_s; t++) {
      history.add(t, signal.applyAsDouble(t));
    }
    return new CourseTroubles(history, course);
  }

  /** Turned at 1 m/s from 100 s on; the signal moves on a straight line, or not at all. */
  private static Optional<Trouble> turned(int spent_s, double change) {
    DoubleUnaryOperator signal = t -> t <= 100 ? 60 : 60 + change * Math.min(1, (t - 100) / 50);
    return after(100 + spent_s, signal).reaction(100, 1);
  }

  /**
   * The least that is likely, forced cooling 1.8 times weaker: 1/150 1/s, so 22.5 + 37.5·e^(−2/3) =
   * 41.753 after 100 s by hand, 18.247 lower.
   */
  @Test
  void anArmThatStandsMovesNothing() {
    Trouble trouble = turned(100, 0).orElseThrow();
    assertThat(trouble.kind()).isEqualTo(Kind.NO_REACTION);
    assertThat(trouble.amounts().get(0)).isCloseTo(0, within(1e-12));
    assertThat(trouble.amounts().get(1)).isCloseTo(-18.247, within(0.001));
  }

  /** A fifth of 18.247 is 3.649: less of it is none, as much the other way is the wrong way. */
  @ParameterizedTest(name = "{0} instead of −18.2 or more: {1}")
  @CsvSource({"-3.7, ", "-3.6, NO_REACTION", "3.6, NO_REACTION", "3.7, WRONG_WAY", "-18, "})
  void aFifthOfWhatIsExpectedIsAReaction(double change, Kind kind) {
    assertThat(turned(100, change).map(Trouble::kind)).isEqualTo(Optional.ofNullable(kind));
  }

  @Test
  void aReactionIsLookedForFromOneMinuteToFive() {
    assertThat(turned(59, 0)).isEmpty();
    assertThat(turned(60, 0)).isPresent();
    assertThat(turned(300, 0)).isPresent();
    assertThat(turned(301, 0)).isEmpty();
  }

  /** In still air nothing is expected of a settled signal, and little of one nearly so. */
  @Test
  void aSignalThatHasNowhereToGoIsNotMissed() {
    assertThat(after(200, t -> 60).reaction(100, 0)).isEmpty();
    // 100 s of 400 s bring 22 % of 3, below 3 % of 60; of 12 they bring 2.65
    assertThat(after(200, t -> 57).reaction(100, 0)).isEmpty();
    assertThat(after(200, t -> 48).reaction(100, 0).map(Trouble::kind)).contains(Kind.NO_REACTION);
  }

  /** Mean of the last 20 s against the highest mean of 20 s before; 1.2 % of 60 is 0.72. */
  @ParameterizedTest(name = "{0} lower for the last 20 s: told {1}")
  @CsvSource({"0.74, true", "0.70, false", "-0.74, false"})
  void aSagOfMoreThanOnePointTwoPerCentIsADraught(double sag, boolean told) {
    CourseTroubles down = after(300, t -> t < 280 ? 60 : 60 - sag);
    assertThat(down.draught(0).map(Trouble::kind).isPresent()).isEqualTo(told);
    CourseTroubles swapped =
        after(300, t -> t < 280 ? -60 : sag - 60, new ExpectedCourse(0, -0.15, 0.0025, 0.0075));
    assertThat(swapped.draught(0).isPresent()).as("signal of the other sign").isEqualTo(told);
  }

  @Test
  void aDraughtIsSaidInPerCent() {
    Trouble trouble = after(300, t -> t < 280 ? 60 : 57).draught(0).orElseThrow();
    assertThat(trouble.kind()).isEqualTo(Kind.DRAUGHT);
    assertThat(trouble.amounts().get(0)).isCloseTo(5, within(0.01));
  }

  @Test
  void anOffsetIsNotPartOfWhatSags() {
    // 0.6 of 60 above the offset of 40 is 1 %, of 100 it would be less; 0.9 is 1.5 %
    ExpectedCourse shifted = COURSE.from(40);
    assertThat(after(300, t -> t < 280 ? 100 : 99.4, shifted).draught(0)).isEmpty();
    assertThat(after(300, t -> t < 280 ? 100 : 99.1, shifted).draught(0)).isPresent();
  }

  /** What fell more than five minutes ago is another story. */
  @Test
  void anOldSagIsNotToldAgain() {
    assertThat(after(700, t -> t < 300 ? 60 : 55).draught(0)).isEmpty();
    assertThat(after(560, t -> t < 300 ? 60 : 55).draught(0)).isPresent();
  }

  /** Five time constants and half of ten minutes: 2300 s; 1 % of 60 in ten minutes is 0.6. */
  @ParameterizedTest(name = "{1} in ten minutes after {0} s: told {2}")
  @CsvSource({
    "2300, 0.63, true",
    "2300, -0.63, true",
    "2300, 0.57, false",
    "2299, 0.63, false",
    "4000, 0.63, true"
  })
  void aWarmUpThatGoesOnChangingIsToldAfterFiveTimeConstants(
      int after_s, double change, boolean told) {
    CourseTroubles creeping = after(after_s, t -> 60 + change / 600 * (t - after_s));
    assertThat(creeping.neverFlat(0).map(Trouble::kind))
        .isEqualTo(told ? Optional.of(Kind.NEVER_FLAT) : Optional.empty());
  }
}
