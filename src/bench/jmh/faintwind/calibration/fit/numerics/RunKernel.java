package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.setup.Setup;

import faintwind.calibration.fit.setup.Setting;

import faintwind.bench.Spent;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.RunSet;
import faintwind.files.run.RunsTable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Integration of one run of a fit, with the sensitivities to all its unknowns. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RunKernel {
  private static final Path RUNS =
      Path.of("src/test/resources/sample-runs/bench-b/in/runs.csv");

  private double[] values;
  private double[] predicted;
  private double[][] jacobian;
  private TrackIntegrator integrator;

  /** Takes the last recording of a sample bench. */
  @org.openjdk.jmh.annotations.Setup
  public void begin() throws IOException {
    RunSet runs =
        RunsTable.read(RUNS)
            .fold(
                (read, notes) -> read.runSet().counted(),
                problems -> {
                  throw new IllegalStateException(problems.toString());
                });
    Setting setting = Setting.of(runs);
    Setup setup = new Setup(setting, setting.model(PhysicsShaped.ID));
    RunProblem problem = setup.problem();
    Track track = problem.tracks().get(problem.tracks().size() - 1);
    integrator = new TrackIntegrator(setup.layout(), track);
    values = setup.unknowns().values(new double[setup.unknowns().size()]);
    predicted = new double[track.rows.size()];
    jacobian = new double[predicted.length][integrator.columns().length];
    System.out.printf(
        "%d steps, %d averaged rows, %d unknowns%n",
        track.grid.time_s.length - 1, predicted.length, integrator.columns().length);
  }

  @Benchmark
  public double[] runIntegrated(Spent spent) {
    spent.on(1);
    integrator.run(values, predicted, jacobian);
    return predicted;
  }
}
