package faintwind.network;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;

/**
 * One assembly on the bench: ohms of every part, the supply, and what the logger would see. Begins
 * sound, anywhere within the tolerances of its design; a fault then changes some of it.
 */
final class Assembly {
  static final double OPEN = Double.POSITIVE_INFINITY;

  /** Insulation from dry to a humid day, Ω: all in parallel still above 20 MΩ. */
  private static final double HUMID_OHM = 4e8;

  private static final double DRY_OHM = 1e11;
  private static final double TINY_OHM = 1e-4;
  private static final List<String> CONDUCTORS =
      List.of("heater-plus", "heater-minus", "signal-plus", "signal-minus");

  private static final List<String> WITH_JUNCTIONS = List.of("pair", "joined", "power");

  private final Map<Part, Double> ohms = new EnumMap<>(Part.class);
  private final Map<Part, Double> withJunctions = new EnumMap<>(Part.class);
  private final Map<String, String> farEnds = new HashMap<>();
  private double supply_V;
  private double senseShare = 1;
  private boolean meterFuseBlown;

  private Assembly() {}

  /** A sound assembly; every part at a random place within its tolerance, or at its edge. */
  static Assembly sound(BenchDesign design, RandomGenerator random) {
    Assembly a = new Assembly();
    for (Part part : Part.values()) {
      a.ohms.put(part, logUniform(random, HUMID_OHM, DRY_OHM));
    }
    a.ohms.put(Part.LEADS_BRIDGE, OPEN);
    double heater = design.within("lead_to_lead_low_ohm", "lead_to_lead_high_ohm", random);
    a.ohms.put(Part.HEATER_ALONE, design.within("low_heater_ohm", "high_heater_ohm", random));
    a.ohms.put(Part.HEATER_WITH_LEADS, heater);
    a.ohms.put(Part.HEATER, heater);
    double loop = design.within("loop_resistance_low_ohm", "loop_resistance_high_ohm", random);
    a.ohms.put(Part.LOOP_ALONE, loop);
    double middle = loop * (0.2 + 0.7 * random.nextDouble());
    a.ohms.put(Part.MIDDLE, middle);
    a.ohms.put(Part.LEG_1, (loop - middle) / 2);
    a.ohms.put(Part.LEG_2, (loop - middle) / 2);
    double conductor = design.within("low_cable_ohm", "high_cable_ohm", random) / 2;
    for (Part part :
        List.of(
            Part.CONDUCTOR_HEATER_PLUS,
            Part.CONDUCTOR_HEATER_MINUS,
            Part.CONDUCTOR_SIGNAL_PLUS,
            Part.CONDUCTOR_SIGNAL_MINUS)) {
      a.ohms.put(part, conductor);
    }
    a.ohms.put(Part.JOINT_HEATER, TINY_OHM);
    a.ohms.put(Part.JOINT_SIGNAL, TINY_OHM);
    a.ohms.put(Part.SUPPLY_INSIDE, 1e-3);
    a.supply_V = design.within("low_supply_V", "high_supply_V", random);
    // two minutes of one time constant, less the lag of resistor and glue, within the tolerances
    double constants = 120 * design.value("warm_up_rate_K_s") / design.value("still_delta_K");
    double curved = -Math.expm1(-constants) / constants;
    a.senseShare = curved * (0.8 + 0.3 * random.nextDouble());
    CONDUCTORS.forEach(c -> a.farEnds.put(c, c));
    return a;
  }

  static double logUniform(RandomGenerator random, double from, double to) {
    return from * Math.pow(to / from, random.nextDouble());
  }

  double ohm(Part part) {
    return Objects.requireNonNull(ohms.get(part));
  }

  Assembly set(Part part, double ohm) {
    ohms.put(part, ohm);
    return this;
  }

  /** Changes a part when the junctions are pushed in: until then it was as it is now. */
  Assembly setWithJunctions(Part part, double ohm) {
    withJunctions.put(part, ohm);
    return this;
  }

  Assembly times(Part part, double factor) {
    return set(part, ohm(part) * factor);
  }

  Assembly supply(double volts) {
    supply_V = volts;
    return this;
  }

  double supply_V() {
    return supply_V;
  }

  /** The signal's rise in two minutes as a share of the straight rise of the design. */
  double senseShare() {
    return senseShare;
  }

  Assembly sense(double share) {
    senseShare = share;
    return this;
  }

  /** Exchanges the far ends of two conductors. */
  Assembly exchange(String one, String other) {
    String end = Objects.requireNonNull(farEnds.get(one));
    farEnds.put(one, Objects.requireNonNull(farEnds.get(other)));
    farEnds.put(other, end);
    return this;
  }

