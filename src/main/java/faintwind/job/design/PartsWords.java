package faintwind.job.design;

import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.advice.PartNeed;
import faintwind.physics.advice.Workshop;
import faintwind.physics.design.Design;
import faintwind.physics.part.ColourCode;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What exactly each part of a design is, its tolerance, and what to look for when buying it. */
final class PartsWords {
  private final Design design;
  private final DesignSheet sheet;
  private final Messages words;

  PartsWords(Design design, DesignSheet sheet, Messages words) {
    this.design = design;
    this.sheet = sheet;
    this.words = words;
  }

  String part(PartNeed need) {
    return words.text("parts." + id(need));
  }

  String unit(PartNeed need) {
    return words.text("parts.unit." + need.kind().count().name().toLowerCase(Locale.ROOT));
  }

  private static String id(PartNeed need) {
    return need.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it is, in general terms. */
  String what(PartNeed need) {
    return switch (need.kind()) {
      case BALL -> words.text("parts.ball.what", design.ball().metal().label().name(), diameter());
      case PLATING, PAINT -> design.ball().coat().label().name();
      case DRILL -> words.text("parts.drill.what", value(OutcomeId.BORE));
      case RESISTOR ->
          words.text(
              "parts.resistor.what",
              Numerals.digits(design.heater().resistance_ohm().nominal()),
              design.heater().style().label().name());
      case LEAD -> design.heater().leads().label().name();
      case THERMOCOUPLE ->
          words.text(
              "parts.thermocouple.what",
              design.sense().type().label().name(),
              String.valueOf(design.sense().gauge().awg()),
              Numerals.digits(1e3 * design.sense().gauge().diameter_m()));
      case VARNISH -> words.text("parts.varnish.what");
      case EPOXY -> words.text("parts.epoxy.what");
      case SUPPLY ->
          words.text(
              "parts.supply.what."
                  + design.supply().regulator().kind().name().toLowerCase(Locale.ROOT),
              Numerals.digits(design.supply().voltage_V().nominal()),
              value(OutcomeId.CURRENT_HIGH));
      case BATTERY -> design.supply().battery().map(b -> b.label().name()).orElse("");
      case CABLE -> design.supply().cable().map(c -> c.conductor().label().name()).orElse("");
      case LOGGER -> design.sense().logger().label().name();
      case CONSUMABLE, TOOL, ARM, HOME_PLATING -> words.text("parts.item." + Workshop.id(need));
    };
  }

  /** Its tolerance, or what stands for one. */
  String tolerance(PartNeed need) {
    return switch (need.kind()) {
      case BALL ->
          words.text(
              "parts.ball.tolerance",
              Numerals.digits(1e3 * design.ball().diameter_m().half()),
              Numerals.digits(1e3 * value(OutcomeId.BLANK_MASS_AGREEMENT, Interval::nominal), 2));
      case RESISTOR -> percent(design.heater().resistance_ohm());
      case SUPPLY -> percent(design.supply().voltage_V());
      case THERMOCOUPLE ->
          design.sense().type().tolerances().stream()
              .map(
                  t ->
                      words.text(
                          "parts.thermocouple.tolerance",
                          t.standard(),
                          t.grade(),
                          Numerals.digits(t.limit_K())))
              .findFirst()
              .orElse("");
      case BATTERY ->
          words.text(
              "parts.battery.tolerance",
              Numerals.digits(value(OutcomeId.BATTERY_TIME, Interval::low)),
              Numerals.digits(value(OutcomeId.BATTERY_TIME, Interval::high)));
      case PLATING,
          PAINT,
          DRILL,
          LEAD,
          VARNISH,
          EPOXY,
          CABLE,
          LOGGER,
          CONSUMABLE,
          TOOL,
          ARM,
          HOME_PLATING ->
          "";
    };
  }

  /** What to look for when buying it. */
  String lookFor(PartNeed need) {
    String key = "parts." + id(need) + ".look-for";
    return switch (need.kind()) {
      case RESISTOR -> words.text(key, bands(), bodyWidth(), value(OutcomeId.BORE));
      case THERMOCOUPLE ->
          words.text(key, colours(), design.sense().type().joining().strip()).strip();
      case BALL,
          PLATING,
          PAINT,
          DRILL,
          LEAD,
          VARNISH,
          EPOXY,
          SUPPLY,
          BATTERY,
          CABLE,
          LOGGER,
          CONSUMABLE,
          TOOL,
          ARM,
          HOME_PLATING ->
          words.text(key);
    };
  }

  /** Whole to a thousandth of a millimetre: 9.525 mm is not 9.53 mm. */
  private String diameter() {
    double mm = 1e3 * design.ball().diameter_m().nominal();
    return Numerals.shortest(mm, 3)
        + " mm"
        + design.ball().inches().map(i -> " (" + i + " in)").orElse("");
  }

  private String bodyWidth() {
    ResistorStyle.Body body = design.heater().style().body();
    return Numerals.digits(1e3 * body.diameter_m().high());
  }

  private String bands() {
    Interval r = design.heater().resistance_ohm();
    List<ColourCode.Colour> bands = ColourCode.bands(r.nominal(), r.half() / r.nominal());
    return bands.isEmpty()
        ? words.text("parts.resistor.no-bands")
        : bands.stream()
            .map(c -> words.text("colour." + c.name().toLowerCase(Locale.ROOT)))
            .collect(Collectors.joining(" "));
  }

  private String colours() {
    return design.sense().type().colours().stream()
        .map(this::colours)
        .collect(Collectors.joining("; "));
  }

  private String colours(ThermocoupleType.Colours c) {
    String key = c.status().equals("seen") ? "parts.colours" : "parts.colours.memory";
    return words.text(key, c.standard(), c.positive(), c.negative());
  }

  private String percent(Interval value) {
    return words.text(
        "parts.tolerance.percent", Numerals.digits(100 * value.half() / value.nominal()));
  }

  private String value(OutcomeId id) {
    return Numerals.digits(value(id, Interval::nominal));
  }

  private double value(OutcomeId id, ToDoubleFunction<Interval> edge) {
    return sheet.quantity(id).map(Outcome::value).map(edge::applyAsDouble).orElse(0.0);
  }
}
