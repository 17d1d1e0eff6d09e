package faintwind.calibration.virtual;

import faintwind.calibration.run.SignalUnit;
import faintwind.physics.AirState;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Draws a made-up build. Ranges are what the parts lists and workshops of a first-time builder span
 * (own choice, no source); correlations get the tenth by which published ones differ.
 */
public final class VirtualDraw {
  private static final double COPPER_J_M3K = 8933 * 385.0;
  private static final double ALUMINIUM_J_M3K = 2702 * 897.0;

  private final RandomGenerator random;

  private VirtualDraw(long seed) {
    random = new Well19937c(seed);
  }

  /** A build within the range of what home builders make; the same seed gives the same build. */
  public static VirtualBuild build(long seed) {
    return new VirtualDraw(seed).draw();
  }

  private VirtualBuild draw() {
    double diameter_m = between(12.6e-3, 12.8e-3);
    double metal_J_m3K = random.nextDouble() < 0.65 ? COPPER_J_M3K : ALUMINIUM_J_M3K;
    VirtualConvection convection =
        new VirtualConvection(
            near(1, 0.06), near(1, 0.06), between(-0.015, 0.015), between(2.8, 3.4));
    double leads_W_K = between(0.6e-3, 3.5e-3);
    double emissivity = between(0.03, 0.12);
    VirtualBall heated = ball(diameter_m, metal_J_m3K, emissivity, leads_W_K, convection);
    VirtualBall reference =
        ball(
            diameter_m * near(1, 0.001),
            metal_J_m3K,
            emissivity,
            leads_W_K * between(0.3, 0.8),
            convection);
    return new VirtualBuild(heated, reference, heater(), chain(), arm(), room());
  }

  private VirtualBall ball(
      double diameter_m,
      double metal_J_m3K,
      double emissivity,
      double leads_W_K,
      VirtualConvection convection) {
    double solid_J_K = metal_J_m3K * Math.PI / 6 * Math.pow(diameter_m, 3);
    double capacity_J_K = solid_J_K * between(0.91, 0.96) + between(0.05, 0.12);
    return new VirtualBall(diameter_m, capacity_J_K, emissivity, leads_W_K, convection);
  }

  private VirtualHeater heater() {
    return new VirtualHeater(
        near(100, 0.007),
        near(5, 0.005),
        between(-0.004, 0.004),
        between(0.05, 0.12),
        between(0.012, 0.04));
  }

  private VirtualChain chain() {
    VirtualChain.Wire wire = random.nextDouble() < 0.7 ? VirtualChain.Wire.K : VirtualChain.Wire.T;
    double step_s = random.nextDouble() < 0.75 ? 1 : 2;
    double noise_K = Math.exp(between(Math.log(0.004), Math.log(0.04)));
    double kind = random.nextDouble();
    SignalUnit unit =
        kind < 0.6 ? SignalUnit.DELTA_K : kind < 0.8 ? SignalUnit.SIGNAL_UV : SignalUnit.SIGNAL_MV;
    double scale =
        switch (unit) {
          case DELTA_K -> near(1, 0.02);
          case SIGNAL_UV -> wire.slope_uV_K();
          default -> wire.slope_uV_K() * near(100, 0.01) / 1000;
        };
    VirtualChain.Reading reading =
        new VirtualChain.Reading(
            noise_K * scale, between(0.05, 0.5) * noise_K * scale, step_s, 0.01 * step_s);
    return new VirtualChain(unit, wire, scale, near(0, 1) * 0.15 * scale, reading, between(0.8, 4));
  }

  private VirtualArm arm() {
    VirtualArm.Carried carried =
        new VirtualArm.Carried(between(0, 0.05), between(8, 40), between(8, 40), between(0, 0.8));
    return new VirtualArm(
        near(0, 1) * 0.001,
        0.001,
        between(0.005, 0.03),
        near(0, 1) * 0.003,
        carried,
        new VirtualArm.Inertia(between(0.5, 4), between(0.5, 3)));
  }

  private VirtualRoom room() {
    AirState air = new AirState(between(289, 299), between(97_000, 102_500), between(0.3, 0.65));
    return new VirtualRoom(air, between(-0.3, 0.3), between(0.02, 0.15), between(0.001, 0.012));
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Gaussian, cut at 2.5 standard deviations; relative where the centre is not zero. */
  private double near(double centre, double spread) {
    double z = Math.max(-2.5, Math.min(2.5, random.nextGaussian()));
    return centre == 0 ? spread * z : centre * (1 + spread * z);
  }
}
