package faintwind.files.calibration;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.Calibration;
import faintwind.calibration.Coverage;
import faintwind.calibration.Evidence;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.run.SignalPath;
import faintwind.files.run.ChainJson;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.OptionalDouble;

/** A calibration as it goes into its file. */
final class CalibrationJson {
  private final Messages messages;
  private final ObjectNode json = JsonNodeFactory.instance.objectNode();

  CalibrationJson(Messages messages) {
    this.messages = messages;
  }

  ObjectNode of(Calibration calibration) {
    String unit = calibration.signal().unit().symbol();
    json.put("format", CalibrationFile.FORMAT);
    origin(calibration.origin());
    signal(calibration.signal());
    formula(calibration.formula());
    coverage(calibration.coverage(), unit);
    residuals(calibration.evidence().residuals(), unit);
    calibration.evidence().runs().forEach(run -> run(run, json.withArray("runs"), unit));
    evidence(calibration.evidence());
    performance(calibration.performance());
    ArrayNode warnings = json.putArray("warnings");
    calibration.warnings().forEach(warning -> warning(warning, warnings));
    ObjectNode inputs = json.putObject("inputs_sha256");
    calibration.origin().inputSha256().forEach(inputs::put);
    return json;
  }

  private void origin(Origin origin) {
    json.put("instrument_id", origin.instrumentId());
    json.put("created", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(origin.created()));
    json.put("software_version", origin.softwareVersion());
  }

  private void signal(SignalPath signal) {
    json.put("signal_unit", signal.unit().column());
    json.set("chain", ChainJson.of(signal.chain()));
    signal.thermocouple().ifPresent(letter -> json.put("thermocouple", letter));
    json.put("signal_per_K", signal.perKelvin());
    signal.supply_V().ifPresent(supply -> json.put("supply_V", supply));
  }

  private void formula(FormulaFit formula) {
    json.putObject("model")
        .put("name", formula.model())
        .put("equation", messages.text(formula.equation()));
    ObjectNode parameters = json.putObject("parameters");
    ObjectNode covariance = json.putObject("covariance");
    ArrayNode order = covariance.putArray("order");
    for (Parameter parameter : formula.parameters()) {
      order.add(parameter.name());
      parameters
          .putObject(parameter.name())
          .put("value", parameter.value())
          .put("standard_uncertainty", parameter.u())
          .put("unit", parameter.unit());
    }
    ArrayNode matrix = covariance.putArray("matrix");
    for (List<Double> row : formula.covariance().rows()) {
      row.forEach(matrix.addArray()::add);
    }
    json.putObject("reference_air")
        .put("temperature_K", formula.referenceAir().temperature_K())
        .put("pressure_Pa", formula.referenceAir().pressure_Pa())
        .put("relative_humidity", formula.referenceAir().relativeHumidity());
    formula.ball_m().ifPresent(diameter -> json.put(CalibrationRules.BALL, diameter));
  }

  private void coverage(Coverage coverage, String unit) {
    json.putObject("speed_range_m_s")
        .put("from", coverage.lowest_m_s())
        .put("to", coverage.highest_m_s());
    json.putObject("delta_range")
        .put("from", coverage.lowestSignal())
        .put("to", coverage.highestSignal())
        .put("unit", unit);
    json.put("carried_air_shown", coverage.carriedAirShown());
  }

  private void residuals(Evidence.ResidualStatistics residuals, String unit) {
    json.putObject("residuals")
        .put("rms", residuals.rms())
        .put("noise", residuals.noise())
        .put("slow", residuals.slow())
        .put("correlation_time_s", residuals.correlationTime_s())
        .put("effective_readings", residuals.effectiveReadings())
        .put("rows", residuals.rows())
        .put("unit", unit);
  }

  private void run(RunOutcome run, ArrayNode runs, String unit) {
    ObjectNode entry = runs.addObject().put("run", run.run());
    put(entry, "speed_m_s", run.speed_m_s());
    put(entry, "u_speed_m_s", run.u_speed_m_s());
    entry
        .put("residual", run.residual())
        .put("residual_unit", run.speed_m_s().isPresent() ? "1" : unit)
        .put("used", run.used())
        .put("why", run.why().isEmpty() ? "" : messages.text(run.why()))
        .put("why_code", run.why());
  }

  private static void put(ObjectNode entry, String key, OptionalDouble value) {
    if (value.isPresent()) {
      entry.put(key, value.getAsDouble());
    } else {
      entry.putNull(key);
    }
  }

  private void evidence(Evidence evidence) {
    ArrayNode leftOut = json.putArray("leave_one_run_out");
    for (Evidence.LeftOut run : evidence.leaveOneOut()) {
      leftOut
          .addObject()
          .put("run", run.run())
          .put("speed_m_s", run.speed_m_s())
          .put("foretold_m_s", run.foretold_m_s())
          .put("u_m_s", run.u_m_s());
    }
    ArrayNode candidates = json.putArray("candidates");
    for (Evidence.Candidate candidate : evidence.candidates()) {
      candidates
          .addObject()
          .put("model", candidate.model())
          .put("aicc", candidate.aicc())
          .put("leave_one_out_rms", candidate.leaveOneOut_rms())
          .put("chosen", candidate.chosen());
    }
    evidence
        .monteCarlo()
        .ifPresent(
            m ->
                json.putObject("monte_carlo")
                    .put("refits", m.refits())
                    .put("failed", m.failed())
                    .put("seed", m.seed())
                    .put("ratio", m.ratio()));
  }

  private void performance(Performance performance) {
    ObjectNode entry =
        json.putObject("performance")
            .put("floor_m_s", performance.floor_m_s())
            .put("still_signal", performance.stillSignal())
            .put("noise", performance.noise())
            .put("row_step_s", performance.rowStep_s())
            .put("run_scatter", performance.runScatter());
    ArrayNode speeds = entry.putArray("speeds");
    for (Performance.AtSpeed speed : performance.speeds()) {
      ObjectNode line =
          speeds
              .addObject()
              .put("speed_m_s", speed.speed_m_s())
              .put("u95_m_s", speed.u95_m_s())
              .put("rise_s", speed.rise_s());
      ArrayNode budget = line.putArray("budget");
      speed
          .budget()
          .forEach(b -> budget.addObject().put("source", b.source()).put("u_m_s", b.u_m_s()));
    }
  }

  private void warning(Problem warning, ArrayNode warnings) {
    ObjectNode entry = warnings.addObject().put("code", warning.id());
    warning.where().run().ifPresent(run -> entry.put("run", run));
    entry.put("text", messages.note(warning)).put("found", warning.found());
    warning.details().forEach(entry.putArray("details")::add);
  }
}
