package faintwind.calibration.flow;

import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of an opening the instrument itself fills. Own limits, no source: at most a tenth of the
 * area of a duct, and in a slot balls of at most a quarter of its height. The air that is left
 * passes faster by up to the share that is filled; half of it is taken off.
 *
 * @param ball_m diameter of the balls
 * @param front_m2 area of both balls and what holds them, seen along the flow
 */
public record InTheWay(double ball_m, double front_m2) {
  /** Largest share of the area that may be filled. */
  public static final double MOST_FILLED = 0.10;

  /** From here on it is told. */
  public static final double TOLD = 0.02;

  /** Largest diameter of a ball against the height of a slot. */
  public static final double MOST_OF_SLOT = 0.25;

  public InTheWay {
    if (!(ball_m > 0 && front_m2 > 0)) {
      throw new IllegalArgumentException("ball " + ball_m + ", front " + front_m2 + ": above 0");
    }
  }

  /** Two balls, their holder as much again as one of them: own assumption. */
  public static InTheWay balls(double diameter_m) {
    return new InTheWay(diameter_m, 3 * Math.PI / 4 * diameter_m * diameter_m);
  }

  /** Share of the opening that is filled. */
  public double share(Opening opening) {
    return front_m2 / opening.area_m2();
  }

  /** What the measured mean is multiplied by. */
  double factor(Opening opening) {
    return 1 - share(opening) / 2;
  }

  /** Relative standard uncertainty of that: anything from nothing to the whole, evenly. */
  double u_factor(Opening opening) {
    return share(opening) / 2 / Math.sqrt(3);
  }

  /** Whether the instrument suits the opening; refused where it fills too much of it. */
  public Checked<Opening> suits(Opening opening, Where where) {
    List<Problem> problems = new ArrayList<>();
    double share = share(opening);
    String percent = Numerals.digits(100 * share, 2);
    String ball_mm = Numerals.digits(1000 * ball_m, 3);
    if (opening.shape().isSlot() && ball_m > MOST_OF_SLOT * opening.narrow_m()) {
      String narrow_mm = Numerals.digits(1000 * opening.narrow_m(), 3);
      problems.add(Problem.error("flow.slot-too-narrow", where, ball_mm, narrow_mm));
    }
    if (share > MOST_FILLED) {
      problems.add(Problem.error("flow.opening-too-small", where, percent, ball_mm));
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    return share > TOLD
        ? Checked.ok(opening, List.of(Problem.warning("flow.in-the-way", where, percent)))
        : Checked.ok(opening);
  }
}
