package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Constants;
import faintwind.physics.HeatBalance;
import faintwind.physics.Interval;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignAtCorner;
import faintwind.physics.design.SunLoad;
import faintwind.physics.design.TouchLimit;
import java.util.List;

/** How hot the heated ball is to touch, in the sun where it shines. */
public final class TouchSheet {
  private TouchSheet() {}

  static List<Outcome> of(Design design, Interval still, DesignAtCorner model) {
    double air_C = design.air().temperature_K() - Constants.ZERO_C_K;
    Interval sun = design.use().isSunny() ? sunlit_K(design, model) : Interval.exact(0);
    Interval ball_C = still.plus(sun).plus(Interval.exact(air_C));
    double limit_C = TouchLimit.temperature_C(design.use());
    Outcome limit = Outcome.plain(OutcomeId.TOUCH_LIMIT, Interval.exact(limit_C));
    if (ball_C.high() <= limit_C) {
      return List.of(limit, Outcome.good(OutcomeId.HEATED_BALL_TEMPERATURE, ball_C));
    }
    double most_W = most_W(model, limit_C - air_C - (ball_C.high() - air_C - still.nominal()));
    return List.of(limit, hot(design, ball_C, limit_C, most_W));
  }

  /** What full sun adds to the heated ball in still air, K. */
  public static Interval sunlit_K(Design design, DesignAtCorner model) {
    BallDesign b = design.ball();
    Interval absorbed_W =
        SunLoad.absorbed_W(
            b.coat().solarAbsorptance(), SunLoad.FULL_SUN_W_M2, b.diameter_m().nominal());
    return absorbed_W.rising(model::warmedBy_K);
  }

  private static Outcome hot(Design design, Interval ball_C, double limit_C, double most_W) {
    double v = design.supply().voltage_V().nominal();
    boolean useless = most_W < OwnChoices.LEAST_W;
    double ohm = design.heater().series().atLeast_ohm(v * v / Math.max(OwnChoices.LEAST_W, most_W));
    String[] details = {
      Numerals.digits(ball_C.high()),
      Numerals.digits(limit_C),
      Numerals.digits(TouchLimit.counted_s(design.use())),
      Numerals.digits(Math.max(OwnChoices.LEAST_W, most_W)),
      Numerals.digits(ohm)
    };
    OutcomeId id = OutcomeId.HEATED_BALL_TEMPERATURE;
    if (design.use().isInReach()) {
      String reason = useless ? "design.hot-in-reach-always" : "design.hot-in-reach";
      return Judged.stop(id, ball_C, reason, details);
    }
    String reason = useless ? "design.hot-to-touch-always" : "design.hot-to-touch";
    return Judged.improve(id, ball_C, reason, details);
  }

  /** The heat that holds an excess in still air; none where the excess is none. */
  private static double most_W(DesignAtCorner model, double excess_K) {
    HeatBalance balance = model.balance();
    return excess_K <= 0 ? 0 : balance.loss_W(balance.pair().heated(), excess_K, 0);
  }
}
