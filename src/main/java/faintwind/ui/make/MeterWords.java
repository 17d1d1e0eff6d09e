package faintwind.ui.make;

import faintwind.guide.Situation;
import faintwind.guide.checklist.MeterClass;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.message.NumberText;
import faintwind.physics.sheet.OutcomeId;
import faintwind.ui.make.StepView.MeterFace;
import faintwind.ui.make.StepView.MeterKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The meter of a step in words: which one, how wrong it may be here, what it cannot show. */
final class MeterWords {
  private static final Pattern VALUE = Pattern.compile("\\{([A-Za-z0-9_]+)}");
  private static final String INSULATION_UNIT = "MΩ";
  private static final int DIGITS = 2;

  private final Messages words;

  MeterWords(Messages words) {
    this.words = words;
  }

  /** The meter; empty where the step needs none or no class is known. */
  Optional<MeterFace> of(Step step, Situation situation) {
    List<Reading> measured =
        step.asks().readings().stream().filter(r -> r.tips().isPresent()).toList();
    return measured.isEmpty()
        ? Optional.empty()
        : situation.meterAt(situation.now()).map(meter -> face(meter, measured, situation));
  }

  private MeterFace face(MeterClass meter, List<Reading> measured, Situation situation) {
    List<MeterKind> options =
        situation.meters().classes().stream().map(m -> new MeterKind(m.id(), m.name())).toList();
    List<String> lines = new ArrayList<>();
    lines.add(words.text("window.meter.over-range", meter.overRange()));
    Map<String, Double> sheet = situation.sheetValues();
    for (Reading reading : measured) {
      error(meter, reading, sheet).filter(line -> !lines.contains(line)).ifPresent(lines::add);
    }
    shortRange(meter, measured, sheet).ifPresent(lines::add);
    return new MeterFace(meter.id(), options, lines);
  }

  /** How wrong it may be at the lower edge of a band, and whether that hides the band. */
  private Optional<String> error(MeterClass meter, Reading reading, Map<String, Double> sheet) {
    List<Double> edges = edges(reading, sheet);
    if (edges.isEmpty() || reading.unit().equals(INSULATION_UNIT)) {
      return Optional.empty();
    }
    double at = edges.get(0);
    OptionalDouble half = meter.halfWidth(at, reading.unit());
    if (half.isEmpty()) {
      return Optional.empty();
    }
    boolean hides = edges.size() > 1 && half.getAsDouble() > (edges.get(1) - at) / 2;
    return Optional.of(
        words.text(
            hides ? "window.meter.hides" : "window.meter.error",
            amount(at, reading.unit()),
            amount(half.getAsDouble(), reading.unit()),
            reading.label()));
  }

  /** The numbers of the design that the expected band names, in the reading's unit. */
  private static List<Double> edges(Reading reading, Map<String, Double> sheet) {
    List<Double> edges = new ArrayList<>();
    Matcher named = VALUE.matcher(reading.expected());
    while (named.find()) {
      Double value = sheet.get(named.group(1));
      String unit =
          OutcomeId.of(named.group(1).replaceFirst("^(low|high)_", ""))
              .map(OutcomeId::unit)
              .orElse("");
      if (value != null && NumberText.measureTheSame(unit, reading.unit())) {
        edges.add(NumberText.convert(value, unit, reading.unit()));
      }
    }
    return edges;
  }

  private Optional<String> shortRange(
      MeterClass meter, List<Reading> measured, Map<String, Double> sheet) {
    double good = sheet.getOrDefault(OutcomeId.INSULATION_GOOD.id(), 0.0);
    double top = meter.top(INSULATION_UNIT).orElse(0);
    boolean asked = measured.stream().anyMatch(r -> r.unit().equals(INSULATION_UNIT));
    return asked && top < good
        ? Optional.of(
            words.text(
                "window.meter.short", amount(top, INSULATION_UNIT), amount(good, INSULATION_UNIT)))
        : Optional.empty();
  }

  private String amount(double value, String unit) {
    return AmountText.quantity(value, unit, DIGITS + (value >= 100 ? 1 : 0), words.locale());
  }
}
