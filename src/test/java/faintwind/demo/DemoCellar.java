package faintwind.demo;

import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.virtual.VirtualArm;
import faintwind.calibration.virtual.VirtualBall;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualChain;
import faintwind.calibration.virtual.VirtualConvection;
import faintwind.calibration.virtual.VirtualHeater;
import faintwind.calibration.virtual.VirtualRoom;
import faintwind.physics.AirState;

/** The made-up instrument of the demonstration, and a made-up day's draughts in its cellar. */
final class DemoCellar {
  static final long SEED = 40_321;
  private static final VirtualConvection SHAPE = new VirtualConvection(1.03, 0.97, 0.006, 3.1);
  private static final AirState WORKSHOP = new AirState(292.65, 100_200, 0.48);
  private static final AirState CELLAR = new AirState(285.35, 100_600, 0.88);

  private DemoCellar() {}

  static VirtualBuild onTheTurntable() {
    VirtualChain.Wire wire = VirtualChain.Wire.T;
    return new VirtualBuild(
        new VirtualBall(0.01270, 3.55, 0.04, 1.6e-3, SHAPE),
        new VirtualBall(0.01269, 3.52, 0.04, 0.7e-3, SHAPE),
        new VirtualHeater(100.2, 4.99, 0.001, 0.08, 0.025),
        new VirtualChain(
            SignalUnit.SIGNAL_UV,
            wire,
            wire.slope_uV_K(),
            -1.8,
            new VirtualChain.Reading(0.4, 0.03, 1, 0.02),
            2),
        new VirtualArm(
            0.0006,
            0.001,
            0.012,
            0.001,
            new VirtualArm.Carried(0.024, 18, 22, 0),
            new VirtualArm.Inertia(1.6, 1.1)),
        new VirtualRoom(WORKSHOP, 0.15, 0.05, 0.004));
  }

  static VirtualBuild inTheCellar() {
    VirtualBuild build = onTheTurntable();
    VirtualChain chain = build.chain();
    VirtualChain slow =
        new VirtualChain(
            chain.unit(),
            chain.wire(),
            chain.scale(),
            chain.offset(),
            new VirtualChain.Reading(0.4, 0.03, 10, 0.02),
            chain.bead_s());
    return build.in(new VirtualRoom(CELLAR, 0.02, 0.05, 0.006)).readBy(slow);
  }

  /** Still at night, a slow draught by day, the door three times, the fan for an hour. */
  static double draught_m_s(double time_s) {
    double hour = time_s / 3600;
    double day = hour > 6 && hour < 19 ? 0.12 + 0.05 * Math.sin(2 * Math.PI * hour / 1.7) : 0.0;
    double door = door(hour, 7.2) + door(hour, 12.1) + door(hour, 17.6);
    double fan = hour > 14 && hour < 15 ? 0.45 : 0;
    return Math.max(0, day) + door + fan;
  }

  private static double door(double hour, double opened) {
    double minutes = (hour - opened) * 60;
    return minutes > 0 && minutes < 12 ? 0.9 * Math.exp(-minutes / 6) : 0;
  }
}
