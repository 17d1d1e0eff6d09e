package faintwind.files.calibration;

import com.fasterxml.jackson.databind.JsonNode;
import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.Coverage;
import faintwind.calibration.Evidence;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.files.run.ChainJson;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirState;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A calibration from a file that agrees with the schema and with {@link CalibrationRules}: nothing
 * is doubted here.
 */
final class CalibrationReader {
  private final JsonNode json;

  private CalibrationReader(JsonNode json) {
    this.json = json;
  }

  static Calibration of(JsonNode json) {
    CalibrationReader reader = new CalibrationReader(json);
    return new Calibration(
        reader.origin(),
        reader.signal(),
        reader.formula(),
        reader.coverage(),
        reader.evidence(),
        reader.performance(),
        each(json.path("warnings"), CalibrationReader::warning));
  }

  private Origin origin() {
    Map<String, String> inputs = new LinkedHashMap<>();
    json.path("inputs_sha256")
        .properties()
        .forEach(entry -> inputs.put(entry.getKey(), entry.getValue().asText()));
    return new Origin(
        json.path("instrument_id").asText(),
        OffsetDateTime.parse(json.path("created").asText()),
        json.path("software_version").asText(),
        inputs);
  }

  private SignalPath signal() {
    String column = json.path("signal_unit").asText();
    SignalUnit unit =
        Arrays.stream(SignalUnit.values())
            .filter(u -> u.column().equals(column))
            .findFirst()
            .orElseThrow();
    return new SignalPath(
        unit,
        ChainJson.chain(json.path("chain")),
        ChainJson.text(json, "thermocouple"),
        number(json, "signal_per_K"),
        ChainJson.number(json, "supply_V"));
  }

  private FormulaFit formula() {
    List<Parameter> parameters = new ArrayList<>();
    for (JsonNode name : json.path("covariance").path("order")) {
      JsonNode entry = json.path("parameters").path(name.asText());
      parameters.add(
          new Parameter(
              name.asText(),
              number(entry, "value"),
              number(entry, "standard_uncertainty"),
              entry.path("unit").asText()));
    }
    List<List<Double>> rows =
        each(json.path("covariance").path("matrix"), row -> each(row, JsonNode::doubleValue));
    JsonNode air = json.path("reference_air");
    AirState reference =
        new AirState(
            number(air, "temperature_K"),
            number(air, "pressure_Pa"),
            number(air, "relative_humidity"));
    String model = json.path("model").path("name").asText();
    // the words in the file are for people; the program has its own
    String equation = ResponseModel.of(model, reference, FormulaFit.USUAL_BALL_M).equationKey();
    return new FormulaFit(
        model,
        equation,
        parameters,
        Covariance.of(rows),
        reference,
        ChainJson.number(json, CalibrationRules.BALL));
  }

  private Coverage coverage() {
    JsonNode speeds = json.path("speed_range_m_s");
    JsonNode signals = json.path("delta_range");
    return new Coverage(
        number(speeds, "from"),
        number(speeds, "to"),
        number(signals, "from"),
        number(signals, "to"),
        json.path("carried_air_shown").booleanValue());
  }

  private Evidence evidence() {
    JsonNode residuals = json.path("residuals");
    Evidence.ResidualStatistics statistics =
        new Evidence.ResidualStatistics(
            number(residuals, "rms"),
            number(residuals, "noise"),
            number(residuals, "slow"),
            number(residuals, "correlation_time_s"),
            number(residuals, "effective_readings"),
            residuals.path("rows").intValue());
    return new Evidence(
        statistics,
        each(json.path("runs"), CalibrationReader::run),
        each(json.path("leave_one_run_out"), CalibrationReader::leftOut),
        each(json.path("candidates"), CalibrationReader::candidate),
        monteCarlo());
  }

  private static RunOutcome run(JsonNode entry) {
    String code = entry.path("why_code").asText();
    return new RunOutcome(
        entry.path("run").asText(),
        ChainJson.number(entry, "speed_m_s"),
        ChainJson.number(entry, "u_speed_m_s"),
        number(entry, "residual"),
        entry.path("used").booleanValue(),
        code);
  }

  private static Evidence.LeftOut leftOut(JsonNode entry) {
    return new Evidence.LeftOut(
        entry.path("run").asText(),
        number(entry, "speed_m_s"),
        number(entry, "foretold_m_s"),
        number(entry, "u_m_s"));
  }

  private static Evidence.Candidate candidate(JsonNode entry) {
    return new Evidence.Candidate(
        entry.path("model").asText(),
        number(entry, "aicc"),
        number(entry, "leave_one_out_rms"),
        entry.path("chosen").booleanValue());
  }

  private Optional<Evidence.MonteCarloSummary> monteCarlo() {
    JsonNode entry = json.path("monte_carlo");
    return entry.isObject()
        ? Optional.of(
            new Evidence.MonteCarloSummary(
                entry.path("refits").intValue(),
                entry.path("failed").intValue(),
                entry.path("seed").longValue(),
                number(entry, "ratio")))
        : Optional.empty();
  }

  private Performance performance() {
    JsonNode entry = json.path("performance");
    return new Performance(
        number(entry, "floor_m_s"),
        number(entry, "still_signal"),
        number(entry, "noise"),
        number(entry, "row_step_s"),
        number(entry, "run_scatter"),
        each(entry.path("speeds"), CalibrationReader::atSpeed));
  }

  private static Performance.AtSpeed atSpeed(JsonNode line) {
    return new Performance.AtSpeed(
        number(line, "speed_m_s"),
        number(line, "u95_m_s"),
        number(line, "rise_s"),
        each(
            line.path("budget"),
            b -> new Performance.BudgetShare(b.path("source").asText(), number(b, "u_m_s"))));
  }

  private static Problem warning(JsonNode entry) {
    Where where = ChainJson.text(entry, "run").map(Where::run).orElse(Where.NOWHERE);
    List<String> details = each(entry.path("details"), JsonNode::asText);
    return Problem.warning(
        entry.path("code").asText(),
        where,
        entry.path("found").asText(),
        details.toArray(new String[0]));
  }

  private static double number(JsonNode entry, String key) {
    return entry.path(key).doubleValue();
  }

  private static <T> List<T> each(JsonNode array, Function<JsonNode, T> read) {
    List<T> all = new ArrayList<>();
    array.forEach(entry -> all.add(read.apply(entry)));
    return List.copyOf(all);
  }
}
