package faintwind.guide.turntable;

import java.util.List;
import java.util.Locale;

/**
 * Something that is wrong while it happens.
 *
 * @param kind what
 * @param amounts numbers that its words name, in the order that {@link Kind} states
 */
public record Trouble(Kind kind, List<Double> amounts) {

  /** What may be wrong. */
  public enum Kind {
    /** Falls while it should rise, or the other way round: change seen, change expected. */
    WRONG_WAY,
    /** Nothing happens: change seen, change expected. */
    NO_REACTION,
    /** The signal stands at one value: the value. */
    SATURATED,
    /** A fast, regular ripple: its standard deviation, its period as the rows show it in s. */
    MAINS,
    /** The signal sinks while the arm stands: by how much, %. */
    DRAUGHT,
    /** The arm is turned unevenly: scatter of single turns, drift over the spin, both %. */
    UNSTEADY_ARM,
    /** The heater's supply is not what it was: then, now, V. */
    SUPPLY_CHANGED,
    /** The warm-up does not settle: change in ten minutes, %. */
    NEVER_FLAT;

    /** Key of its words. */
    public String key() {
      return "live-guide.trouble." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public Trouble {
    amounts = List.copyOf(amounts);
  }

  static Trouble of(Kind kind, Double... amounts) {
    return new Trouble(kind, List.of(amounts));
  }
}
