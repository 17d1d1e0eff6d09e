package faintwind.guide.checklist;

import java.util.Locale;
import java.util.Optional;

/**
 * What can be true of the things on the bench: a closed list. A step says in {@code leaves} what it
 * makes true, or no longer true, and in {@code asks} what it cannot do without.
 */
public enum BenchFact {
  /** Both balls have their bore. */
  DRILLED,
  /** Nothing sits in a bore: a ball can still go into a bath or under a drill. */
  BORES_EMPTY,
  /** No fat on the balls: varnish and epoxy hold. */
  CLEAN,
  /** Each ball has bare metal that a tip can touch: all of it, or a spot left free of paint. */
  BALL_SPOT_BARE,
  /** The meter has shown what a known resistor is. */
  METER_PROVEN,
  /** The resistor's own legs can be touched. */
  LEGS_BARE,
  /** The thin leads are joined to the legs. */
  LEADS_JOINED,
  /** The free ends of the heater's leads can be touched. */
  LEAD_ENDS_BARE,
  /** Both junctions are made. */
  LOOP_MADE,
  /** The two free ends of the loop can be touched. */
  LOOP_ENDS_BARE,
  HEATER_COATED,
  JUNCTIONS_COATED,
  HEATER_IN_BALL,
  JUNCTIONS_IN_BALLS,
  MOUNTED,
  /** The cable is cut, marked and stripped. */
  CABLE_MADE,
  /** The ends of the cable that go to the logger and the supply can be touched. */
  CABLE_NEAR_BARE,
  /** The ends of the cable that go to the balls can be touched. */
  CABLE_FAR_BARE,
  /** Pair and cable are one. */
  CABLE_JOINED,
  /** The two joints of the heater can be touched. */
  HEATER_JOINTS_BARE,
  /** The two joints of the thermocouple can be touched. */
  SIGNAL_JOINTS_BARE,
  FUSE_FITTED,
  /** The fused supply is on the cable; its plus can be opened. */
  SUPPLY_ON_CABLE,
  LOGGER_ON_CABLE,
  POWER_ON,
  ARM_STANDS,
  PAIR_ON_ARM,
  ARM_BALANCED;

  /** The word in data files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The fact of that word. */
  public static Optional<BenchFact> ofWord(String word) {
    for (BenchFact fact : values()) {
      if (fact.word().equals(word)) {
        return Optional.of(fact);
      }
    }
    return Optional.empty();
  }
}
