package faintwind.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * The two balls in time: C·dT/dt = P(t) − loss(T − T_air, U(t)) for each, integrated by the
 * Dormand–Prince 8(5,3) method (Hairer, Nørsett, Wanner 1993) to 1e-9 K. Air temperature is
 * constant.
 */
public final class PairCourse {
  private static final double TOLERANCE_K = 1e-9;

  private final BallPair pair;
  private final Loss heated;
  private final Loss reference;

  /** The loss of each ball is given, so that any law of heat loss can be followed. */
  public PairCourse(BallPair pair, Loss heated, Loss reference) {
    this.pair = pair;
    this.heated = heated;
    this.reference = reference;
  }

  /** Heat lost by a ball. */
  @FunctionalInterface
  public interface Loss {
    /** Heat lost, W, at an excess over the air, K, and an air speed, m/s. */
    double loss_W(double excess_K, double speed_m_s);
  }

  /**
   * What drives the balls at a moment.
   *
   * @param heating heat put in
   * @param speed_m_s air speed, m/s
   */
  public record Drive(Heating heating, double speed_m_s) {}

  /**
   * Both balls at a moment.
   *
   * @param time_s time, s
   * @param heated_K heated ball above the air, K
   * @param reference_K reference ball above the air, K
   */
  public record Point(double time_s, double heated_K, double reference_K) {
    /** Delta, K. */
    public double delta_K() {
      return heated_K - reference_K;
    }
  }

  /**
   * Follows both balls.
   *
   * @param start where they begin
   * @param drive heat and speed at a time, s; steps in it should fall on entries of the times
   * @param times_s times wanted, increasing, the first after the start
   * @return one point for each time
   */
  public List<Point> follow(Point start, DoubleFunction<Drive> drive, List<Double> times_s) {
    double[] state = {start.heated_K(), start.reference_K()};
    double from_s = start.time_s();
    List<Point> points = new ArrayList<>();
    for (double to_s : times_s) {
      if (!(to_s > from_s)) {
        throw new IllegalArgumentException("times_s: " + to_s + " after " + from_s);
      }
      var integrator =
          new DormandPrince853Integrator(1e-6, to_s - from_s, TOLERANCE_K, TOLERANCE_K);
      integrator.integrate(equations(drive), from_s, state, to_s, state);
      points.add(new Point(to_s, state[0], state[1]));
      from_s = to_s;
    }
    return points;
  }

  private FirstOrderDifferentialEquations equations(DoubleFunction<Drive> drive) {
    return new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 2;
      }

      @Override
      public void computeDerivatives(double t, double[] y, double[] yDot) {
        Drive now = drive.apply(t);
        double u = now.speed_m_s();
        yDot[0] =
            (now.heating().heated_W() - heated.loss_W(y[0], u)) / pair.heated().heatCapacity_J_K();
        yDot[1] =
            (now.heating().reference_W() - reference.loss_W(y[1], u))
                / pair.reference().heatCapacity_J_K();
      }
    };
  }
}
