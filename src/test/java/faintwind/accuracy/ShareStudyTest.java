package faintwind.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualArm;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.calibration.virtual.VirtualRoom;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whether the carried share and its uncertainty are right where arm and room are such as the fit
 * itself expects: share, rise, decay, its slowing, draught, run-up and run-down are drawn from what
 * is believed of them before any run (numbers of ArmPriors and Setup, written out here). Of what is
 * believed, one thing is left out: here the rise does not go with the time of a turn. An inference
 * that is right has then no error on the mean, and errors as large as it says (the idea of
 * simulation-based calibration, Cook, Gelman and Rubin 2006, from memory). The virtual instrument
 * is this program's own: this tests the inference, not the physics. {@code -Daccuracy.builds=N} and
 * {@code -Daccuracy.seed=N} take others.
 */
@Tag("slow")
class ShareStudyTest {
  private static final double LEAST_SHARE = 0.0005;

  /**
   * A build.
   *
   * @param error of the share
   * @param u its standard uncertainty
   */
  private record Found(double error, double u) {
    double inDeviations() {
      return error / u;
    }
  }

  @Test
  void theShareIsRightOnTheMeanAndItsUncertaintyIsItsScatter() {
    long first = Long.getLong("accuracy.seed", 700_000);
    int builds = Integer.getInteger("accuracy.builds", 80);
    List<Found> all =
        LongStream.range(first, first + builds).parallel().mapToObj(ShareStudyTest::found).toList();
    double mean = all.stream().mapToDouble(Found::error).average().orElseThrow();
    double rms =
        Math.sqrt(all.stream().mapToDouble(f -> f.error() * f.error()).average().orElseThrow());
    double deviation =
        Math.sqrt(
            all.stream().mapToDouble(f -> Math.pow(f.inDeviations(), 2)).average().orElseThrow());
    System.out.printf(
        Locale.ROOT,
        "%d builds from %d: share off by %+.2f %% on the mean, %.2f %% rms, %.2f of its u%n",
        builds,
        first,
        100 * mean,
        100 * rms,
        deviation);
    // the mean of 80 has a standard deviation of 0.08 %
    assertThat(mean).isBetween(-0.0022, 0.0022);
    assertThat(deviation).isBetween(0.75, 1.25);
  }

  private static Found found(long seed) {
    RandomGenerator random = new Well19937c(seed * 31);
    double share = positive(random, 0.03, 0.02);
    VirtualArm.Carried carried =
        new VirtualArm.Carried(
            share, usual(random, 20, 0.5), usual(random, 25, 0.4), positive(random, 0.1, 0.2));
    VirtualBuild build = build(seed, carried, random);
    RunSet set = VirtualRehearsal.calibration(build, VirtualPlan.staircase(), seed * 10).runSet();
    SessionShown shown = SampleBench.value(FitToRuns.fit(set, () -> false)).shown();
    int k = shown.names().indexOf("carried_share");
    return new Found(shown.estimates().get(k) - share, Math.sqrt(shown.covariance().at(k, k)));
  }

  /** A build of the program's own range, on such an arm in such a room as is believed. */
  private static VirtualBuild build(long seed, VirtualArm.Carried carried, RandomGenerator random) {
    double draught_m_s = usual(random, 0.01, 0.3);
    VirtualArm.Inertia inertia =
        new VirtualArm.Inertia(usual(random, 2, 0.5), usual(random, 1.5, 0.5));
    VirtualBuild drawn = VirtualDraw.build(seed);
    VirtualArm arm = drawn.arm();
    VirtualRoom room = drawn.room();
    double component_m_s = draught_m_s / Math.sqrt(2);
    return drawn
        .on(
            new VirtualArm(
                arm.radiusError_m(),
                arm.u_radius_m(),
                arm.unsteadiness(),
                arm.asymmetry(),
                carried,
                inertia))
        .in(new VirtualRoom(room.air(), room.drift_K_h(), room.wander_K(), component_m_s));
  }

  private static double usual(RandomGenerator random, double value, double spread) {
    return value * Math.exp(spread * random.nextGaussian());
  }

  /** Drawn until it is not negative. */
  private static double positive(RandomGenerator random, double mean, double spread) {
    double drawn = mean + spread * random.nextGaussian();
    return drawn >= LEAST_SHARE ? drawn : positive(random, mean, spread);
  }
}
