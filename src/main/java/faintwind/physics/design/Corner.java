package faintwind.physics.design;

import faintwind.physics.Interval;
import java.util.Set;

/**
 * One way that a design may turn out: every part at its nominal but for some at an edge of their
 * tolerance. Going through those of one part each shows which tolerance matters.
 *
 * @param parts the parts at an edge; empty where all are nominal
 * @param edge which edge
 */
public record Corner(Set<Part> parts, Edge edge) {

  public static final Corner NOMINAL = new Corner(Set.of(), Edge.LOW);

  public Corner {
    parts = Set.copyOf(parts);
  }

  static Corner of(Part part, Edge edge) {
    return new Corner(Set.of(part), edge);
  }

  /** What has a tolerance; the words are under {@code part.} */
  public enum Part {
    SUPPLY,
    RESISTOR,
    TEMPCO,
    CABLE,
    DIAMETER,
    SPECIFIC_HEAT,
    EMISSIVITY,
    CONVECTION,
    THERMOCOUPLE,
    MIXING,
    WIRE,
    ROOM
  }

  /** Which end of a tolerance. */
  public enum Edge {
    LOW,
    HIGH
  }

  /** The value that a part has here. */
  double of(Part which, Interval value) {
    if (!parts.contains(which)) {
      return value.nominal();
    }
    return edge == Edge.LOW ? value.low() : value.high();
  }
}
