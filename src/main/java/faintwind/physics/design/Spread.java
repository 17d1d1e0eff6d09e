package faintwind.physics.design;

import faintwind.physics.HeatBalance;
import faintwind.physics.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A design at its nominal and at every corner. The band of an outcome is the root of the sum of
 * squares of what each part moves it by, up and down apart (parts of different makers vary
 * independently: JCGM 100:2008, 5.1.2 with the edges in place of standard uncertainties).
 */
public final class Spread {
  private final DesignAtCorner nominal;
  private final List<Pair> pairs;

  /** All corners of a design. */
  public Spread(Design design) {
    this(design, List.of(Corner.Part.values()));
  }

  /** The corners of some parts alone. */
  public Spread(Design design, List<Corner.Part> parts) {
    HeatBalance air = DesignAtCorner.air(design);
    nominal = new DesignAtCorner(design, Corner.NOMINAL, air);
    List<Pair> all = new ArrayList<>();
    for (Corner.Part part : parts) {
      all.add(
          new Pair(
              part,
              new DesignAtCorner(design, Corner.of(part, Corner.Edge.LOW), air),
              new DesignAtCorner(design, Corner.of(part, Corner.Edge.HIGH), air)));
    }
    pairs = List.copyOf(all);
  }

  private record Pair(Corner.Part part, DesignAtCorner low, DesignAtCorner high) {}

  /**
   * What one part's tolerance does to an outcome.
   *
   * @param part the part
   * @param down by how much it can lower it, 0 or more
   * @param up by how much it can raise it, 0 or more
   */
  public record Line(Corner.Part part, double down, double up) {
    double most() {
      return Math.max(down, up);
    }
  }

  public DesignAtCorner nominal() {
    return nominal;
  }

  /** An outcome with its band. */
  public Interval of(ToDoubleFunction<DesignAtCorner> outcome) {
    double value = outcome.applyAsDouble(nominal);
    double down = 0;
    double up = 0;
    for (Line line : budget(outcome)) {
      down += line.down() * line.down();
      up += line.up() * line.up();
    }
    return new Interval(value - Math.sqrt(down), value, value + Math.sqrt(up));
  }

  /** What each part does to an outcome, the largest first. */
  public List<Line> budget(ToDoubleFunction<DesignAtCorner> outcome) {
    double value = outcome.applyAsDouble(nominal);
    List<Line> lines = new ArrayList<>();
    for (Pair pair : pairs) {
      double a = outcome.applyAsDouble(pair.low()) - value;
      double b = outcome.applyAsDouble(pair.high()) - value;
      lines.add(new Line(pair.part(), Math.max(0, -Math.min(a, b)), Math.max(0, Math.max(a, b))));
    }
    lines.sort(Comparator.comparingDouble(Line::most).reversed());
    return lines;
  }
}
