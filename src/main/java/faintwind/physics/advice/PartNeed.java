package faintwind.physics.advice;

/**
 * How much of one part a number of instruments needs.
 *
 * @param kind what it is for
 * @param key names the exact part, such as {@code ball-copper-12.7mm}; prices go by it
 * @param needed what the instruments take up
 * @param spare what is worth having more
 */
public record PartNeed(Kind kind, String key, double needed, double spare) {

  /** What a part is for, in the order of a list; the words are under {@code parts.} */
  public enum Kind {
    BALL(Count.PIECES),
    PLATING(Count.PIECES),
    PAINT(Count.PIECES),
    DRILL(Count.PIECES),
    RESISTOR(Count.PIECES),
    LEAD(Count.METRES),
    THERMOCOUPLE(Count.METRES),
    VARNISH(Count.PIECES),
    EPOXY(Count.PIECES),
    SUPPLY(Count.PIECES),
    BATTERY(Count.PIECES),
    CABLE(Count.METRES),
    LOGGER(Count.PIECES),
    /** Shared by everybody who builds. */
    TOOL(Count.PIECES),
    /** Used up. */
    CONSUMABLE(Count.PIECES),
    /** The arm of the turntable and what it is built with, once. */
    ARM(Count.PIECES),
    /** Only where the balls are plated at home; a licensed plater has it. */
    HOME_PLATING(Count.PIECES);

    private final Count count;

    Kind(Count count) {
      this.count = count;
    }

    public Count count() {
      return count;
    }
  }

  /** How a part is counted. */
  public enum Count {
    PIECES,
    METRES
  }

  /** What to buy: whole pieces, or metres rounded up to a tenth. */
  public double buy() {
    double all = needed + spare;
    return kind.count() == Count.PIECES ? Math.ceil(all - 1e-9) : Math.ceil(10 * all - 1e-9) / 10;
  }
}
