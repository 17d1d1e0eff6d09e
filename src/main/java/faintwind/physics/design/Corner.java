package faintwind.physics.design;

import faintwind.physics.Interval;

/**
 * One way that a design may turn out: every part at its nominal but for one at an edge of its
 * tolerance. Going through all of them shows which tolerance matters.
 *
 * @param part the part at an edge; {@link Part#NONE} where all are nominal
 * @param edge which edge
 */
public record Corner(Part part, Edge edge) {

  public static final Corner NOMINAL = new Corner(Part.NONE, Edge.LOW);

  /** What has a tolerance; the words are under {@code part.} */
  public enum Part {
    NONE,
    SUPPLY,
    RESISTOR,
    TEMPCO,
    CABLE,
    DIAMETER,
    SPECIFIC_HEAT,
    EMISSIVITY,
    CONVECTION,
    THERMOCOUPLE
  }

  /** Which end of a tolerance. */
  public enum Edge {
    LOW,
    HIGH
  }

  /** The value that a part has here. */
  double of(Part which, Interval value) {
    if (which != part) {
      return value.nominal();
    }
    return edge == Edge.LOW ? value.low() : value.high();
  }
}
