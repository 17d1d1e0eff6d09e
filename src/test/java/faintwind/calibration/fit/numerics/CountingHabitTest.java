package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Times beside the counted ones tell turns counted twice from a person who waited")
class CountingHabitTest {
  /** Times of a turn of a session, s. */
  private static final double[] TURNS_S = {18.8, 9.4, 4.7, 4.7, 2.7, 2.7, 1.9};

  @Test
  void whoWaitsEightSecondsForASteadyArmHasNotCountedTwice() {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < TURNS_S.length; i++) {
      double waited_s = 8 + TURNS_S[i] * part(i);
      runs.add(spin(i, TURNS_S[i], waited_s, TURNS_S[i] * part(i + 2)));
    }
    assertThat(CountingHabit.slipEvidence(runs, 2)).isNegative();
  }

  @Test
  void firstClicksThatComeLaterThanATurnAreOfTurnsCountedTwice() {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < TURNS_S.length; i++) {
      runs.add(spin(i, TURNS_S[i] / 2, TURNS_S[i] * (0.5 + part(i) / 2), TURNS_S[i] * part(i + 2)));
    }
    assertThat(CountingHabit.slipEvidence(runs, 2)).isGreaterThan(4);
  }

  /** Parts of a turn, spread over it. */
  private static double part(int i) {
    return (0.618 * (i + 1)) % 1;
  }

  private static Run spin(int i, double turn_s, double before_s, double after_s) {
    double counted_s = 100 * turn_s;
    double start_s = 200;
    ArmTurning arm =
        new ArmTurning(
            Uncertain.of(0.6, 0.001),
            100,
            Uncertain.of(counted_s, 0.3),
            start_s,
            start_s + before_s + counted_s + after_s,
            Optional.empty(),
            OptionalDouble.of(start_s + before_s));
    return new Run(
        "spin" + i,
        RunKind.SPIN,
        "spin" + i + ".csv",
        Recording.of(SignalUnit.DELTA_K, Series.of(new double[] {0}, new double[] {0})),
        RunConditions.NONE,
        Optional.of(arm),
        Optional.empty());
  }
}
