package faintwind.physics.design;

import faintwind.physics.AirState;
import faintwind.physics.HeatBalance;
import faintwind.physics.Interval;
import faintwind.physics.part.LoggerProfile;
import java.util.Set;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * What the logger can tell apart. Readings once a second over the averaging time: the noise falls
 * with their root, the rounding to steps does not.
 */
public final class Detection {
  /** Difference of the air between two balls a hand apart, K (common practice, no source). */
  public static final double BETWEEN_BALLS_K = 0.1;

  private static final double COVERAGE = 2;
  private static final double FASTEST_M_S = 20;

  private static final Set<Corner.Part> SLOW_END = Set.of(Corner.Part.ROOM, Corner.Part.MIXING);

  private final SenseDesign sense;
  private final DesignAtCorner model;

  /**
   * The smallest speed and what it follows from.
   *
   * @param still_K delta in still air if no lead took heat, K
   * @param logger_K what the logger hides, K
   * @param room_K what the room hides, K
   * @param speed_m_s the speed, m/s
   */
  public record Smallest(double still_K, double logger_K, double room_K, double speed_m_s) {
    /** How far delta has to fall, K. */
    public double needed_K() {
      return Math.hypot(logger_K, room_K);
    }
  }

  public Detection(SenseDesign sense, DesignAtCorner model) {
    this.sense = sense;
    this.model = model;
  }

  /** At the nominal of a design. */
  public static Detection of(Design design) {
    return at(design, Corner.NOMINAL);
  }

  /** Delta in still air of another state, K. */
  public static double still_K(Design design, AirState air) {
    HeatBalance other = new HeatBalance(DesignAtCorner.air(design).pair(), air);
    return new DesignAtCorner(design, Corner.NOMINAL, other).delta_K(0);
  }

  private static Detection at(Design design, Corner corner) {
    return new Detection(
        design.sense(), new DesignAtCorner(design, corner, DesignAtCorner.air(design)));
  }

  /**
   * The smallest speed from a quiet room to a restless one, m/s, with the exponent of mixing at its
   * edges too: it is one number for all balls, so it does not average out.
   */
  public static Interval range_m_s(Design design) {
    double low = at(design, new Corner(SLOW_END, Corner.Edge.LOW)).smallest_m_s();
    double nominal = of(design).smallest_m_s();
    double high = at(design, new Corner(SLOW_END, Corner.Edge.HIGH)).smallest_m_s();
    return new Interval(Math.min(low, nominal), nominal, Math.max(nominal, high));
  }

  /** Standard uncertainty of an averaged reading, V before the amplifier. */
  double u_V() {
    LoggerProfile logger = sense.logger();
    double noise = logger.noise_V() / Math.sqrt(Math.max(1, sense.averaging_s()));
    return Math.hypot(noise, logger.step_V() / Math.sqrt(12)) / sense.gain();
  }

  /** Smallest difference that can be told, K: twice the standard uncertainty over the slope. */
  public double resolution_K(double delta_K) {
    double slope = (model.signal_V(delta_K + 0.5) - model.signal_V(delta_K - 0.5));
    return COVERAGE * u_V() / slope;
  }

  /** The same as a speed, m/s. */
  public double resolution_m_s(double speed_m_s) {
    double delta = model.delta_K(speed_m_s);
    return resolution_K(delta) / Math.abs(model.slope_K_per_m_s(speed_m_s));
  }

  /** What a difference of the air between the balls does to the speed, as a share of it. */
  public double betweenBallsShare(double speed_m_s) {
    return BETWEEN_BALLS_K / Math.abs(model.slope_K_per_m_s(speed_m_s)) / speed_m_s;
  }

  /** The smallest speed that can be told from still air, m/s; see {@link #smallest}. */
  public double smallest_m_s() {
    return smallest().speed_m_s();
  }

  /**
   * The smallest speed that can be told from still air: where delta has fallen by logger and room
   * together (root of the sum of squares); the largest speed looked at where it never does. Leads
   * that carry heat off make a ball cooler and its own rising air weaker; that is no gain, because
   * their heat tells nothing about the air. So the ball without leads is looked at, with everything
   * that hides its signal larger by what the leads take of it: r = delta with over delta without
   * leads shrinks delta, and its relative fall once more (dθ/θ = −dG/(G + G_w), first order).
   */
  public Smallest smallest() {
    DesignAtCorner bare = model.withoutLeads();
    double still = bare.delta_K(0);
    double r = model.delta_K(0) / still;
    double logger = Math.sqrt(2) * resolution_K(still) / (r * r);
    Smallest parts = new Smallest(still, logger, roomPart_K(bare, r), FASTEST_M_S);
    if (still - bare.delta_K(FASTEST_M_S) <= parts.needed_K()) {
      return parts;
    }
    double speed =
        new BrentSolver(1e-9, 1e-7)
            .solve(200, u -> still - bare.delta_K(u) - parts.needed_K(), 0, FASTEST_M_S);
    return new Smallest(still, logger, parts.room_K(), speed);
  }

  /**
   * What the room is to blame for, K: what its draught takes off delta, what the drift of the
   * supply does (delta goes with the power, and so with the square of the voltage), the difference
   * of the air between the balls, and its warming, which unequal balls follow unequally; as the
   * root of the sum of squares.
   */
  private static double roomPart_K(DesignAtCorner bare, double r) {
    Room room = bare.room();
    double still = bare.delta_K(0);
    double draught = still - bare.delta_K(room.draught_m_s());
    double supply = 2 * room.supplyShare() * still / r;
    double warming = room.warming_K_h() * DesignCourse.drift_K(bare);
    double air = Math.hypot(room.between_K(), warming) / (r * r);
    return Math.hypot(Math.hypot(draught, supply), air);
  }
}