  /** What lies on the bench in a scene of the checklist. */
  ResistorNetwork network(String scene) {
    if (WITH_JUNCTIONS.contains(scene)) {
      ohms.putAll(withJunctions);
    }
    ResistorNetwork n = new ResistorNetwork();
    switch (scene) {
      case "resistor" -> n.join("leg-a", "leg-b", ohm(Part.HEATER_ALONE));
      case "heater" -> n.join("lead-a", "lead-b", ohm(Part.HEATER_WITH_LEADS));
      case "proof" -> {
        n.join("proof-1-a", "proof-1-b", 1e6);
        n.join("proof-10-a", "proof-10-b", 10e6);
        n.join("tip-red", "tip-black", TINY_OHM);
        // so that none of them floats
        List.of("proof-1-b", "proof-10-b", "tip-black").forEach(end -> n.join(end, "table", 1e10));
      }
      case "loop" -> n.join("loop-plus", "loop-minus", ohm(Part.LOOP_ALONE));
      case "joined" -> {
        cable(n);
        heatedBall(n);
        loop(n);
        n.join("heater-plus-balls", "lead-a", ohm(Part.JOINT_HEATER));
        n.join("heater-minus-balls", "lead-b", TINY_OHM);
        n.join("signal-plus-balls", "loop-plus", ohm(Part.JOINT_SIGNAL));
        n.join("signal-minus-balls", "loop-minus", TINY_OHM);
      }
      case "plate" -> {
        n.join("lead-a", "plate", ohm(Part.LEAD_A_TO_PLATE));
        n.join("lead-b", "plate", ohm(Part.LEAD_B_TO_PLATE));
        n.join("heater-body", "plate", ohm(Part.BODY_TO_PLATE));
        n.join("junction-1", "plate", ohm(Part.JUNCTION_1_TO_PLATE));
        n.join("junction-2", "plate", ohm(Part.JUNCTION_2_TO_PLATE));
      }
      case "heated-ball" -> heatedBall(n);
      case "pair" -> {
        heatedBall(n);
        loop(n);
      }
      case "cable" -> cable(n);
      case "power" -> {
        cable(n);
        heatedBall(n);
        n.join("heater-plus-balls", "lead-a", ohm(Part.JOINT_HEATER));
        n.join("heater-minus-balls", "lead-b", TINY_OHM);
      }
      default -> throw new IllegalArgumentException(scene);
    }
    return n;
  }

  private void heatedBall(ResistorNetwork n) {
    n.join("lead-a", "body", ohm(Part.HEATER) / 2);
    n.join("body", "lead-b", ohm(Part.HEATER) / 2);
    n.join("lead-a", "lead-b", ohm(Part.LEADS_BRIDGE));
    n.join("lead-a", "heated-ball", ohm(Part.LEAD_A_TO_BALL));
    n.join("lead-b", "heated-ball", ohm(Part.LEAD_B_TO_BALL));
    n.join("body", "heated-ball", ohm(Part.BODY_TO_BALL));
  }

  private void loop(ResistorNetwork n) {
    n.join("loop-plus", "in-ball-1", ohm(Part.LEG_1));
    n.join("in-ball-1", "in-ball-2", ohm(Part.MIDDLE));
    n.join("in-ball-2", "loop-minus", ohm(Part.LEG_2));
    n.join("in-ball-1", "heated-ball", ohm(Part.JUNCTION_1_TO_BALL));
    n.join("in-ball-2", "reference-ball", ohm(Part.JUNCTION_2_TO_BALL));
    n.join("lead-a", "in-ball-1", ohm(Part.HEATER_TO_LOOP));
    n.join("heated-ball", "reference-ball", ohm(Part.FRAME));
  }

  private void cable(ResistorNetwork n) {
    conductor(n, "heater-plus", Part.CONDUCTOR_HEATER_PLUS);
    conductor(n, "heater-minus", Part.CONDUCTOR_HEATER_MINUS);
    conductor(n, "signal-plus", Part.CONDUCTOR_SIGNAL_PLUS);
    conductor(n, "signal-minus", Part.CONDUCTOR_SIGNAL_MINUS);
    n.join("heater-plus-near", "heater-minus-near", ohm(Part.BETWEEN_HEATER_WIRES));
    n.join("signal-plus-near", "signal-minus-near", ohm(Part.BETWEEN_SIGNAL_WIRES));
    n.join("heater-plus-near", "signal-plus-near", ohm(Part.HEATER_PLUS_TO_SIGNAL_PLUS));
    n.join("heater-plus-near", "signal-minus-near", ohm(Part.HEATER_PLUS_TO_SIGNAL_MINUS));
    n.join("heater-minus-near", "signal-plus-near", ohm(Part.HEATER_MINUS_TO_SIGNAL_PLUS));
    n.join("heater-minus-near", "signal-minus-near", ohm(Part.HEATER_MINUS_TO_SIGNAL_MINUS));
    for (String conductor : CONDUCTORS) {
      n.join(conductor + "-near", "shield", ohm(Part.TO_SHIELD));
    }
  }

  private void conductor(ResistorNetwork n, String mark, Part part) {
    n.join(mark + "-near", Objects.requireNonNull(farEnds.get(mark)) + "-balls", ohm(part));
  }

  /** Ohms between two points; each pair in one clip where the step says so. */
  double ohm(String scene, String one, String other, boolean pairsClipped) {
    ResistorNetwork n = network(scene);
    if (pairsClipped) {
      n.join("heater-plus-near", "heater-minus-near", TINY_OHM);
      n.join("signal-plus-near", "signal-minus-near", TINY_OHM);
    }
    return n.ohm(one, other);
  }

  /** The meter's fuse for currents is gone: in the way of the current it opens the circuit. */
  Assembly blowMeterFuse() {
    meterFuseBlown = true;
    return this;
  }

  /** Current from the supply, A, with a meter of that resistance in its way. */
  double current_A(double meter_ohm) {
    if (meterFuseBlown && meter_ohm > 0) {
      return 0;
    }
    double load = network("power").ohm("heater-plus-near", "heater-minus-near");
    return supply_V / (load + ohm(Part.SUPPLY_INSIDE) + meter_ohm);
  }

  /** Voltage at the balls, V. */
  double voltage_V() {
    return network("power")
        .potential_V(
            "heater-plus-balls",
            "heater-minus-balls",
            "heater-plus-near",
            "heater-minus-near",
            current_A(0));
  }
}
