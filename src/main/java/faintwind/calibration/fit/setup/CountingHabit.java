package faintwind.calibration.fit.setup;

import faintwind.calibration.fit.track.CountedTime;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.special.Erf;

/**
 * Where the first counted click lies when it was not noted. A person counts either from the start
 * of the motion, or from a click at some moment of the first turn to the last click before the
 * stop. What is left of the spin beside the counted time tells: less than a turn in the first case;
 * in the second the sum of two parts of a turn, each as likely as another.
 */
public final class CountingHabit {
  /** No density counts as less, 1/s. */
  private static final double LEAST = 1e-6;

  private static final int PARTS = 40;

  private CountingHabit() {}

  /**
   * The counted time of a run.
   *
   * @param count the time
   * @param u_left standard uncertainty of {@link CountedTime#left} where the click was not noted
   */
  record Window(CountedTime count, double u_left) {}

  /** Belief that turns were counted from the start of the motion, after all runs; ½ before any. */
  static double fromRest(List<Run> runs) {
    double odds = 1;
    for (Run run : runs) {
      if (run.kind() == RunKind.SPIN && run.arm().orElseThrow().firstClick_s().isEmpty()) {
        ArmTurning arm = run.arm().orElseThrow();
        double turn_s = arm.turnsTime_s().value() / arm.turns();
        double left_s = left_s(arm);
        double ratio = fromRest(left_s, turn_s) / Math.max(1e-12, clicked(left_s, turn_s));
        odds *= Math.max(1 / OwnChoices.LOUDEST, Math.min(OwnChoices.LOUDEST, ratio));
      }
    }
    return odds / (1 + odds);
  }

  /** The counted time of a run, for a run-up with this time constant. */
  static Window window(ArmTurning arm, double runUp_s) {
    double turn_s = arm.turnsTime_s().value() / arm.turns();
    if (arm.firstClick_s().isPresent()) {
      double after_s = arm.firstClick_s().getAsDouble() - arm.spinStart_s();
      return new Window(
          new CountedTime(arm.turnsTime_s().value(), turn_s, OptionalDouble.of(after_s), 0), 0);
    }
    double left_s = Math.max(0, Math.min(2 * turn_s, left_s(arm)));
    double from_s = Math.max(0, left_s - turn_s);
    double to_s = Math.min(turn_s, left_s);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < PARTS; i++) {
      double left = Math.exp(-(from_s + (i + 0.5) / PARTS * (to_s - from_s)) / runUp_s);
      sum += left / PARTS;
      squares += left * left / PARTS;
    }
    double u = Math.sqrt(Math.max(0, squares - sum * sum));
    return new Window(
        new CountedTime(arm.turnsTime_s().value(), turn_s, OptionalDouble.empty(), sum), u);
  }

  private static double left_s(ArmTurning arm) {
    return arm.spinStop_s() - arm.spinStart_s() - arm.turnsTime_s().value();
  }

  /** Density of what is left where counting begins with the motion. */
  private static double fromRest(double left_s, double turn_s) {
    return box(left_s, turn_s);
  }

  private static double clicked(double left_s, double turn_s) {
    double sum = 0;
    for (int i = 0; i < PARTS; i++) {
      sum += box(left_s - (i + 0.5) / PARTS * turn_s, turn_s) / PARTS;
    }
    return sum;
  }

  /** Density of a part of a turn, each as likely, with the noted times' uncertainty. */
  private static double box(double left_s, double turn_s) {
    double scale = OwnChoices.U_NOTED_S * Math.sqrt(2);
    return (Erf.erf(left_s / scale) - Erf.erf((left_s - turn_s) / scale)) / (2 * turn_s);
  }

  /**
   * How much better the times beside the counted ones fit a written number of turns that is wrong
   * by a factor: logarithm of the odds. With the turns counted twice the time of a turn comes out
   * half, and what is left of a spin beside the counted time is often longer than a turn; with half
   * of them it never exceeds half a turn. Nobody need count to the last click, so it speaks no
   * louder than e⁶.
   *
   * @param factor written turns over true ones
   */
  public static double slipEvidence(List<Run> runs, double factor) {
    double fromRest = 0;
    double clicked = 0;
    double noted = 0;
    List<ArmTurning> arms =
        runs.stream()
            .filter(run -> run.kind() == RunKind.SPIN)
            .map(run -> run.arm().orElseThrow())
            .toList();
    for (ArmTurning arm : arms) {
      double turn_s = arm.turnsTime_s().value() / arm.turns();
      double left_s = left_s(arm);
      if (arm.firstClick_s().isPresent()) {
        double after_s = left_s - before_s(arm);
        noted += odds(box(after_s, factor * turn_s), box(after_s, turn_s));
      } else {
        fromRest += odds(fromRest(left_s, factor * turn_s), fromRest(left_s, turn_s));
        clicked += odds(clicked(left_s, factor * turn_s), clicked(left_s, turn_s));
      }
    }
    double all =
        noted
            + firstClicks(arms, factor)
            - firstClicks(arms, 1)
            + (fromRest(runs) > 0.5 ? fromRest : clicked);
    return Math.max(-OwnChoices.LOUDEST_ALL, Math.min(OwnChoices.LOUDEST_ALL, all));
  }

  private static double before_s(ArmTurning arm) {
    return arm.firstClick_s().orElseThrow() - arm.spinStart_s();
  }

  /**
   * Logarithm of the density of the noted first clicks for turns that were written too many by a
   * factor. Who counts either takes the first click that comes, in the first turn, or waits until
   * the arm is steady, which says nothing of how long a turn is; one person does the same in all
   * runs.
   */
  private static double firstClicks(List<ArmTurning> arms, double factor) {
    double first = 0;
    double later = 0;
    for (ArmTurning arm : arms) {
      if (arm.firstClick_s().isPresent()) {
        double turn_s = factor * arm.turnsTime_s().value() / arm.turns();
        first += Math.log(Math.max(LEAST, box(before_s(arm), turn_s)));
        later -= Math.log(OwnChoices.LATER_S);
      }
    }
    double more = Math.max(first, later);
    return more + Math.log(0.5 * Math.exp(first - more) + 0.5 * Math.exp(later - more));
  }

  private static double odds(double one, double other) {
    double log = Math.log(Math.max(LEAST, one) / Math.max(LEAST, other));
    return Math.max(-Math.log(OwnChoices.LOUDEST), Math.min(Math.log(OwnChoices.LOUDEST), log));
  }
}
