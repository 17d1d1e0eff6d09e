package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** By hand: recordings of a ball at 20 K that falls to 10 K while it turns, and their faults. */
class SignalCheckTest {
  private static final ArmTurning ARM = MadeRuns.arm(300, 600, 60, 300);
  private static final Run STILL = MadeRuns.still("still", series(t -> 20 * -Math.expm1(-t / 200)));
  private static final Run ZERO = MadeRuns.zero("zero", series(t -> 0));

  private static Series series(DoubleUnaryOperator signal) {
    return MadeRuns.series(0, 2, 900, signal);
  }

  private static double turned(double t_s) {
    return t_s < 300
        ? 20
        : t_s < 600 ? 10 + 10 * Math.exp(-(t_s - 300) / 60) : 20 - 10 * Math.exp(-(t_s - 600) / 60);
  }

  private static Run spin(String name, DoubleUnaryOperator signal) {
    return MadeRuns.spin(name, series(signal), ARM);
  }

  private static List<String> refused(Run... runs) {
    return SignalCheck.refusals(MadeRuns.set(runs)).stream()
        .map(p -> (p.id() + " " + p.where().run().orElse("")).strip())
        .toList();
  }

  @Test
  void healthyRunsAreNotRefused() {
    assertThat(refused(ZERO, STILL, spin("a", SignalCheckTest::turned))).isEmpty();
  }

  @Test
  void leadsTheOtherWayRoundAreNamed() {
    Run still = MadeRuns.still("still", series(t -> -STILL.recording().signal().at(t)));
    Run spin = spin("a", t -> -turned(t));
    assertThat(refused(ZERO, still, spin)).containsExactly("fit.sign-reversed");
    assertThat(SignalCheck.refusals(MadeRuns.set(ZERO, still, spin)).get(0).found())
        .isEqualTo("-20.0");
  }

  @Test
  void oneRunTheOtherWayRoundIsNamed() {
    assertThat(refused(ZERO, STILL, spin("a", t -> -turned(t))))
        .containsExactly("fit.run-sign-reversed a");
  }

  /** A pair of readings that jump by 1 K from row to row stands 20 times below nothing. */
  @Test
  void aSignalThatIsAllNoiseIsNotHeated() {
    Run noisy = MadeRuns.still("still", series(t -> 10 + Math.sin(t * t)));
    assertThat(refused(ZERO, noisy)).containsExactly("fit.not-heated");
  }

  @Test
  void aSignalCutAtTheTopIsSaturated() {
    Run cut = MadeRuns.still("still", series(t -> Math.min(12, 20 * -Math.expm1(-t / 200))));
    assertThat(refused(ZERO, cut, spin("a", SignalCheckTest::turned)))
        .containsExactly("fit.saturated still");
  }

  @Test
  void aSignalThatComesToRestByItselfIsNotSaturated() {
    Run rounded =
        MadeRuns.still("still", series(t -> Math.round(100 * 20 * -Math.expm1(-t / 100)) / 100.0));
    assertThat(refused(ZERO, rounded)).isEmpty();
  }

  @Test
  void spinsThatDoNotCoolAreRefused() {
    Run kept = spin("a", t -> 20 - t / 1e4);
    Run alsoKept = spin("b", t -> 20 - t / 1e4);
    assertThat(refused(ZERO, kept, alsoKept)).containsExactly("fit.no-cooling");
    assertThat(refused(ZERO, kept)).isEmpty();
    assertThat(refused(ZERO, kept, spin("b", SignalCheckTest::turned))).isEmpty();
  }

  /** From fast to slow with short rests: the ball grows warmer in each spin but the first. */
  @Test
  void aBallThatHadNoTimeToRestMayGrowWarmerInASpin() {
    Run still = MadeRuns.still("still", series(t -> 20 * -Math.expm1(-t / 200)));
    for (double start : new double[] {14.5, 16.5}) {
      Run a = spin("a", t -> start + t / 1e3);
      Run b = spin("b", t -> start + t / 1e3);
      assertThat(refused(ZERO, still, a, b).contains("fit.no-cooling")).isEqualTo(start > 16);
    }
  }

  /** 2π · 0.4 m · 15 turns in 300 s are 0.126 m/s: too slow to tell. */
  @Test
  void slowSpinsNeedNotCool() {
    ArmTurning slow = MadeRuns.arm(300, 600, 15, 300);
    Run a = MadeRuns.spin("a", series(t -> 20 - t / 1e4), slow);
    Run b = MadeRuns.spin("b", series(t -> 20 - t / 1e4), slow);
    assertThat(refused(ZERO, a, b)).isEmpty();
  }

