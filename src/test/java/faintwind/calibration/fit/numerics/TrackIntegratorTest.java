package faintwind.calibration.fit.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.judging.SampleRuns;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Forward sensitivities of the heat balance (seed 20261125)")
class TrackIntegratorTest {

  @ParameterizedTest
  @ValueSource(strings = {"bench-b", "bench-c", "bench-f"})
  void sensitivitiesAgreeWithFiniteDifferencesInEveryUnknown(String bench) {
    Setting setting = Setting.of(SampleRuns.of(bench));
    Setup setup = new Setup(setting, ResponseModel.of(PhysicsShaped.ID, setting.referenceAir()));
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
      double limit = name.equals("mismatch") ? 0.5 : 0.02;
      assertThat(worst).as(name).isLessThan(limit * scale + 2e-5 * setting.largest());
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
