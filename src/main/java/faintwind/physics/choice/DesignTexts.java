package faintwind.physics.choice;

import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.FieldTexts;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.StandardAtmosphere;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignRules;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Label;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A design as texts by field, whoever gave them: a file, the window, the command line. Each is
 * judged by its {@link DesignField}, then beside the others, then the design as a whole.
 */
public final class DesignTexts {
  private static final double WEATHER = 0.08; // 870 to 1085 hPa were seen at sea level
  private static final List<Field> FIELDS =
      Arrays.stream(DesignField.values()).map(DesignField::field).toList();

  private final FieldTexts texts;
  private final Where where;
  private final List<Problem> problems = new ArrayList<>();

  private DesignTexts(FieldTexts texts, Where where) {
    this.texts = texts;
    this.where = where;
  }

  /**
   * The design with a note of what was assumed, or everything that is wrong with it.
   *
   * @param texts by id of their field
   * @param parts what it may be made of
   * @param where where the texts stand
   */
  public static Checked<Design> design(Map<String, String> texts, Catalogue parts, Where where) {
    List<Problem> outside = problems(texts, where);
    return outside.isEmpty()
        ? new DesignTexts(fieldTexts(texts, where), where).made(parts)
        : Checked.refused(outside);
  }

  /** What is wrong with some texts that stand by themselves. */
  public static List<Problem> problems(Map<String, String> changes) {
    return Arrays.stream(DesignField.values())
        .map(DesignField::field)
        .filter(f -> changes.containsKey(f.id()))
        .flatMap(
            f ->
                f
                    .trouble(changes.getOrDefault(f.id(), ""), Where.NOWHERE.atColumn(f.id()))
                    .stream())
        .toList();
  }

  /** What is wrong with each text by itself. */
  public static List<Problem> problems(Map<String, String> texts, Where where) {
    return fieldTexts(texts, where).problems(FIELDS);
  }

  private static FieldTexts fieldTexts(Map<String, String> texts, Where where) {
    return new FieldTexts(texts, field -> where.atColumn(field.id()));
  }

  private Checked<Design> made(Catalogue parts) {
    unknownParts(parts);
    oneDiameter();
    resistanceOrPower();
    pressureAndAltitude();
    gauge(parts);
    logger();
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    Design design = new DesignMaking(texts, parts).design();
    List<Problem> broken = DesignRules.problems(design, where);
    return broken.isEmpty() ? Checked.ok(design, notes()) : Checked.refused(broken);
  }

  private List<Problem> notes() {
    return texts.assumed().isEmpty()
        ? List.of()
        : List.of(Problem.warning("design.assumed", where, String.join(", ", texts.assumed())));
  }

  private void unknownParts(Catalogue parts) {
    for (DesignField each : DesignField.values()) {
      List<String> known = each.parts(parts).stream().map(Label::id).toList();
      texts
          .entry(each.field())
          .map(id -> each == DesignField.THERMOCOUPLE ? id.toUpperCase(Locale.ROOT) : id)
          .filter(id -> !known.isEmpty() && !known.contains(id))
          .ifPresent(id -> refuse("design.unknown-part", each, id, String.join(", ", known)));
    }
  }

  private void oneDiameter() {
    boolean mm = has(DesignField.DIAMETER);
    if (mm == has(DesignField.DIAMETER_IN)) {
      refuse("design.one-diameter", DesignField.DIAMETER, mm ? "diameter_mm, diameter_in" : "");
      return;
    }
    Field.Range range = DesignField.DIAMETER.field().range().orElseThrow();
    double d_mm = 1e3 * DesignMaking.diameter_m(texts).orElseThrow();
    if (!(d_mm >= range.least() && d_mm <= range.most())) {
      refuse(
          "design.diameter-outside",
          DesignField.DIAMETER_IN,
          texts.text(DesignField.DIAMETER_IN.field()),
          Field.plain(range.least()),
          Field.plain(range.most()));
    }
  }

  private void resistanceOrPower() {
    if (has(DesignField.RESISTANCE) && has(DesignField.POWER)) {
      refuse("design.resistance-and-power", DesignField.POWER, "");
    }
  }

  /** A pressure that no weather makes at the altitude: one of the two is wrong. */
  private void pressureAndAltitude() {
    OptionalDouble pressure_hPa = texts.optional(DesignField.PRESSURE.field());
    OptionalDouble altitude_m = texts.optional(DesignField.ALTITUDE.field());
    if (pressure_hPa.isEmpty() || altitude_m.isEmpty()) {
      return;
    }
    double standard_hPa = StandardAtmosphere.pressure_Pa(altitude_m.getAsDouble()) / 100;
    if (Math.abs(pressure_hPa.getAsDouble() / standard_hPa - 1) > WEATHER) {
      refuse(
          "design.pressure-contradicts-altitude",
          DesignField.PRESSURE,
          Field.plain(pressure_hPa.getAsDouble()),
          Field.plain(altitude_m.getAsDouble()),
          String.valueOf(Math.round(standard_hPa)));
    }
  }

  private void gauge(Catalogue parts) {
    texts
        .entry(DesignField.THERMOCOUPLE.field())
        .flatMap(parts::thermocouple)
        .filter(type -> type.gauges().isEmpty())
        .ifPresent(
            type ->
                refuse(
                    "design.gauge-unknown",
                    DesignField.GAUGE,
                    texts.text(DesignField.GAUGE.field())));
  }

  /** A logger is one of the library, or all its own numbers are given. */
  private void logger() {
    if (has(DesignField.LOGGER)) {
      return;
    }
    List<DesignField> missing = PartFields.OWN_LOGGER.stream().filter(f -> !has(f)).toList();
    if (!missing.isEmpty()) {
      boolean none = missing.size() == PartFields.OWN_LOGGER.size();
      (none ? List.of(DesignField.LOGGER) : missing)
          .forEach(f -> refuse("field.missing", f, "", f.field().nameKey()));
      return;
    }
    double low = texts.number(DesignField.LOGGER_LOW.field());
    double high = texts.number(DesignField.LOGGER_HIGH.field());
    if (low >= high) {
      refuse(
          "asset.order",
          DesignField.LOGGER_LOW,
          Field.plain(low),
          "range_high_mV",
          Field.plain(high));
    }
  }

  private boolean has(DesignField field) {
    return texts.has(field.field());
  }

  private void refuse(String id, DesignField field, String found, String... details) {
    problems.add(Problem.error(id, texts.where(field.field()), found, details));
  }
}
