package faintwind.network;

import static faintwind.network.Assembly.OPEN;
import static faintwind.network.Assembly.logUniform;

import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What can be wrong with an assembly. Each changes a sound one; the ids are the remedies that name
 * it rightly. Where the readings cannot tell two faults apart, the remedy must say so, and its id
 * stands with both.
 */
enum Fault {
  WRONG_RESISTOR("wrong-resistor") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      double factor = r.nextBoolean() ? logUniform(r, 1.2, 1000) : logUniform(r, 0.001, 0.8);
      a.times(Part.HEATER_ALONE, factor)
          .times(Part.HEATER_WITH_LEADS, factor)
          .times(Part.HEATER, factor);
    }
  },
  PINHOLE_ON_LEAD_A("pinhole-lead-a") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEAD_A_TO_PLATE, wound(r));
    }
  },
  PINHOLE_ON_LEAD_B("pinhole-lead-b") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEAD_B_TO_PLATE, wound(r));
    }
  },
  PINHOLE_ON_THE_BODY("pinhole-body") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.BODY_TO_PLATE, wound(r));
    }
  },
  PINHOLE_ON_JUNCTION_1("pinhole-junction-1") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JUNCTION_1_TO_PLATE, wound(r));
    }
  },
  PINHOLE_ON_JUNCTION_2("pinhole-junction-2") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JUNCTION_2_TO_PLATE, wound(r));
    }
  },
  COATS_DAMP_ON_PLATE("coats-damp-on-plate") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      for (Part part :
          List.of(
              Part.LEAD_A_TO_PLATE,
              Part.LEAD_B_TO_PLATE,
              Part.BODY_TO_PLATE,
              Part.JUNCTION_1_TO_PLATE,
              Part.JUNCTION_2_TO_PLATE)) {
        a.set(part, damp(r));
      }
    }

    @Override
    boolean needsMegohms() {
      return true;
    }
  },
  FINGERS_ON_THE_TIPS("fingers-on-plate") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      // a person from hand to hand: 0.1 to 1.5 MΩ, common knowledge, no source
      double person = logUniform(r, 1e5, 1.5e6);
      for (Part part :
          List.of(
              Part.LEAD_A_TO_PLATE,
              Part.LEAD_B_TO_PLATE,
              Part.BODY_TO_PLATE,
              Part.JUNCTION_1_TO_PLATE,
              Part.JUNCTION_2_TO_PLATE)) {
        a.set(part, person * (0.8 + 0.4 * r.nextDouble()));
      }
    }
  },
  LEAD_A_PIERCED_TO_BARE_METAL("lead-a-touches", "heater-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEAD_A_TO_BALL, logUniform(r, 0.1, 6 * a.ohm(Part.HEATER)));
    }
  },
  LEAD_B_PIERCED_TO_BARE_METAL("lead-b-touches", "heater-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEAD_B_TO_BALL, logUniform(r, 0.1, 6 * a.ohm(Part.HEATER)));
    }
  },
  LEAD_A_PIERCED("heater-touches", "heater-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEAD_A_TO_BALL, wound(r));
    }
  },
  RESISTOR_BODY_PIERCED("heater-touches", "heater-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.BODY_TO_BALL, wound(r));
    }
  },
  EPOXY_OVER_THE_RIM("both-leads-touch", "heater-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEAD_A_TO_BALL, logUniform(r, 0.1, 2 * a.ohm(Part.HEATER)));
      a.set(Part.LEAD_B_TO_BALL, logUniform(r, 0.1, 2 * a.ohm(Part.HEATER)));
    }
  },
  LEAD_A_SCRAPED_BY_THE_JUNCTION("lead-scraped-by-junction", "lead-scraped-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.setWithJunctions(Part.LEAD_A_TO_BALL, wound(r));
    }
  },
  LEAD_B_SCRAPED_BY_THE_JUNCTION("lead-scraped-by-junction", "lead-scraped-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.setWithJunctions(Part.LEAD_B_TO_BALL, wound(r));
    }
  },
  LEADS_BRIDGED("leads-bridged") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEADS_BRIDGE, logUniform(r, 0.1, 3 * a.ohm(Part.HEATER)));
    }
  },
  HEATER_BROKEN("heater-broken") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.HEATER, logUniform(r, 3 * a.ohm(Part.HEATER), 1e9));
    }
  },
  HEATER_BROKEN_AND_TOUCHING("heater-broken", "heater-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.HEATER, 1e9).set(Part.LEAD_A_TO_BALL, wound(r));
    }
  },
  HEATER_COATS_DAMP("heater-coats-damp", "heater-leaks-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.LEAD_A_TO_BALL, 2 * damp(r)).set(Part.LEAD_B_TO_BALL, 2 * damp(r));
    }

    @Override
    boolean needsMegohms() {
      return true;
    }
  },
  LOOP_OPEN("loop-open") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      Part broken = List.of(Part.LEG_1, Part.MIDDLE, Part.LEG_2).get(r.nextInt(3));
      a.set(broken, logUniform(r, 1e3, 1e10));
    }
  },
  LOOP_SHORTED_BEFORE_A_JUNCTION("loop-shorted", "loop-shorted-since") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      // the wires touch near the far ends: less than a third of the shortest loop is left
      double left = 0.3 * r.nextDouble();
      a.times(Part.LEG_1, left).times(Part.MIDDLE, left).times(Part.LEG_2, left);
    }
  },
  JUNCTION_1_PIERCED("junction-1-touches", "junction-1-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JUNCTION_1_TO_BALL, wound(r));
    }
  },
  JUNCTION_2_PIERCED("junction-2-touches", "junction-2-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JUNCTION_2_TO_BALL, wound(r));
    }
  },
  BOTH_JUNCTIONS_PIERCED("both-junctions-touch", "both-junctions-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JUNCTION_1_TO_BALL, wound(r) / 3).set(Part.JUNCTION_2_TO_BALL, wound(r) / 3);
    }
  },
  FRAME_JOINS_THE_BALLS("balls-touch-outside", "balls-touch-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.FRAME, logUniform(r, 0.01, 8e5));
    }
  },
  FRAME_AND_A_JUNCTION("joined-outside-and-junction", "both-junctions-hurt-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.FRAME, logUniform(r, 0.01, 3e5)).set(Part.JUNCTION_1_TO_BALL, wound(r) / 3);
    }
  },
  HEATER_TOUCHES_THERMOCOUPLE("heater-touches-loop", "heater-on-loop-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.HEATER_TO_LOOP, wound(r));
    }
  },
  HEATER_AND_JUNCTION_IN_THE_BORE("leak-through-ball", "through-ball-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.HEATER_TO_LOOP, wound(r)).set(Part.JUNCTION_1_TO_BALL, wound(r));
    }
  },
  JUNCTION_COATS_DAMP("loop-coats-damp", "junctions-leak-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JUNCTION_1_TO_BALL, damp(r)).set(Part.JUNCTION_2_TO_BALL, damp(r));
    }

    @Override
    boolean needsMegohms() {
      return true;
    }
  },
  CONDUCTOR_BROKEN(
      "heater-plus-broken", "heater-minus-broken", "signal-plus-broken", "signal-minus-broken") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(CONDUCTORS.get(r.nextInt(4)), logUniform(r, 100, 1e10));
    }
  },
  COLD_JOINT(
      "cold-joint",
      "heater-plus-broken",
      "heater-minus-broken",
      "signal-plus-broken",
      "signal-minus-broken") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(CONDUCTORS.get(r.nextInt(4)), 2 * a.ohm(CONDUCTORS.get(0)) + logUniform(r, 2, 30));
    }
  },
  COLD_JOINT_AT_A_HEATER_LEAD("cold-joint-heater") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JOINT_HEATER, 0.15 * a.ohm(Part.HEATER) + logUniform(r, 5, 200));
    }
  },
  COLD_JOINT_AT_THE_LOOP("cold-joint-signal", "cold-joint-signal-since") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.JOINT_SIGNAL, 0.6 * a.ohm(Part.LOOP_ALONE) + logUniform(r, 5, 200));
    }
  },
  CONDUCTORS_EXCHANGED("conductors-exchanged") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      List<String> marks = List.of("heater-plus", "heater-minus", "signal-plus", "signal-minus");
      int one = r.nextInt(4);
      a.exchange(marks.get(one), marks.get((one + 1 + r.nextInt(3)) % 4));
    }
  },
  TWO_CONDUCTORS_BROKEN("two-conductors-broken") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      int one = r.nextInt(4);
      a.set(CONDUCTORS.get(one), OPEN).set(CONDUCTORS.get((one + 1 + r.nextInt(3)) % 4), OPEN);
    }
  },
  HEATER_PAIR_SHORTED("heater-pair-shorted") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.BETWEEN_HEATER_WIRES, logUniform(r, 0.01, 5e5));
    }
  },
  SIGNAL_PAIR_SHORTED("signal-pair-shorted") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.BETWEEN_SIGNAL_WIRES, logUniform(r, 0.01, 5e5));
    }
  },
  HEATER_WIRE_ON_SIGNAL_WIRE("heater-on-signal") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      Part between =
          List.of(
                  Part.HEATER_PLUS_TO_SIGNAL_PLUS,
                  Part.HEATER_PLUS_TO_SIGNAL_MINUS,
                  Part.HEATER_MINUS_TO_SIGNAL_PLUS,
                  Part.HEATER_MINUS_TO_SIGNAL_MINUS)
              .get(r.nextInt(4));
      a.set(between, logUniform(r, 0.01, 5e5));
    }
  },
  CABLE_DAMP("cable-damp") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.TO_SHIELD, logUniform(r, 2e6, 4e6));
    }

    @Override
    boolean needsMegohms() {
      return true;
    }
  },
  SUPPLY_SAGS("supply-sags") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      double left = 0.35 + 0.5 * r.nextDouble();
      a.set(Part.SUPPLY_INSIDE, a.ohm(Part.HEATER) * (1 / left - 1));
    }
  },
  /** Right with nothing connected; then the fuse goes, or a terminal lets go. */
  SUPPLY_DIES_UNDER_LOAD("supply-dead-at-balls") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.set(Part.SUPPLY_INSIDE, logUniform(r, 1e5, 1e9));
    }
  },
  SUPPLY_LOW("supply-open-low") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.supply(a.supply_V() * (0.3 + 0.55 * r.nextDouble()));
    }
  },
  SUPPLY_TOO_HIGH("supply-open-high") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.supply(a.supply_V() * (1.15 + r.nextDouble()));
    }
  },
  SUPPLY_DEAD("supply-open-dead") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.supply(0.05 * r.nextDouble());
    }
  },
  SUPPLY_REVERSED("supply-open-reversed") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.supply(-a.supply_V());
    }
  },
  SIGNAL_LEADS_EXCHANGED("leads-exchanged") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.sense(-a.senseShare());
    }
  },
  THERMOCOUPLE_LEGS_EXCHANGED("legs-exchanged") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      // the middle wire is of the other alloy: the same loop, measured the other way round
      double legs = a.ohm(Part.LEG_1) + a.ohm(Part.LEG_2);
      double middle = a.ohm(Part.MIDDLE);
      a.set(Part.MIDDLE, legs).set(Part.LEG_1, middle / 2).set(Part.LEG_2, middle / 2);
      a.sense(-a.senseShare());
    }
  },
  JUNCTION_NOT_IN_THE_BALL("no-signal") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.sense(0.08 * r.nextDouble());
    }
  },
  JUNCTION_IN_POOR_CONTACT("weak-signal") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.sense(0.12 + 0.45 * r.nextDouble());
    }
  },
  GAIN_ON_RECORD_TOO_LOW("signal-too-large") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.sense((1.5 + 8 * r.nextDouble()) * a.senseShare());
    }
  },
  GAIN_ON_RECORD_TWICE_TOO_HIGH("weak-signal") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.sense(a.senseShare() / (1.8 + 1.2 * r.nextDouble()));
    }
  },
  HAND_ACROSS_THE_HEATER("heater-coats-damp", "heater-leaks-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      double person = logUniform(r, 1e5, 1.5e6);
      a.set(Part.LEAD_A_TO_BALL, 2 * person).set(Part.LEAD_B_TO_BALL, 2 * person);
    }
  },
  FLUX_FILM_ON_A_JUNCTION("loop-coats-damp", "junctions-leak-soft") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      Part where = r.nextBoolean() ? Part.JUNCTION_1_TO_BALL : Part.JUNCTION_2_TO_BALL;
      a.set(where, logUniform(r, 1e5, 1.5e7));
    }

    @Override
    boolean needsMegohms() {
      return true;
    }
  },
  /** Thicker wire or one of another alloy, from the reel on. */
  OTHER_WIRE("wrong-wire") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      double share = logUniform(r, 0.1, 0.45);
      a.times(Part.LOOP_ALONE, share).times(Part.LEG_1, share);
      a.times(Part.MIDDLE, share).times(Part.LEG_2, share);
    }
  },
  METER_FUSE_BLOWN("meter-fuse-blown") {
    @Override
    void apply(Assembly a, RandomGenerator r) {
      a.blowMeterFuse();
    }
  };

  private static final List<Part> CONDUCTORS =
      List.of(
          Part.CONDUCTOR_HEATER_PLUS,
          Part.CONDUCTOR_HEATER_MINUS,
          Part.CONDUCTOR_SIGNAL_PLUS,
          Part.CONDUCTOR_SIGNAL_MINUS);

  private final String remedies;

  Fault(String... remedies) {
    this.remedies = String.join(" ", remedies);
  }

  abstract void apply(Assembly a, RandomGenerator r);

  /** Remedies that name it rightly. */
  List<String> remedies() {
    return List.of(remedies.split(" ", -1));
  }

  /** Whether it hides from a meter that ends below 20 MΩ: over range is all that it shows. */
  boolean needsMegohms() {
    return false;
  }

  /** A hole in a coat: from bare metal to 0.8 MΩ. */
  private static double wound(RandomGenerator r) {
    return logUniform(r, 0.1, 8e5);
  }

  /** A coat that is not dry: well between 1 and 20 MΩ. */
  private static double damp(RandomGenerator r) {
    return logUniform(r, 1.3e6, 1.6e7);
  }
}
