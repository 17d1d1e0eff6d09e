package faintwind.network;

import faintwind.guide.checklist.BenchFact;
import faintwind.guide.checklist.ProbePoint;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A sound build as it lies on the bench: what is joined to what, by what is true of it. Made of
 * ohms alone, so that each reading of the checklist gives what a meter would show then and there.
 */
final class BenchModel {
  private static final double TINY_OHM = 1e-3;
  private static final double BARE_OHM = 0.05;
  private static final double COAT_OHM = 1e10;
  private static final double METER_LEADS_OHM = 0.1;

  private final BenchDesign design;
  private final Set<BenchFact> facts;

  BenchModel(BenchDesign design, Set<BenchFact> facts) {
    this.design = design;
    this.facts = EnumSet.noneOf(BenchFact.class);
    this.facts.addAll(facts);
  }

  private boolean is(BenchFact fact) {
    return facts.contains(fact);
  }

  /** What a meter on ohms shows between two points; each pair in a clip where the step says so. */
  double ohm(ProbePoint one, ProbePoint other, boolean pairsClipped) {
    ResistorNetwork n = network();
    for (ProbePoint point : List.of(one, other)) {
      if (one == ProbePoint.PLATE || other == ProbePoint.PLATE) {
        press(n, point);
      }
    }
    if (pairsClipped) {
      n.join("heater-plus-near", "heater-minus-near", TINY_OHM);
      n.join("signal-plus-near", "signal-minus-near", TINY_OHM);
    }
    return n.ohm(one.word(), other.word()) + METER_LEADS_OHM;
  }

  /** Volts of the supply with nothing on it. */
  double open_V() {
    return design.value("supply_V");
  }

  /** Volts at the balls with the supply on. */
  double voltage_V() {
    return design.value("heater_voltage_V");
  }

  /** Amperes from the supply. */
  double current_A() {
    return 1e-3 * design.value("heater_current_mA");
  }

  private ResistorNetwork network() {
    ResistorNetwork n = new ResistorNetwork();
    heater(n);
    loop(n);
    cable(n);
    n.join("proof-1-a", "proof-1-b", 1e6);
    n.join("proof-10-a", "proof-10-b", 10e6);
    n.join("tip-red", "tip-black", TINY_OHM);
    // every point has some leak to the table, so that nothing floats
    for (ProbePoint point : ProbePoint.values()) {
      n.join(point.word(), "table", 10 * COAT_OHM);
    }
    return n;
  }

  /** One part at a time lies on the plate, with its coat between. */
  private void press(ResistorNetwork n, ProbePoint point) {
    double heater = is(BenchFact.HEATER_COATED) ? COAT_OHM : BARE_OHM;
    double junction = is(BenchFact.JUNCTIONS_COATED) ? COAT_OHM : BARE_OHM;
    switch (point) {
      case LEAD_A -> n.join("leg-a", "plate", heater);
      case LEAD_B -> n.join("leg-b", "plate", heater);
      case HEATER_BODY -> {
        n.join("heater-body", "lead-a", TINY_OHM);
        n.join("leg-a", "plate", heater);
        n.join("leg-b", "plate", heater);
      }
      case JUNCTION_1 -> n.join("bead-1", "plate", junction);
      case JUNCTION_2 -> n.join("bead-2", "plate", junction);
      default -> n.join("plate", "table", COAT_OHM);
    }
  }

  private void heater(ResistorNetwork n) {
    n.join("leg-a", "leg-b", design.value("heater_ohm"));
    if (!is(BenchFact.LEADS_JOINED)) {
      return;
    }
    double leads = design.value("lead_to_lead_high_ohm") - design.value("high_heater_ohm");
    n.join("leg-a", "lead-a", Math.max(TINY_OHM, leads / 2));
    n.join("leg-b", "lead-b", Math.max(TINY_OHM, leads / 2));
    double coat = is(BenchFact.HEATER_COATED) ? COAT_OHM : BARE_OHM;
    if (is(BenchFact.HEATER_IN_BALL)) {
      n.join("leg-a", "heated-ball", coat);
      n.join("leg-b", "heated-ball", coat);
    }
  }

  private void loop(ResistorNetwork n) {
    if (!is(BenchFact.LOOP_MADE)) {
      return;
    }
    double third = design.value("loop_resistance_ohm") / 3;
    n.join("loop-plus", "bead-1", third);
    n.join("bead-1", "bead-2", third);
    n.join("bead-2", "loop-minus", third);
    n.join("junction-1", "loop-plus", TINY_OHM);
    n.join("junction-2", "loop-minus", TINY_OHM);
    double coat = is(BenchFact.JUNCTIONS_COATED) ? COAT_OHM : BARE_OHM;
    if (is(BenchFact.JUNCTIONS_IN_BALLS)) {
      n.join("bead-1", "heated-ball", coat);
      n.join("bead-2", "reference-ball", coat);
    }
  }

  private void cable(ResistorNetwork n) {
    if (is(BenchFact.CABLE_MADE)) {
      for (String wire : List.of("heater-plus", "heater-minus", "signal-plus", "signal-minus")) {
        n.join(wire + "-near", wire + "-balls", design.value("cable_ohm") / 2);
      }
    }
    if (is(BenchFact.CABLE_JOINED)) {
      n.join("heater-plus-balls", "lead-a", TINY_OHM);
      n.join("heater-minus-balls", "lead-b", TINY_OHM);
      n.join("signal-plus-balls", "loop-plus", TINY_OHM);
      n.join("signal-minus-balls", "loop-minus", TINY_OHM);
    }
    if (is(BenchFact.SUPPLY_ON_CABLE)) {
      n.join("heater-plus-near", "heater-minus-near", 0.5);
    }
    if (is(BenchFact.LOGGER_ON_CABLE)) {
      n.join("signal-plus-near", "signal-minus-near", 1e6);
      n.join("signal-minus-near", "table", 1e5);
    }
  }
}
