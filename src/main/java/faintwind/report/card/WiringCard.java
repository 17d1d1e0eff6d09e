package faintwind.report.card;

import faintwind.guide.Situation;
import faintwind.physics.design.Design;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.sheet.OutcomeId;
import faintwind.report.figure.WiringDrawing;
import faintwind.report.figure.WiringDrawing.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The chain drawn for this supply, thermocouple and kind of input, with what goes with it. */
final class WiringCard {
  private static final String STEP = "set-up-input";
  private static final String QUESTION = "input";

  private WiringCard() {}

  static StepCard of(Design design, Situation situation, CardWords words) {
    ThermocoupleType type = design.sense().type();
    Input input = input(situation);
    List<StepCard.Row> rows = new ArrayList<>();
    rows.add(words.row("card.wiring.supply", supply(design.supply(), words)));
    if (words.knows(OutcomeId.CABLE_RESISTANCE)) {
      rows.add(words.row(OutcomeId.CABLE_RESISTANCE));
      rows.add(words.row(OutcomeId.CABLE_DROP));
    }
    rows.add(words.row(OutcomeId.HEATER_CURRENT));
    for (ThermocoupleType.Colours colours : type.colours()) {
      rows.add(
          new StepCard.Row(
              words.text("card.wiring.colours", type.label().name(), colours.standard()),
              words.text(
                  "card.wiring.colours-are",
                  type.alloys().positive().name(),
                  colours.positive(),
                  type.alloys().negative().name(),
                  colours.negative()),
              words.text("card.wiring.colours-status", colours.status())));
    }
    rows.add(words.row("card.wiring.joining", type.joining()));
    return new StepCard(
        words.text("card.wiring"),
        List.of(drawing(design, input, words)),
        rows,
        List.of(
            words.text("card.wiring.joints"),
            words.text("card.wiring.input." + word(input)),
            words.text("card.wiring.colours-check"),
            words.text("card.wiring.relief")));
  }

  /** As answered; a voltage until it is. */
  private static Input input(Situation situation) {
    return situation
        .state()
        .answer(STEP, QUESTION)
        .map(line -> line.event().choice())
        .map(
            choice ->
                switch (choice) {
                  case "difference" -> Input.DIFFERENCE;
                  case "compensated" -> Input.COMPENSATED;
                  default -> Input.VOLTAGE;
                })
        .orElse(Input.VOLTAGE);
  }

  private static String word(Input input) {
    return input.name().toLowerCase(Locale.ROOT);
  }

  private static String supply(SupplyDesign supply, CardWords words) {
    String regulated = regulated(supply, words);
    String source = source(supply, words);
    return regulated.isEmpty() ? source : source + ", " + regulated;
  }

  /** The battery, or how the voltage is held where there is none. */
  private static String source(SupplyDesign supply, CardWords words) {
    return supply.battery().map(b -> b.label().name()).orElseGet(() -> held(supply, words));
  }

  /** How the voltage is held where a battery feeds it; else empty. */
  private static String regulated(SupplyDesign supply, CardWords words) {
    return supply.battery().isPresent() ? held(supply, words) : "";
  }

  private static String held(SupplyDesign supply, CardWords words) {
    String kind = supply.regulator().kind().name().toLowerCase(Locale.ROOT);
    String volts = words.figure(supply.voltage_V().nominal(), "V");
    return words.text("card.wiring.supply." + kind, volts);
  }

  private static WiringDrawing drawing(Design design, Input input, CardWords words) {
    ThermocoupleType type = design.sense().type();
    String cable =
        design
            .supply()
            .cable()
            .map(
                c ->
                    words.text(
                        "card.wiring.cable",
                        words.figure(c.length_m(), "m"),
                        words.nominal(OutcomeId.CABLE_DROP)))
            .orElse("");
    ThermocoupleType.Colours colours = type.colours().get(0);
    return new WiringDrawing(
        new WiringDrawing.Power(
            source(design.supply(), words), regulated(design.supply(), words), cable),
        new WiringDrawing.Couple(
            words.text("card.wiring.type", type.label().name(), colours.standard()),
            type.alloys().positive().name() + ", " + colours.positive(),
            type.alloys().negative().name() + ", " + colours.negative()),
        input,
        words.messages());
  }
}
