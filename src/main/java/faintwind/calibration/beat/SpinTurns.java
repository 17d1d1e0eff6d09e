package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.BY_BEAT;
import static faintwind.calibration.beat.OwnChoices.FAR_OFF;
import static faintwind.calibration.beat.OwnChoices.TYPED_U_S;

import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The turns of one spin, however they were found.
 *
 * @param turns whole turns
 * @param time_s time they took, s
 * @param first_s when the first counted mark was passed, on the recording's clock, where marks were
 *     noted
 * @param how where they come from
 */
public record SpinTurns(int turns, Uncertain time_s, OptionalDouble first_s, How how) {
  /** Where turns come from. */
  public enum How {
    /** Taps or clicks. */
    MARKED,
    /** Nobody counted: the beat is taken for the pace. */
    BY_BEAT,
    /** Counted by a person and typed. */
    TYPED
  }

  /** From marks. */
  public static SpinTurns marked(BeatTimes.Turning turning) {
    return new SpinTurns(
        turning.turns(), turning.time_s(), OptionalDouble.of(turning.first_s()), How.MARKED);
  }

  /**
   * From clicks in a sound recording, whose clock is its own.
   *
   * @param soundStart_s when it began, on the recording's clock, where known
   */
  public static SpinTurns heard(BeatTimes.Turning turning, OptionalDouble soundStart_s) {
    OptionalDouble first_s =
        soundStart_s.isPresent()
            ? OptionalDouble.of(soundStart_s.getAsDouble() + turning.first_s())
            : soundStart_s;
    return new SpinTurns(turning.turns(), turning.time_s(), first_s, How.MARKED);
  }

  /** Where nothing was counted: the turns that the beat would have brought. */
  public static SpinTurns byBeat(PlannedSpin spin, double lasted_s) {
    int turns = (int) Math.max(1, Math.floor(lasted_s * spin.beat().turns_1_s()));
    double time_s = turns / spin.beat().turns_1_s();
    return new SpinTurns(
        turns, Uncertain.of(time_s, BY_BEAT * time_s), OptionalDouble.empty(), How.BY_BEAT);
  }

  /**
   * Counted by a person.
   *
   * @param lasted_s how long the arm turned, s
   * @return refused where a number cannot be; noted where it does not go with the plan
   */
  public static Checked<SpinTurns> typed(
      double turns, double time_s, PlannedSpin spin, double lasted_s) {
    Where run = Where.run("spin" + spin.number());
    List<Problem> problems = new ArrayList<>();
    if (!(turns >= 1)) {
      problems.add(Problem.error("beat.turns-too-few", run, text(turns)));
    } else if (turns != Math.rint(turns)) {
      problems.add(Problem.error("beat.turns-not-whole", run, text(turns)));
    }
    if (!(time_s > 0)) {
      problems.add(Problem.error("beat.time-not-positive", run, text(time_s)));
    } else if (time_s > lasted_s + 2) {
      problems.add(Problem.error("beat.time-too-long", run, text(time_s), text(lasted_s)));
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    double pace = turns / time_s / spin.beat().turns_1_s();
    List<Problem> notes =
        Math.abs(pace - 1) > FAR_OFF
            ? List.of(
                Problem.warning(
                    "beat.off-the-plan", run, text(turns / time_s * 60), text(planned(spin))))
            : List.of();
    return Checked.ok(
        new SpinTurns(
            (int) turns, Uncertain.of(time_s, TYPED_U_S), OptionalDouble.empty(), How.TYPED),
        notes);
  }

  private static double planned(PlannedSpin spin) {
    return spin.beat().turns_1_s() * 60;
  }

  private static String text(double value) {
    String text = Numerals.places(value, 2);
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }

  /** Speed of the ball at a radius: 2π R N / t (definition), m/s. */
  public double speed_m_s(double radius_m) {
    return 2 * Math.PI * radius_m * turns / time_s.value();
  }

  /** Relative standard uncertainty from the count, where one is stated. */
  public double relative_u() {
    return time_s.u().orElse(TYPED_U_S) / time_s.value();
  }
}