  private static Run lasting(String name, double stop_s, double turns, double turns_s) {
    return MadeRuns.spin(name, series(t -> 20), MadeRuns.arm(300, stop_s, turns, turns_s));
  }

  private static List<String> clocks(Run... runs) {
    return SignalCheck.clocks(MadeRuns.set(runs)).stream()
        .map(p -> (p.id() + " " + p.where().run().orElseThrow()))
        .toList();
  }

  @Test
  void theClockOfAFileInMinutesOrMillisecondsIsNamed() {
    assertThat(clocks(lasting("a", 305, 60, 300))).containsExactly("fit.clock-in-minutes a");
    assertThat(clocks(lasting("a", 300_300, 60, 300))).containsExactly("fit.clock-in-ms a");
  }

  @Test
  void anotherClockIsOnlySaidToDiffer() {
    assertThat(clocks(lasting("a", 450, 60, 300))).containsExactly("fit.clock-differs a");
    assertThat(clocks(lasting("a", 1600, 60, 300))).containsExactly("fit.clock-differs a");
    assertThat(clocks(lasting("a", 520, 60, 300))).isEmpty();
    assertThat(clocks(lasting("a", 1400, 60, 300))).isEmpty();
    assertThat(clocks(lasting("a", 300 + 1.5 * 300, 60, 300))).isEmpty();
  }

  /** Arm turns for 200 and 400 s, and the times of the counted turns are written the other way. */
  @Test
  void turnsWrittenToTheOtherRunAreNamed() {
    assertThat(clocks(lasting("a", 500, 80, 390), lasting("b", 700, 40, 195)))
        .containsExactly("fit.turns-exchanged a", "fit.turns-exchanged b");
    List<Problem> found =
        SignalCheck.clocks(MadeRuns.set(lasting("a", 500, 80, 390), lasting("b", 700, 40, 195)));
    assertThat(found.get(0).found()).isEqualTo("200");
    assertThat(found.get(0).details()).containsExactly("390", "b");
    assertThat(clocks(lasting("a", 500, 40, 195), lasting("b", 700, 80, 390))).isEmpty();
  }

  /** The mean of the zero runs' medians; by the chain where there is none. */
  @Test
  void zeroIsThatOfTheZeroRuns() {
    Run two = MadeRuns.zero("two", series(t -> t < 10 ? 99 : 2));
    Run four = MadeRuns.zero("four", series(t -> 4));
    assertThat(SignalCheck.zero(MadeRuns.set(two, four, STILL))).isEqualTo(3);
    assertThat(SignalCheck.zero(MadeRuns.set(STILL))).isZero();
  }

  /** A hundredth of 1000 rows are beyond 989. */
  @Test
  void theLargestSignalLeavesAHundredthOfTheRowsOut() {
    Run ramp = MadeRuns.still("ramp", MadeRuns.series(0, 1, 1000, t -> t));
    assertThat(SignalCheck.largest(MadeRuns.set(ramp))).isCloseTo(990, within(1e-9));
    assertThat(SignalCheck.largest(MadeRuns.set(ramp, MadeRuns.zero("zero", series(t -> 90)))))
        .isCloseTo(900, within(1e-9));
  }

  /** What air takes from a ball that turns fast is more than three hundredths of its difference. */
  @Test
  void aSpinMustFallByThreeHundredths() {
    for (double fall : new double[] {0.025, 0.035}) {
      Run a = spin("a", t -> t < 310 ? 20 : 20 * (1 - fall));
      Run b = spin("b", t -> t < 310 ? 20 : 20 * (1 - fall));
      assertThat(refused(ZERO, a, b).contains("fit.no-cooling")).isEqualTo(fall < 0.03);
    }
  }

  /** Of 20 K: below 2 K the sign of a run is that of its offset. */
  @Test
  void theSignOfARunCountsFromATenthOfTheLargest() {
    for (double down_K : new double[] {1.8, 2.2}) {
      Run other = MadeRuns.still("other", series(t -> -down_K));
      assertThat(refused(ZERO, STILL, spin("a", SignalCheckTest::turned), other).isEmpty())
          .isEqualTo(down_K < 2);
    }
  }
}
