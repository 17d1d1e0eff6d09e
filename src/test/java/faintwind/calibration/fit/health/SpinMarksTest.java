package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import org.junit.jupiter.api.Test;

/** By hand: the arm really turns from 300 to 700 s; the marks say something else. */
class SpinMarksTest {
  private static final Series SIGNAL = MadeRuns.series(0, 1, 1200, t -> turned(t, 700));

  private static double turned(double t_s, double stop_s) {
    double end = 10 + 10 * Math.exp(-(stop_s - 300) / 80);
    return t_s < 300
        ? 20
        : t_s < stop_s
            ? 10 + 10 * Math.exp(-(t_s - 300) / 80)
            : 20 - (20 - end) * Math.exp(-(t_s - stop_s) / 80);
  }

  private static Run marked(Series signal, double start_s, double stop_s) {
    return MadeRuns.spin("a", signal, MadeRuns.arm(start_s, stop_s, 60, 300));
  }

  @Test
  void marksThatComeTooEarlyAreTold() {
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 260, 660), 1).orElseThrow())
        .isCloseTo(40, within(3.0));
  }

  @Test
  void marksThatComeTooLateAreTold() {
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 400, 800), 1).orElseThrow())
        .isCloseTo(-100, within(3.0));
  }

  @Test
  void aSignalOfTheOtherSignIsReadAlike() {
    Series turned = MadeRuns.series(0, 1, 1200, t -> -turned(t, 700));
    assertThat(SpinMarks.shift_s(marked(turned, 260, 660), -1).orElseThrow())
        .isCloseTo(40, within(3.0));
  }

  @Test
  void marksWithinAQuarterOfAMinuteFit() {
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 300, 700), 1)).isEmpty();
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 290, 690), 1)).isEmpty();
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 280, 680), 1)).isPresent();
  }

  @Test
  void oneMarkAloneIsNoShift() {
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 300, 660), 1)).isEmpty();
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 260, 740), 1)).isEmpty();
  }

  @Test
  void aRunThatDoesNotTurnHasNone() {
    assertThat(SpinMarks.shift_s(MadeRuns.still("a", SIGNAL), 1)).isEmpty();
  }

  /** Marks that were written 40 s too early, and at the stop 30 s or 20 s: one slip or two. */
  @Test
  void bothEndsAreOffByTheSameWithinAQuarterOfAMinute() {
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 260, 670), 1).orElseThrow())
        .isCloseTo(35, within(3.0));
    assertThat(SpinMarks.shift_s(marked(SIGNAL, 260, 680), 1)).isEmpty();
  }
}
