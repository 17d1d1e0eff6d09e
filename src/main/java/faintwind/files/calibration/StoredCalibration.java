package faintwind.files.calibration;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import faintwind.calibration.ArmShown;
import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.Coverage;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.run.SignalPath;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirState;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A calibration with the keys of its file, in the file's order. */
record StoredCalibration(
    String format,
    OptionalInt minor,
    @JsonUnwrapped Head head,
    @JsonUnwrapped SignalPath signal,
    @JsonUnwrapped Formula formula,
    @JsonUnwrapped Covered covered,
    @JsonUnwrapped StoredEvidence evidence,
    @JsonUnwrapped Tail tail) {
  /** The words in the file are for people, and the same whatever the program speaks. */
  private static final Messages ENGLISH = Messages.of(Locale.ENGLISH);

  static final String FORMAT = "faintwind-calibration/1";

  /** Of keys that a reader of the first version passes over. */
  static final int MINOR = 1;

  record Head(
      String instrumentId,
      String created,
      String softwareVersion,
      Optional<StoredMeasured> measured,
      Optional<StoredPooled> pooled) {}

  record Formula(
      Model model,
      Map<String, Value> parameters,
      Matrix covariance,
      AirState referenceAir,
      OptionalDouble ballDiameter_m) {
    record Model(String name, String equation) {}

    record Value(double value, double standardUncertainty, String unit) {}

    record Matrix(List<String> order, List<List<Double>> matrix) {}

    FormulaFit toModel() {
      List<Parameter> fitted = new ArrayList<>();
      for (String name : covariance.order()) {
        fitted.add(parameter(parameters, name));
      }
      // the words in the file are for people; the program has its own
      String equation =
          ResponseModel.of(model.name(), referenceAir, FormulaFit.USUAL_BALL_M).equationKey();
      Covariance matrix = Covariance.of(covariance.matrix());
      return new FormulaFit(model.name(), equation, fitted, matrix, referenceAir, ballDiameter_m);
    }
  }

  record Covered(
      Range speedRange_m_s,
      Range deltaRange,
      boolean carriedAirShown,
      Optional<Map<String, Formula.Value>> arm) {}

  record Range(double from, double to, Optional<String> unit) {}

  record Tail(
      Performance performance,
      List<Warning> warnings,
      Map<String, String> inputsSha256,
      Optional<String> journalHead) {}

  record Warning(
      String code, Optional<String> run, String text, String found, List<String> details) {}

  static StoredCalibration of(Calibration calibration) {
    Origin origin = calibration.origin();
    String created = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(origin.created());
    String unit = calibration.signal().unit().symbol();
    return new StoredCalibration(
        FORMAT,
        OptionalInt.of(MINOR),
        new Head(
            origin.instrumentId(),
            created,
            origin.softwareVersion(),
            origin.measured().map(StoredMeasured::of),
            origin.pooled().map(StoredPooled::of)),
        calibration.signal(),
        formula(calibration.formula()),
        covered(calibration.coverage(), unit),
        StoredEvidence.of(calibration.evidence(), unit, ENGLISH),
        new Tail(
            calibration.performance(),
            calibration.warnings().stream().map(StoredCalibration::warning).toList(),
            origin.inputSha256(),
            origin.journalHead()));
  }

  Calibration toModel() {
    return new Calibration(
        new Origin(
            head.instrumentId(),
            OffsetDateTime.parse(head.created()),
            head.softwareVersion(),
            tail.inputsSha256(),
            tail.journalHead(),
            head.measured().map(StoredMeasured::toModel),
            head.pooled().map(StoredPooled::toModel)),
        signal,
        formula.toModel(),
        new Coverage(
            covered.speedRange_m_s().from(),
            covered.speedRange_m_s().to(),
            covered.deltaRange().from(),
            covered.deltaRange().to(),
            covered.carriedAirShown(),
            covered.arm().map(StoredCalibration::shown)),
        evidence.toModel(),
        tail.performance(),
        tail.warnings().stream().map(StoredCalibration::problem).toList());
  }

  private static Formula formula(FormulaFit fit) {
    Map<String, Formula.Value> parameters = values(fit.parameters());
    return new Formula(
        new Formula.Model(fit.model(), ENGLISH.text(fit.equation())),
        parameters,
        new Formula.Matrix(List.copyOf(parameters.keySet()), fit.covariance().rows()),
        fit.referenceAir(),
        fit.ball_m());
  }

  private static Covered covered(Coverage coverage, String unit) {
    return new Covered(
        new Range(coverage.lowest_m_s(), coverage.highest_m_s(), Optional.empty()),
        new Range(coverage.lowestSignal(), coverage.highestSignal(), Optional.of(unit)),
        coverage.carriedAirShown(),
        coverage.arm().map(arm -> values(arm.all())));
  }

  private static Map<String, Formula.Value> values(List<Parameter> of) {
    Map<String, Formula.Value> values = new LinkedHashMap<>();
    for (Parameter p : of) {
      values.put(p.name(), new Formula.Value(p.value(), p.u(), p.unit()));
    }
    return values;
  }

  private static ArmShown shown(Map<String, Formula.Value> arm) {
    return new ArmShown(
        parameter(arm, "carried_share"),
        parameter(arm, "carried_rise"),
        parameter(arm, "carried_decay"),
        parameter(arm, "run_up"),
        parameter(arm, "draught"),
        Optional.of(arm)
            .filter(a -> a.containsKey("asymmetry"))
            .map(a -> parameter(a, "asymmetry")));
  }

  private static Parameter parameter(Map<String, Formula.Value> values, String name) {
    Formula.Value stored = requireNonNull(values.get(name), name);
    return new Parameter(name, stored.value(), stored.standardUncertainty(), stored.unit());
  }

  private static Warning warning(Problem warning) {
    return new Warning(
        warning.id(),
        warning.where().run(),
        ENGLISH.note(warning),
        warning.found(),
        warning.details());
  }

  private static Problem problem(Warning warning) {
    return Problem.warning(
        warning.code(),
        warning.run().map(Where::run).orElse(Where.NOWHERE),
        warning.found(),
        warning.details().toArray(new String[0]));
  }
}
