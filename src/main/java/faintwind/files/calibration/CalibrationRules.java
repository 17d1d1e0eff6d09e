package faintwind.files.calibration;

import com.fasterxml.jackson.databind.JsonNode;
import faintwind.calibration.Calibration;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.response.Empirical;
import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.response.TypeLetter;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirState;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/** What must hold in a calibration file beyond its schema, so that it can be used. */
final class CalibrationRules {
  static final String BALL = "ball_diameter_m";

  private final Where where;
  private final List<Problem> problems = new ArrayList<>();

  private CalibrationRules(Where where) {
    this.where = where;
  }

  static List<Problem> problems(JsonNode file, Where where) {
    CalibrationRules rules = new CalibrationRules(where);
    rules.finite(file, "");
    rules.model(file);
    rules.covariance(file);
    rules.created(file);
    rules.measured(file.path("measured"));
    rules.letter(file.path("thermocouple"), "thermocouple");
    rules.letter(file.path("chain").path("type"), "chain.type");
    return rules.problems;
  }

  /** What is assumed of a file that can be used. */
  static List<Problem> notes(JsonNode file, Where where) {
    // the virtual instrument has no build record, and its calibration is used for nothing
    boolean rehearsal =
        file.path("warnings").findValuesAsText("code").contains(Calibration.REHEARSAL);
    return file.has(BALL) || rehearsal
        ? List.of()
        : List.of(
            Problem.warning(
                "calibration.no-diameter",
                where.atColumn(BALL),
                String.valueOf(1e3 * FormulaFit.USUAL_BALL_M)));
  }

  private void finite(JsonNode node, String place) {
    if (node.isNumber() && !Double.isFinite(node.doubleValue())) {
      problems.add(Problem.error("cell.not-finite", where.atColumn(place), node.asText()));
    }
    node.properties()
        .forEach(
            entry ->
                finite(
                    entry.getValue(),
                    place.isEmpty() ? entry.getKey() : place + "." + entry.getKey()));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      finite(node.get(i), place + "[" + i + "]");
    }
  }

  private void model(JsonNode file) {
    List<String> known =
        new ArrayList<>(Arrays.stream(Empirical.Form.values()).map(Empirical.Form::id).toList());
    known.add(PhysicsShaped.ID);
    String found = file.path("model").path("name").asText();
    if (known.contains(found)) {
      parameters(file, found);
      return;
    }
    problems.add(
        Problem.error(
            "calibration.model-unknown",
            where.atColumn("model.name"),
            found,
            String.join(", ", known)));
  }

  private void parameters(JsonNode file, String model) {
    List<ParameterPrior> wanted =
        new ArrayList<>(
            ResponseModel.of(model, AirState.ROOM, FormulaFit.USUAL_BALL_M).quantities());
    wanted.addAll(ThermalPath.quantities(""));
    List<String> names = wanted.stream().map(ParameterPrior::name).toList();
    List<String> order = order(file);
    if (!order.equals(names)) {
      problems.add(
          Problem.error(
              "calibration.parameters",
              where.atColumn("covariance.order"),
              String.join(", ", order),
              String.join(", ", names)));
    }
  }

  private static List<String> order(JsonNode file) {
    List<String> order = new ArrayList<>();
    file.path("covariance").path("order").forEach(name -> order.add(name.asText()));
    return order;
  }

  private void covariance(JsonNode file) {
    List<String> order = order(file);
    List<String> names = new ArrayList<>();
    file.path("parameters").fieldNames().forEachRemaining(names::add);
    if (!new TreeSet<>(order).equals(new TreeSet<>(names))) {
      problems.add(
          Problem.error(
              "calibration.order",
              where.atColumn("covariance.order"),
              String.join(", ", order),
              String.join(", ", names)));
    }
    JsonNode matrix = file.path("covariance").path("matrix");
    int size = order.size();
    boolean square = matrix.size() == size;
    for (JsonNode row : matrix) {
      square &= row.size() == size;
    }
    if (!square) {
      problems.add(
          Problem.error(
              "calibration.covariance-size",
              where.atColumn("covariance.matrix"),
              String.valueOf(matrix.size()),
              String.valueOf(size)));
    }
    for (int i = 0; square && i < size; i++) {
      if (matrix.get(i).get(i).doubleValue() < 0) {
        problems.add(
            Problem.error(
                "calibration.variance-negative",
                where.atColumn("covariance.matrix[" + i + "][" + i + "]"),
                matrix.get(i).get(i).asText()));
      }
    }
  }

  private void letter(JsonNode letter, String place) {
    if (letter.isTextual() && TypeLetter.of(letter.asText()).isEmpty()) {
      problems.add(
          Problem.error(
              "chain.type-unknown", where.atColumn(place), letter.asText(), TypeLetter.known()));
    }
  }

  private void measured(JsonNode measured) {
    if (measured.isMissingNode()) {
      return;
    }
    String last = measured.path("last").asText();
    try {
      OffsetDateTime first = OffsetDateTime.parse(measured.path("first").asText());
      if (OffsetDateTime.parse(last).isBefore(first)) {
        problems.add(
            Problem.error(
                "calibration.measured-backwards",
                where.atColumn("measured.last"),
                last,
                first.toString()));
      }
    } catch (DateTimeParseException e) {
      problems.add(Problem.error("file.start-not-a-time", where.atColumn("measured"), last));
    }
  }

  private void created(JsonNode file) {
    String found = file.path("created").asText();
    try {
      OffsetDateTime.parse(found);
    } catch (DateTimeParseException e) {
      problems.add(Problem.error("file.start-not-a-time", where.atColumn("created"), found));
    }
  }
}
