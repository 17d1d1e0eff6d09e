package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.squares.Linearised;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Laws of the least squares of all recordings: a zero run, a warm-up, and a spin each way. */
class RunProblemTest {
  private static final Run ZERO =
      MadeRuns.zero("zero", MadeRuns.series(0, 10, 300, t -> 0.1 + 0.01 * Math.sin(t)));
  private static final Run STILL =
      MadeRuns.still("still", MadeRuns.series(0, 10, 2400, t -> 25 * -Math.expm1(-t / 450)));
  private static final Run SPIN =
      MadeRuns.spin(
          "spin",
          MadeRuns.series(0, 10, 1500, t -> t < 300 || t > 700 ? 25 : 15),
          MadeRuns.arm(300, 700, 80, 390));

  private final Setting setting = Setting.of(MadeRuns.set(ZERO, STILL, SPIN));
  private final Setup setup = new Setup(setting, setting.model(PhysicsShaped.ID));
  private final RunProblem problem = setup.problem();
  private final double[] point = point(setup.unknowns().size());

  private static double[] point(int size) {
    double[] point = new double[size];
    for (int i = 0; i < size; i++) {
      point[i] = 0.3 * Math.sin(i + 1);
    }
    return point;
  }

  private double cost(double[] x) {
    return Math.pow(problem.linearise(x).norm(), 2);
  }

  private void putWhatIsPredictedThere() {
    problem.integrate(point);
    put(0, point);
  }

  /** What was predicted last, a zero run that is so much off, and these centres of the priors. */
  private void put(double zeroOff, double[] targets) {
    List<double[]> signals = new ArrayList<>();
    for (int k = 0; k < problem.tracks().size(); k++) {
      signals.add(problem.predicted(k).clone());
    }
    int offset = setup.layout().path(ThermalPath.OFFSET);
    double zero = problem.unknowns().get(offset).value(point[offset]);
    problem.replace(signals, new double[] {zero + zeroOff}, targets);
  }

  /** Recordings as predicted, and the priors' centres where the point is. */
  @Test
  void whatIsPredictedAndBelievedCostsNothing() {
    problem.whiten(point, Wander.FIRST);
    assertThat(cost(point)).isGreaterThan(100);
    putWhatIsPredictedThere();
    assertThat(cost(point)).isLessThan(1e-6);
    for (int k = 0; k < problem.tracks().size(); k++) {
      assertThat(Arrays.stream(problem.residuals(k)).map(Math::abs).max().orElseThrow())
          .isLessThan(1e-12);
    }
  }

  /** One standard deviation off in what is believed of one unknown costs 1 more. */
  @Test
  void aPriorsCentreOneOffCostsOne() {
    problem.whiten(point, Wander.FIRST);
    putWhatIsPredictedThere();
    double[] targets = point.clone();
    targets[3] += 1;
    put(0, targets);
    assertThat(cost(point)).isCloseTo(1, within(1e-6));
    put(2 * problem.zeros().get(0).u(), targets);
    assertThat(cost(point)).isCloseTo(5, within(1e-6));
  }

  /** Rᵀ y is half the slope of the sum of squares, whatever the unknown. */
  @Test
  void theGradientIsThatOfTheSumOfSquares() {
    problem.whiten(point, Wander.FIRST);
    Linearised at = problem.linearise(point);
    double[] gradient = new double[point.length];
    for (int r = 0; r < point.length; r++) {
      for (int i = 0; i < point.length; i++) {
        gradient[i] += at.jacobian[r][i] * at.residuals[r];
      }
    }
    double step = 1e-5;
    double largest = Arrays.stream(gradient).map(Math::abs).max().orElseThrow();
    for (int i = 0; i < point.length; i++) {
      double[] up = point.clone();
      double[] down = point.clone();
      up[i] += step;
      down[i] -= step;
      double slope = (cost(up) - cost(down)) / (4 * step);
      assertThat(gradient[i])
          .as(problem.unknowns().get(i).name())
          .isCloseTo(slope, within(1e-3 * Math.abs(slope) + 1e-5 * largest));
    }
  }

  /** What each place of the layout is called, so that no two are mixed up. */
  @Test
  void placesOfTheLayoutAreThoseOfTheirUnknowns() {
    Layout layout = setup.layout();
    Map<String, Integer> places =
        Map.ofEntries(
            Map.entry("heating", layout.path(ThermalPath.HEATING)),
            Map.entry("offset", layout.path(ThermalPath.OFFSET)),
            Map.entry("carried_share", layout.carriedShare()),
            Map.entry("carried_rise", layout.carriedRise()),
            Map.entry("carried_decay", layout.carriedDecay()),
            Map.entry("run_up", layout.runUp()),
            Map.entry("counted_from_rest", layout.fromRest()),
            Map.entry("asymmetry", layout.asymmetry()),
            Map.entry("draught", layout.draught()),
            Map.entry("carried_slowing", layout.carriedSlowing()),
            Map.entry("carried_by_turn", layout.carriedByTurn()),
            Map.entry("run_down", layout.runDown()),
            Map.entry("clock", layout.clock()));
    places.forEach(
        (name, place) -> assertThat(problem.unknowns().get(place).name()).isEqualTo(name));
    assertThat(layout.shared()).isEqualTo(layout.clock() + 1);
  }
}
