package faintwind.physics.design;

import faintwind.physics.BallPair;
import faintwind.physics.HeatBalance;
import faintwind.physics.Heating;
import faintwind.physics.PairCourse;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Warm-up and cool-down of a design in still air: both balls followed in time by {@link
 * PairCourse}, the heater's power changing with the temperature of its resistor.
 */
public final class DesignCourse {
  private static final int POINTS_A_TIME_CONSTANT = 20;
  private static final int TIME_CONSTANTS = 9;

  /** Share of the still-air delta that is left to go, or left over. */
  private static final double NEAR = 0.01;

  private static final double WARMING_AIR_K_S = 1.0 / 3600;

  private final DesignAtCorner model;
  private final List<CoursePoint> points;

  public DesignCourse(DesignAtCorner model) {
    this.model = model;
    HeatBalance balance = model.balance();
    double step_s = model.timeConstant_s(0) / POINTS_A_TIME_CONSTANT;
    List<Double> times_s =
        IntStream.rangeClosed(1, TIME_CONSTANTS * POINTS_A_TIME_CONSTANT)
            .mapToObj(i -> i * step_s)
            .toList();
    double still_K = model.delta_K(0);
    List<PairCourse.Point> up =
        heated().follow(new PairCourse.Point(0, 0, 0), DesignCourse::off, times_s);
    List<PairCourse.Point> down =
        balance.course().follow(new PairCourse.Point(0, still_K, 0), DesignCourse::off, times_s);
    List<CoursePoint> all = new ArrayList<>();
    all.add(new CoursePoint(0, 0, still_K));
    for (int i = 0; i < up.size(); i++) {
      all.add(new CoursePoint(times_s.get(i), up.get(i).delta_K(), down.get(i).delta_K()));
    }
    points = List.copyOf(all);
  }

  /** The heater's power depends on the ball's temperature, so it is taken off the loss. */
  private PairCourse heated() {
    HeatBalance balance = model.balance();
    BallPair pair = balance.pair();
    return new PairCourse(
        pair,
        (excess_K, speed_m_s) ->
            balance.loss_W(pair.heated(), excess_K, speed_m_s)
                - model.resistor().power_W(balance.air_K() + excess_K),
        (excess_K, speed_m_s) -> balance.loss_W(pair.reference(), excess_K, speed_m_s));
  }

  private static PairCourse.Drive off(double time_s) {
    return new PairCourse.Drive(Heating.OFF, 0);
  }

  public List<CoursePoint> points() {
    return points;
  }

  /** Time from cold until delta is within a hundredth of its end, s. */
  public double warmUp_s() {
    double wanted = (1 - NEAR) * model.delta_K(0);
    return crossing(p -> p.warming_K() - wanted);
  }

  /** Time after the heater was switched off until a hundredth of delta is left, s. */
  public double coolDown_s() {
    double wanted = NEAR * model.delta_K(0);
    return crossing(p -> wanted - p.cooling_K());
  }

  /** Where a quantity that starts below zero reaches it, by straight lines between the points. */
  private double crossing(ToDoubleFunction<CoursePoint> above) {
    for (int i = 1; i < points.size(); i++) {
      double now = above.applyAsDouble(points.get(i));
      if (now >= 0) {
        double before = above.applyAsDouble(points.get(i - 1));
        double share = -before / (now - before);
        double from_s = points.get(i - 1).time_s();
        return from_s + share * (points.get(i).time_s() - from_s);
      }
    }
    return points.get(points.size() - 1).time_s();
  }

  /**
   * What delta changes by while the air warms by 1 K an hour, K: rate·(τ_reference − τ_heated),
   * since each ball follows the air late by its own time constant C/(dQ/dT) (first order, heat
   * balance).
   */
  public static double drift_K(DesignAtCorner model) {
    HeatBalance balance = model.balance();
    double delta = model.delta_K(0);
    double heated =
        balance.pair().heated().heatCapacity_J_K() / slope_W_K(balance, delta, Side.HEATED);
    double reference =
        balance.pair().reference().heatCapacity_J_K() / slope_W_K(balance, 0.5, Side.REFERENCE);
    return WARMING_AIR_K_S * (reference - heated);
  }

  private enum Side {
    HEATED,
    REFERENCE
  }

  private static double slope_W_K(HeatBalance balance, double excess_K, Side side) {
    var ball = side == Side.HEATED ? balance.pair().heated() : balance.pair().reference();
    double more = balance.loss_W(ball, excess_K + 0.1, 0);
    return (more - balance.loss_W(ball, excess_K - 0.1, 0)) / 0.2;
  }
}
