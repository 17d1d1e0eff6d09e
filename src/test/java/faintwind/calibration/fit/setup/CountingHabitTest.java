package faintwind.calibration.fit.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Times beside the counted ones tell turns counted twice from a person who waited. */
class CountingHabitTest {
  private static final Series SIGNAL = MadeRuns.series(0, 10, 600, t -> 20);

  /** Times of a turn of a session, s. */
  private static final double[] TURNS_S = {18.8, 9.4, 4.7, 4.7, 2.7, 2.7, 1.9};

  /** 7 s are more than a turn: a part of a turn by the Gauss integral (1 - erf √2)/10 = 0.0046. */
  @Test
  void moreThanATurnLeftOverWasCountedFromAClick() {
    assertThat(CountingHabit.fromRest(List.of(spin(left(7))))).isCloseTo(1 / 21.0, within(1e-12));
  }

  @Test
  void nothingLeftOverWasCountedFromRest() {
    double one = CountingHabit.fromRest(List.of(spin(left(0.5))));
    assertThat(one).isBetween(0.6, 20 / 21.0);
    double two = CountingHabit.fromRest(List.of(spin(left(0.5)), spin(left(0.5))));
    assertThat(two / (1 - two)).isCloseTo(Math.pow(one / (1 - one), 2), within(1e-9));
  }

  @Test
  void aNotedClickSaysNothingOfTheHabit() {
    assertThat(CountingHabit.fromRest(List.of(spin(noted(2, 3))))).isEqualTo(0.5);
    assertThat(CountingHabit.fromRest(List.of(MadeRuns.still("still", SIGNAL)))).isEqualTo(0.5);
  }

  /** Any moment of a turn: the mean of exp(-t/2) over 5 s is (1 - exp(-2.5))/2.5 = 0.3672. */
  @Test
  void aClickOfTheFirstTurnLeavesTheMeanOfTheRamp() {
    CountingHabit.Window window = CountingHabit.window(left(5), 2);
    double mean = -Math.expm1(-2.5) / 2.5;
    double square = -Math.expm1(-5) / 5;
    assertThat(window.count().left()).isCloseTo(mean, within(1e-3));
    assertThat(window.u_left()).isCloseTo(Math.sqrt(square - mean * mean), within(1e-3));
    assertThat(window.count().window_s()).isEqualTo(100);
    assertThat(window.count().turn_s()).isEqualTo(5);
  }

  /** 8 s left of two parts of a turn: each between 3 and 5 s. */
  @Test
  void whatIsLeftBoundsTheClick() {
    double mean = 2 * (Math.exp(-1.5) - Math.exp(-2.5)) / 2;
    assertThat(CountingHabit.window(left(8), 2).count().left()).isCloseTo(mean, within(1e-3));
    assertThat(CountingHabit.window(left(0), 2).count().left()).isCloseTo(1, within(1e-12));
  }

  @Test
  void aNotedClickIsKnown() {
    CountingHabit.Window window = CountingHabit.window(noted(3, 8), 2);
    assertThat(window.count().afterStart_s()).hasValue(3);
    assertThat(window.u_left()).isZero();
  }

  /** A turn of 10 s leaves up to 20 s beside the count; counted twice it looks like one of 5 s. */
  @Test
  void turnsCountedTwiceLeaveTooMuch() {
    List<Run> twice = List.of(spin(left(13)), spin(left(9)), spin(left(12)));
    assertThat(CountingHabit.slipEvidence(twice, 2)).isGreaterThan(3);
    assertThat(CountingHabit.slipEvidence(twice, 0.5)).isNegative();
    assertThat(CountingHabit.slipEvidence(twice, 1)).isCloseTo(0, within(1e-12));
  }

  /** One run is worth no more than ln 20 = 3.0 for either moment, all of them no more than 6. */
  @Test
  void noSpinIsTooLoud() {
    assertThat(CountingHabit.slipEvidence(List.of(spin(noted(9, 10))), 2))
        .isLessThanOrEqualTo(2 * Math.log(20));
    List<Run> many = List.of(spin(noted(9, 18)), spin(noted(9, 18)), spin(noted(9, 18)));
    assertThat(CountingHabit.slipEvidence(many, 2)).isEqualTo(6);
  }

  @Test
  void turnsThatFitAreNoEvidence() {
    List<Run> well = List.of(spin(left(6)), spin(left(4)), spin(left(7)), spin(left(5)));
    assertThat(CountingHabit.slipEvidence(well, 2)).isNegative();
  }

  @Test
  void whoWaitsEightSecondsForASteadyArmHasNotCountedTwice() {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < TURNS_S.length; i++) {
      double waited_s = 8 + TURNS_S[i] * part(i);
      runs.add(hundred(TURNS_S[i], waited_s, TURNS_S[i] * part(i + 2)));
    }
    assertThat(CountingHabit.slipEvidence(runs, 2)).isNegative();
  }

  @Test
  void firstClicksThatComeLaterThanATurnAreOfTurnsCountedTwice() {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < TURNS_S.length; i++) {
      runs.add(hundred(TURNS_S[i] / 2, TURNS_S[i] * (0.5 + part(i) / 2), TURNS_S[i] * part(i + 2)));
    }
    assertThat(CountingHabit.slipEvidence(runs, 2)).isGreaterThan(4);
  }

  /** Twenty turns in 100 s, and what is left of the spin beside them. */
  private static ArmTurning left(double left_s) {
    return MadeRuns.arm(200, 300 + left_s, 20, 100);
  }

  private static ArmTurning noted(double after_s, double left_s) {
    return new ArmTurning(
        Uncertain.of(MadeRuns.RADIUS_M),
        20,
        Uncertain.of(100),
        200,
        300 + left_s,
        Optional.empty(),
        OptionalDouble.of(200 + after_s));
  }

  private static Run spin(ArmTurning arm) {
    return MadeRuns.spin("a", SIGNAL, arm);
  }

  /** Parts of a turn, spread over it. */
  private static double part(int i) {
    return (0.618 * (i + 1)) % 1;
  }

  private static Run hundred(double turn_s, double before_s, double after_s) {
    double counted_s = 100 * turn_s;
    return spin(
        new ArmTurning(
            Uncertain.of(MadeRuns.RADIUS_M),
            100,
            Uncertain.of(counted_s, 0.3),
            200,
            200 + before_s + counted_s + after_s,
            Optional.empty(),
            OptionalDouble.of(200 + before_s)));
  }
}
