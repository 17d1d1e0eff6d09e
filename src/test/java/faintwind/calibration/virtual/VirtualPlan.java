package faintwind.calibration.virtual;

import faintwind.calibration.run.Direction;
import java.util.ArrayList;
import java.util.List;

/**
 * What the made-up builder does on the turntable.
 *
 * @param spins speeds in the order turned
 * @param way one recording for all, or one each
 * @param zero_s heater off before anything, s
 * @param warmUp_s warm-up from switching the heater on, s
 * @param rest_s recorded rest after each stop, s
 */
public record VirtualPlan(
    List<Spin> spins, Way way, double zero_s, double warmUp_s, double rest_s) {
  private static final List<Double> SPEEDS = List.of(0.1, 0.2, 0.4, 0.8, 1.4, 2.1, 3.0);

  /** How the recordings are cut. */
  public enum Way {
    /** Warmed up again, then a recording of its own for each speed. */
    SEPARATE,
    /** One recording through warm-up, speeds and rests. */
    STAIRCASE
  }

  /**
   * One speed on the arm.
   *
   * @param speed_m_s at the measured radius
   * @param radius_m measured radius, m
   * @param direction of the arm
   */
  public record Spin(double speed_m_s, double radius_m, Direction direction) {
    /** Long enough to settle: 600 s · (speed / 1 m/s)^−0.28 (own choice, no source). */
    double duration_s() {
      return 600 * Math.pow(speed_m_s, -0.28);
    }
  }

  public VirtualPlan {
    spins = List.copyOf(spins);
  }

  /** Seven speeds from 0.1 to 3 m/s, one recording each, 400 s of rest after each. */
  public static VirtualPlan separateRuns() {
    return new VirtualPlan(oneWay(SPEEDS), Way.SEPARATE, 600, 3000, 400);
  }

  /** The same speeds in one recording with rests of 150 s. */
  public static VirtualPlan staircase() {
    return new VirtualPlan(oneWay(SPEEDS), Way.STAIRCASE, 600, 3000, 150);
  }

  /** Four speeds, each in both directions, one recording each. */
  public static VirtualPlan bothDirections() {
    List<Spin> spins = new ArrayList<>(oneWay(List.of(0.15, 0.4, 1.0, 2.5)));
    for (Spin spin : List.copyOf(spins)) {
      spins.add(new Spin(spin.speed_m_s(), spin.radius_m(), Direction.CCW));
    }
    return new VirtualPlan(spins, Way.SEPARATE, 600, 3000, 400);
  }

  /** One of the three, in turn with the seeds of a study. */
  public static VirtualPlan inTurn(long seed) {
    return switch ((int) (seed % 3)) {
      case 0 -> separateRuns();
      case 1 -> staircase();
      default -> bothDirections();
    };
  }

  private static List<Spin> oneWay(List<Double> speeds_m_s) {
    return speeds_m_s.stream().map(v -> new Spin(v, radius_m(v), Direction.CW)).toList();
  }

  private static double radius_m(double speed_m_s) {
    return speed_m_s < 0.5 ? 0.3 : speed_m_s < 2 ? 0.6 : 0.9;
  }
}
