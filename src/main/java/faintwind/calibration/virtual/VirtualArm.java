package faintwind.calibration.virtual;

import faintwind.calibration.run.Direction;

/**
 * The made-up turntable arm and the person who turns it.
 *
 * @param radiusError_m true radius less the radius that was measured, m
 * @param u_radius_m what the builder states as its standard uncertainty, m
 * @param unsteadiness relative standard deviation of the speed within a turn or so
 * @param asymmetry relative gain of clockwise over counter-clockwise speed past the ball, halved
 * @param carried air carried round by the arm
 * @param inertia how the arm comes to speed and to rest
 */
public record VirtualArm(
    double radiusError_m,
    double u_radius_m,
    double unsteadiness,
    double asymmetry,
    Carried carried,
    Inertia inertia) {

  /**
   * Time constants of the arm's own speed; turns are counted once it is up to speed.
   *
   * @param up_s coming to speed, s
   * @param down_s coming to rest, s
   */
  public record Inertia(double up_s, double down_s) {}

  /**
   * Air carried round by the arm: rises to a share of the arm's speed, decays after the stop.
   *
   * @param share of the arm's speed once settled, 0 to 1
   * @param rise_s time constant of its rise, s
   * @param decay_s time constant of its decay at first, s
   * @param slowing power with which the decay slows as the air does: its rate goes with (speed now
   *     / speed at the stop) to this power; 0 is a plain exponential, 1 the drag of a turbulent
   *     swirl
   */
  public record Carried(double share, double rise_s, double decay_s, double slowing) {
    /** How fast it decays, 1/s, at a share of the speed that it had at the stop. */
    double decayRate_1_s(double left) {
      return Math.pow(Math.min(1, Math.max(0, left)), slowing) / decay_s;
    }
  }

  /** Speed of the ball through the room for a wanted speed at the radius that was measured. */
  double ballSpeed_m_s(VirtualStage stage) {
    double radius_m = stage.radius_m();
    double side = stage.direction() == Direction.CW ? 1 + asymmetry : 1 - asymmetry;
    return stage.speed_m_s() * (radius_m + radiusError_m) / radius_m * side;
  }
}
