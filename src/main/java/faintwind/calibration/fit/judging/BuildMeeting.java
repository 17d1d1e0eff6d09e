package faintwind.calibration.fit.judging;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildAgreement.Suspicion;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.build.BuildSays;
import faintwind.calibration.build.FoundByFit;
import faintwind.calibration.build.MeetTheBuild;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.setup.BuildPriors;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Holds a fit against the record of the build. The record also sharpens the fit's priors, so each
 * number is freed of its own prior first: with a normal prior (0, 1) and a result (x, v) the runs
 * alone say x / (1 − v) with variance v / (1 − v) (product of normal densities).
 */
final class BuildMeeting {
  private static final int LEADS = 3;

  private final FitResult fit;
  private final Formula formula;
  private final AirPoint air;
  private final double still_K;

  private BuildMeeting(FitResult fit) {
    this.fit = fit;
    this.formula = fit.formula();
    this.air = AirPoint.of(fit.setting().referenceAir());
    this.still_K = still_K(formula);
  }

  /** The comparison; empty where the record says too little. */
  static Optional<BuildAgreement> of(FitResult fit) {
    return fit.setting()
        .build()
        .flatMap(
            build ->
                BuildSays.of(
                    build,
                    fit.signal().supply_V(),
                    fit.setting().referenceAir(),
                    scale(fit.signal(), build)))
        .flatMap(says -> new BuildMeeting(fit).found().map(own -> MeetTheBuild.of(says, own)));
  }

  /** By the chain where it says type and gain, else by the thermocouple and gain of the design. */
  private static OptionalDouble scale(SignalPath signal, BuildFacts build) {
    if (BuildPriors.scaleKnown(signal)) {
      return OptionalDouble.of(1);
    }
    OptionalDouble perVolt = signal.unit().perVolt();
    return perVolt.isPresent() && build.wires().signal_V_K().isPresent()
        ? OptionalDouble.of(
            perVolt.getAsDouble()
                * build.wires().signal_V_K().get().value()
                / Math.abs(signal.perKelvin()))
        : OptionalDouble.empty();
  }

  /** Empty where no warm-up tells the heating rate. */
  private Optional<FoundByFit> found() {
    return freed(fit.setup().layout().path(ThermalPath.HEATING)).map(this::found);
  }

  private FoundByFit found(Uncertain heating_K_s) {
    return new FoundByFit(
        heating_K_s,
        Uncertain.of(still_K, u_still_K()),
        fit.model().equals(PhysicsShaped.ID)
            ? freed(LEADS).map(this::shareOfStillLoss)
            : Optional.empty(),
        freed(fit.setup().layout().path(ThermalPath.HEATER_TIME)),
        fit.signal().perKelvin());
  }

  private Optional<Uncertain> freed(int index) {
    double v = fit.solution().optimum().unitCovariance()[index][index];
    if (v > OwnChoices.UNTOLD) {
      return Optional.empty();
    }
    Unknown unknown = fit.setup().unknowns().get(index);
    double value = unknown.value(fit.solution().optimum().point()[index] / (1 - v));
    return Optional.of(Uncertain.of(value, value * unknown.spread() * Math.sqrt(v / (1 - v))));
  }

  private Uncertain shareOfStillLoss(Uncertain leads_1_s) {
    double loss = formula.loss_1_s(0, still_K, air);
    return Uncertain.of(leads_1_s.value() / loss, leads_1_s.u().orElse(0) / loss);
  }

  private double still_K(Formula of) {
    return of.steadyDelta_K(0, fit.signal().supply_V(), air);
  }

  private double u_still_K() {
    FormulaFit whole = fit.formulaFit();
    int n = whole.parameters().size();
    double[] gradient = new double[n];
    for (int i = 0; i < n; i++) {
      double step = whole.parameters().get(i).u();
      double[] moved = whole.values();
      moved[i] += step;
      gradient[i] =
          step > 0 ? (still_K(Formula.of(whole, fit.signal(), moved)) - still_K) / step : 0;
    }
    return Math.sqrt(whole.covariance().variance(gradient));
  }

  /** What a person should know of it; empty where all agree. */
  static List<Problem> warnings(BuildAgreement agreement) {
    List<Problem> found = new ArrayList<>();
    for (Row row : agreement.rows()) {
      if (row.judged() && !row.agrees()) {
        found.add(
            Problem.warning(
                "fit.build-off." + row.quantity().word(),
                Where.NOWHERE,
                SignalCheck.text(row.found()),
                SignalCheck.text(row.says()),
                SignalCheck.text(
                    2 * Math.hypot(row.u_says(), row.u_found() / row.found() * row.says())),
                SignalCheck.text(100 * row.off())));
      }
    }
    agreement.suspects().stream()
        .filter(s -> s.weight() >= OwnChoices.LIKELY * agreement.suspects().get(0).weight())
        .limit(OwnChoices.MOST_NAMED)
        .forEach(s -> found.add(suspect(s)));
    return found;
  }

  private static Problem suspect(Suspicion suspicion) {
    return Problem.warning(
        "fit.build-suspect." + suspicion.suspect().word(),
        Where.NOWHERE,
        SignalCheck.text(100 * suspicion.weight()),
        SignalCheck.text(100 * (suspicion.factor() - 1)));
  }
}
