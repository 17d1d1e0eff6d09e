package faintwind.report.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands inside one panel, drawn in this order: stripes and spans, rules, bands, lines, notes;
 * lanes under them.
 *
 * @param stripes ranges of y
 * @param spans ranges of x
 * @param lines the series
 * @param notes words at points
 * @param lanes lanes of stretches; a panel has either lines or lanes
 */
public record PlotContent(
    List<PlotStripe> stripes,
    List<PlotSpan> spans,
    List<PlotLine> lines,
    List<PlotNote> notes,
    List<PlotLane> lanes) {

  public PlotContent {
    stripes = List.copyOf(stripes);
    spans = List.copyOf(spans);
    lines = List.copyOf(lines);
    notes = List.copyOf(notes);
    lanes = List.copyOf(lanes);
    if (!lanes.isEmpty() && !lines.isEmpty()) {
      throw new IllegalArgumentException("a panel has lines or lanes, not both");
    }
  }

  /** Lines only. */
  public static PlotContent lines(List<PlotLine> lines) {
    return new PlotContent(List.of(), List.of(), lines, List.of(), List.of());
  }

  /** Lanes only. */
  public static PlotContent lanes(List<PlotLane> lanes) {
    return new PlotContent(List.of(), List.of(), List.of(), List.of(), lanes);
  }

  /** The same with one more span. */
  public PlotContent with(PlotSpan span) {
    return new PlotContent(stripes, added(spans, span), lines, notes, lanes);
  }

  /** The same with one more note. */
  public PlotContent with(PlotNote note) {
    return new PlotContent(stripes, spans, lines, added(notes, note), lanes);
  }

  /** The same with one more stripe. */
  public PlotContent with(PlotStripe stripe) {
    return new PlotContent(added(stripes, stripe), spans, lines, notes, lanes);
  }

  private static <T> List<T> added(List<T> list, T one) {
    List<T> all = new ArrayList<>(list);
    all.add(one);
    return all;
  }
}
