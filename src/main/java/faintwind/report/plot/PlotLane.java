package faintwind.report.plot;

import java.util.List;

/**
 * One lane of stretches under a record, such as the rows that carry one flag.
 *
 * @param name at its left
 * @param texture how a stretch is drawn, so that lanes differ without colour
 * @param stretches where it applies
 * @param note a few words beside the first stretch; empty for none
 */
public record PlotLane(String name, Texture texture, List<Stretch> stretches, String note) {
  public PlotLane {
    stretches = List.copyOf(stretches);
  }

  /** What lies between two numbers. */
  public PlotLane between(double from, double to) {
    return new PlotLane(
        name,
        texture,
        stretches.stream()
            .filter(s -> s.to() >= from && s.from() <= to)
            .map(s -> new Stretch(Math.max(from, s.from()), Math.min(to, s.to())))
            .toList(),
        note);
  }

  /**
   * From one x to another.
   *
   * @param from lower end
   * @param to upper end
   */
  public record Stretch(double from, double to) {}

  /** How a stretch looks. */
  public enum Texture {
    /** A whole length. */
    SOLID,
    /** A wave. */
    WAVE,
    /** Two posts, nothing between. */
    POSTS,
    /** A line with one kink. */
    KINK,
    /** Slanted strokes. */
    SLANTS,
    /** An outlined length. */
    HOLLOW
  }
}
