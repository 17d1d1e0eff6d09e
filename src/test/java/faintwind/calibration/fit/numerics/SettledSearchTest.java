package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Cancelled;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.squares.Linearised;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.Whitening;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A warm-up and a spin by a simple exponential, with noise of 0.02 K (seed 3). */
class SettledSearchTest {
  private static final Setting SETTING = Setting.of(runs());

  private final Setup setup = new Setup(SETTING, SETTING.model(PhysicsShaped.ID));
  private final RunProblem problem = setup.problem();
  private final double[] start = new double[setup.unknowns().size()];

  private static RunSet runs() {
    SplittableRandom random = new SplittableRandom(3);
    Run still =
        MadeRuns.still(
            "still",
            MadeRuns.series(
                0, 10, 2400, t -> 25 * -Math.expm1(-t / 450) + 0.02 * random.nextGaussian()));
    Run spin =
        MadeRuns.spin(
            "spin",
            MadeRuns.series(0, 10, 1500, t -> turned(t) + 0.02 * random.nextGaussian()),
            MadeRuns.arm(300, 700, 80, 390));
    return MadeRuns.set(still, spin);
  }

  private static double turned(double t_s) {
    double end = 12 + 13 * Math.exp(-400 / 200.0);
    return t_s < 300
        ? 25
        : t_s < 700
            ? 12 + 13 * Math.exp(-(t_s - 300) / 200)
            : 25 - (25 - end) * Math.exp(-(t_s - 700) / 450);
  }

  /** Cross-checked: both searches find the same least. */
  @Test
  void gaussAndNewtonFindWhatLevenbergAndMarquardtFind() {
    problem.whiten(start, Wander.FIRST);
    double[] searched = Minimum.of(new Optimiser(200, 1e-8), problem, start, () -> false).point();
    double[] near = Arrays.stream(searched).map(x -> x + 0.02).toArray();
    Optional<double[]> found =
        GaussNewton.from(problem.linearise(near), problem, near, () -> false);
    double least = problem.linearise(searched).norm();
    assertThat(problem.linearise(found.orElseThrow()).norm())
        .isCloseTo(least, within(1e-2 * least));
    for (int i = 0; i < searched.length; i++) {
      assertThat(found.get()[i]).isCloseTo(searched[i], within(0.15));
    }
  }

  @Test
  void aSearchCanBeCancelled() {
    problem.whiten(start, Wander.FIRST);
    Linearised first = problem.linearise(start);
    assertThatThrownBy(() -> GaussNewton.from(first, problem, start, () -> true))
        .isInstanceOf(Cancelled.class);
  }

  @Test
  void theBestOfWhatWasAskedIsKept() {
    problem.whiten(start, Wander.FIRST);
    BestSoFar best = new BestSoFar(problem);
    double[] off = start.clone();
    Arrays.fill(off, 0.5);
    double near = best.apply(start).norm();
    double far = best.apply(off).norm();
    double[] kept = near < far ? start : off;
    assertThat(best.optimum().point()).containsExactly(kept);
    assertThat(best.optimum().sumOfSquares())
        .isCloseTo(Math.pow(Math.min(near, far), 2), within(1e-9));
  }

  /** No strength nearby, up or down by a tenth, makes the residuals likelier. */
  @Test
  void theWanderFoundIsTheLikeliest() {
    problem.whiten(start, Wander.FIRST);
    problem.integrate(Minimum.of(new Optimiser(100, 1e-5), problem, start, () -> false).point());
    Wander found = new WanderSearch(problem).from(Wander.FIRST);
    double least = deviance(found);
    assertThat(least).isLessThan(deviance(Wander.FIRST));
    for (double factor : new double[] {0.9, 1.1}) {
      assertThat(deviance(times(found, factor, 1, 1, 1))).isGreaterThan(least - 1e-6);
      assertThat(deviance(times(found, 1, factor, 1, 1))).isGreaterThan(least - 1e-6);
      assertThat(deviance(times(found, 1, 1, factor, 1))).isGreaterThan(least - 1e-6);
      assertThat(deviance(times(found, 1, 1, 1, factor))).isGreaterThan(least - 1e-6);
    }
  }

  private static Wander times(
      Wander wander, double rest, double turning, double draught, double white) {
    return new Wander(
        Math.max(1e-6, wander.rest_s() * rest),
        Math.max(1e-6, wander.turning_s() * turning),
        Math.max(1e-8, wander.draught_m2_s() * draught),
        Math.max(0.4, wander.white() * white),
        wander.memory_s());
  }

  private double deviance(Wander wander) {
    double sum = 0;
    for (int k = 0; k < problem.tracks().size(); k++) {
      sum +=
          Whitening.of(problem.tracks().get(k).rows, problem.course(k), wander)
              .deviance(problem.residuals(k));
    }
    return sum;
  }
}
