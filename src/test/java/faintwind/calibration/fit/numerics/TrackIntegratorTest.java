package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.FormulaFit;
import faintwind.calibration.fit.judging.SampleRuns;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Forward sensitivities of the heat balance (seed 20261125)")
class TrackIntegratorTest {

  @Tag("long")
  @Test
  void theBallOfTheBuildRecordIsTheOneThatIsFitted() {
    RunSet runs = SampleRuns.of("bench-b");
    BuildFacts build =
        new BuildFacts(
            Optional.of(Uncertain.of(0.0159)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            BuildFacts.Wires.NOT_KNOWN);
    RunSet known = new RunSet(runs.runs(), runs.chain(), Optional.of(build));
    FormulaFit fit =
        FitToRuns.fit(known, "king-half", () -> false)
            .fold(
                (value, notes) -> value.formulaFit(),
                problems -> {
                  throw new AssertionError(problems.toString());
                });
    assertThat(fit.diameter_m()).isEqualTo(0.0159);
    assertThat(Setting.of(runs).ball_m()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bench-b", "bench-c", "bench-f"})
  void sensitivitiesAgreeWithFiniteDifferencesInEveryUnknown(String bench) {
    Setting setting = Setting.of(SampleRuns.of(bench));
    Setup setup = new Setup(setting, setting.model(PhysicsShaped.ID));
    RunProblem problem = setup.problem();
    Random random = new Random(20261125);
    double[] x = random.doubles(setup.unknowns().size(), -0.3, 0.3).toArray();
    double[] slopes = setup.unknowns().slopes(x);
    Track track = problem.tracks().get(problem.tracks().size() - 1);
    TrackIntegrator integrator = new TrackIntegrator(setup.layout(), track);
    int[] columns = integrator.columns();
    int rows = track.rows.size();
    double[][] jacobian = new double[rows][columns.length];
    double[][] unused = new double[rows][columns.length];
    integrator.run(setup.unknowns().values(x), new double[rows], jacobian);

    for (int c = 0; c < columns.length; c++) {
      double step = 1e-5;
      double[] up = signals(integrator, setup, x, columns[c], step, unused);
      double[] down = signals(integrator, setup, x, columns[c], -step, unused);
      double scale = 1e-6;
      double worst = 0;
      for (int i = 0; i < rows; i++) {
        double expected = (up[i] - down[i]) / (2 * step);
        scale = Math.max(scale, Math.abs(expected));
        worst = Math.max(worst, Math.abs(expected - jacobian[i][c] * slopes[columns[c]]));
      }
      String name = setup.unknowns().get(columns[c]).name();
      // The reference ball's small course is taken as given, and a ramp's corner may cross a step.
      double limit = name.equals("mismatch") ? 0.5 : name.startsWith("draught") ? 0.05 : 0.02;
      assertThat(worst).as(name).isLessThan(limit * scale + 2e-5 * setting.largest());
    }
  }

  @Test
  void sensitivitiesStayBoundedWhereTheAirIsCarriedAlongWithinAStep() {
    Setting setting = Setting.of(SampleRuns.of("bench-f"));
    Setup setup = new Setup(setting, setting.model(PhysicsShaped.ID));
    Track track = setup.problem().tracks().get(setup.problem().tracks().size() - 1);
    TrackIntegrator integrator = new TrackIntegrator(setup.layout(), track);
    double[] x = new double[setup.unknowns().size()];
    int rise = setup.layout().carriedRise();
    x[rise] = setup.unknowns().get(rise).x(0.8);
    double[] slopes = setup.unknowns().slopes(x);
    int[] columns = integrator.columns();
    double[][] jacobian = new double[track.rows.size()][columns.length];
    integrator.run(setup.unknowns().values(x), new double[track.rows.size()], jacobian);

    for (double[] row : jacobian) {
      for (int c = 0; c < columns.length; c++) {
        assertThat(Math.abs(row[c] * slopes[columns[c]]))
            .as(setup.unknowns().get(columns[c]).name())
            .isLessThan(10 * setting.largest());
      }
    }
  }

  private static double[] signals(
      TrackIntegrator integrator, Setup setup, double[] x, int column, double step, double[][] by) {
    double[] moved = x.clone();
    moved[column] += step;
    double[] signals = new double[by.length];
    integrator.run(setup.unknowns().values(moved), signals, by);
    return signals;
  }
}
