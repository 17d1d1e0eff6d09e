package faintwind.calibration.fit.judging;

import faintwind.calibration.ArmShown;
import faintwind.calibration.BuildAgreement;
import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.Coverage;
import faintwind.calibration.Evidence;
import faintwind.calibration.Evidence.MonteCarloSummary;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.fit.health.DataCheck;
import faintwind.calibration.fit.numerics.Layout;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.setup.RoomDraught;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.ResidualReport;
import faintwind.calibration.fit.solving.RunOutcomes;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** Puts a calibration together from what the fit, the choice and the studies found. */
public final class CalibrationAssembly {
  private CalibrationAssembly() {}

  /**
   * The calibration.
   *
   * @param choice the model chosen and its runners-up
   * @param set the runs it came from
   * @param origin whose, when, by which program, from which files
   * @param monteCarlo refits, where they were made
   */
  public static Calibration of(
      Choice choice, RunSet set, Origin origin, Optional<MonteCarloSummary> monteCarlo) {
    FitResult fit = choice.fit();
    Performance performance = Verdict.of(fit);
    Optional<BuildAgreement> build = BuildMeeting.of(fit);
    List<Problem> warnings = new ArrayList<>(Diagnosis.warnings(fit, set));
    build.map(BuildMeeting::warnings).ifPresent(warnings::addAll);
    Evidence evidence =
        new Evidence(
            ResidualReport.of(fit),
            RunOutcomes.of(fit, set, Diagnosis.whyNot(fit, set)),
            choice.leftOut(),
            choice.candidates(),
            monteCarlo,
            build);
    return new Calibration(
        origin,
        fit.signal(),
        fit.formulaFit(),
        coverage(fit, set),
        evidence,
        performance,
        warnings);
  }

  private static Coverage coverage(FitResult fit, RunSet set) {
    double[] speeds =
        set.runs().stream()
            .filter(DataCheck::moves)
            .mapToDouble(r -> RunOutcomes.airSpeed_m_s(fit, r))
            .sorted()
            .toArray();
    double offset = fit.values()[fit.setup().layout().path(ThermalPath.OFFSET)];
    double sign = Math.signum(fit.signal().perKelvin());
    double[] signals =
        fit.problem().tracks().stream()
            .flatMapToDouble(t -> Arrays.stream(t.rows.signal))
            .map(s -> sign * (s - offset))
            .sorted()
            .toArray();
    double lowest =
        set.runs().stream()
            .filter(DataCheck::moves)
            .mapToDouble(r -> lowestSignal(r, offset, sign))
            .min()
            .orElse(signals[0]);
    return new Coverage(
        speeds[0],
        speeds[speeds.length - 1],
        lowest,
        signals[signals.length - 1],
        carriedAirShown(fit),
        arm(fit));
  }

  private static boolean carriedAirShown(FitResult fit) {
    return fit.setup().turns()
        && (fit.setup().statedShare()
            || !fit.setting().known().tellsNothingOfTheArm()
            || information(fit, fit.setup().layout().carriedShare()) > OwnChoices.TELLING);
  }

  private static Optional<ArmShown> arm(FitResult fit) {
    if (!fit.setup().turns()) {
      return Optional.empty();
    }
    Layout at = fit.setup().layout();
    boolean told = !fit.setting().known().tellsNothingOfTheArm();
    IntFunction<Parameter> shown =
        i -> shown(fit, i, told ? information(fit, i) : Double.POSITIVE_INFINITY);
    return Optional.of(
        new ArmShown(
            shown.apply(at.carriedShare()),
            shown.apply(at.carriedRise()),
            shown.apply(at.carriedDecay()),
            shown.apply(at.runUp()),
            // a room's draught is not handed on with the arm: what was believed stays in
            draught(fit),
            Optional.of(information(fit, at.asymmetry()))
                .filter(information -> information > OwnChoices.TELLING)
                .map(information -> shown(fit, at.asymmetry(), information))));
  }

  /** What the recordings say of an unknown, in units of what was believed. */
  private static double information(FitResult fit, int i) {
    return 1 / fit.solution().optimum().unitCovariance()[i][i] - 1;
  }

  /** The draught of all runs, by its root mean square. */
  private static Parameter draught(FitResult fit) {
    RoomDraught draught = fit.setup().draught();
    double[] by = draught.relativeBy(fit.values());
    double[] slopes = fit.setup().unknowns().slopes(fit.solution().optimum().point());
    for (int i = 0; i < by.length; i++) {
      by[i] *= slopes[i];
    }
    Covariance covariance = Covariance.of(fit.solution().optimum().unitCovariance());
    double m_s = draught.m_s(fit.values());
    return new Parameter("draught", m_s, m_s * Math.sqrt(covariance.variance(by)), "m/s");
  }

  /**
   * What a fit found of an unknown; where it was told of the arm, what the recordings alone say:
   * knowledge must not count again with each session that it was handed to.
   *
   * @param information of the recordings, in units of what was believed; infinite where nothing was
   *     told, and the belief stays in
   */
  private static Parameter shown(FitResult fit, int i, double information) {
    Unknown unknown = fit.setup().unknowns().get(i);
    Layout at = fit.setup().layout();
    double found = fit.solution().optimum().point()[i];
    double variance = fit.solution().optimum().unitCovariance()[i][i];
    double x = found;
    if (Double.isFinite(information)) {
      double least = Math.max(information, OwnChoices.LEAST_INFORMATION);
      x = Math.max(-OwnChoices.FARTHEST, Math.min(OwnChoices.FARTHEST, found / variance / least));
      variance = 1 / least;
    }
    boolean share = i == at.carriedShare() || i == at.asymmetry();
    return new Parameter(
        unknown.name(),
        unknown.value(x),
        Math.sqrt(variance) * unknown.slope(x),
        share ? "1" : "s");
  }

  private static double lowestSignal(Run run, double offset, double sign) {
    double[] values = run.recording().signal().values();
    return Arrays.stream(values).map(v -> sign * (v - offset)).min().orElse(0);
  }
}
