package faintwind.report.plot;

import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.Coverage;
import faintwind.calibration.Evidence;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.physics.AirState;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A calibration for tests of drawings and screens; every number is made up. */
public final class MadeUpCalibration {
  private static final AirState AIR = new AirState(293.15, 100_000, 0.5);
  private static final double[] LOSS = {6.6e-4, 1.0, 1.0, 4e-4, 6e-5, 0.0, 3.0, 1.1};
  private static final double[] PATH = {0.066, 0.03, 15, 2.5, 0.1, 0.0, 0.0009};
  private static final double[] SPEEDS = {0.03, 0.05, 0.1, 0.3, 1, 2, 3};

  private MadeUpCalibration() {}

  /** Seven runs and a still run, the last left out. */
  public static Calibration of(String created) {
    return new Calibration(
        new Origin("made up", OffsetDateTime.parse(created), "test", Map.of()),
        new SignalPath(
            SignalUnit.DELTA_K, SignalChain.AS_IS, Optional.of("K"), 1, OptionalDouble.of(5)),
        formula(),
        new Coverage(0.1, 3, 5, 32, true, Optional.empty()),
        new Evidence(
            new Evidence.ResidualStatistics(0.01, 0.01, 0, 1, 1000, 1000),
            runs(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty()),
        new Performance(0.045, 30, 0.01, 1, 0, speeds()),
        List.of());
  }

  private static FormulaFit formula() {
    ResponseModel model = new PhysicsShaped(AIR);
    List<ParameterPrior> quantities = new ArrayList<>(model.quantities());
    quantities.addAll(ThermalPath.quantities("K"));
    List<Parameter> parameters = new ArrayList<>();
    double[][] covariance = new double[LOSS.length + PATH.length][LOSS.length + PATH.length];
    for (int i = 0; i < quantities.size(); i++) {
      double value = i < LOSS.length ? LOSS[i] : PATH[i - LOSS.length];
      double u = quantities.get(i).name().equals("forced") ? 0.01 : 0;
      covariance[i][i] = u * u;
      parameters.add(new Parameter(quantities.get(i).name(), value, u, quantities.get(i).unit()));
    }
    return new FormulaFit(
        model.id(),
        model.equationKey(),
        parameters,
        Covariance.of(covariance),
        AIR,
        OptionalDouble.of(0.0127));
  }

  private static List<RunOutcome> runs() {
    List<RunOutcome> runs = new ArrayList<>();
    runs.add(
        new RunOutcome("still", OptionalDouble.empty(), OptionalDouble.empty(), 0.01, true, ""));
    double[] speeds = {0.1, 0.2, 0.4, 0.8, 1.4, 2.1, 3};
    for (int i = 0; i < speeds.length; i++) {
      runs.add(
          new RunOutcome(
              "spin" + (i + 1),
              OptionalDouble.of(speeds[i]),
              OptionalDouble.of(0.01 * speeds[i]),
              0.01 * (i % 3 - 1),
              i < 6,
              ""));
    }
    return runs;
  }

  private static List<Performance.AtSpeed> speeds() {
    List<Performance.AtSpeed> speeds = new ArrayList<>();
    for (double speed : SPEEDS) {
      speeds.add(new Performance.AtSpeed(speed, 0.004 + 0.03 * speed, 30 / (1 + speed), List.of()));
    }
    return speeds;
  }
}
