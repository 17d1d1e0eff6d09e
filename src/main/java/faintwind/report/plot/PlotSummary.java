package faintwind.report.plot;

import faintwind.message.Messages;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says in words what the lines of a plot do, for those who do not see it. */
public final class PlotSummary {
  private PlotSummary() {}

  /** One sentence a line: where it starts, where it ends, its lowest and highest value. */
  public static String of(List<PlotPanel> panels, Messages messages) {
    return panels.stream().map(p -> panel(p, messages)).collect(Collectors.joining(" "));
  }

  private static String panel(PlotPanel panel, Messages messages) {
    String lines =
        panel.content().lines().stream()
            .filter(l -> !l.pieces().isEmpty())
            .map(l -> line(l, messages))
            .collect(Collectors.joining(" "));
    String lanes =
        panel.content().lanes().stream()
            .map(l -> messages.text("plot.summary.lane", l.name(), l.stretches().size()))
            .collect(Collectors.joining(" "));
    String body = lines.isEmpty() ? lanes : lines;
    return panel.title().isEmpty() ? body : panel.title() + ": " + body;
  }

  private static String line(PlotLine line, Messages messages) {
    PlotPoints first = line.pieces().get(0);
    PlotPoints last = line.pieces().get(line.pieces().size() - 1);
    double start = first.y(0);
    double end = last.y(last.size() - 1);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    int count = 0;
    for (PlotPoints piece : line.pieces()) {
      for (int i = 0; i < piece.size(); i++) {
        low = Math.min(low, piece.y(i));
        high = Math.max(high, piece.y(i));
      }
      count += piece.size();
    }
    Locale locale = messages.locale();
    String name = line.label().isEmpty() ? "" : line.label() + " ";
    if (!line.look().isLine()) {
      return messages.text(
          "plot.summary.points", name, count, number(low, locale), number(high, locale));
    }
    return messages.text(
        key(start, end, high - low),
        name,
        number(start, locale),
        number(end, locale),
        number(low, locale),
        number(high, locale));
  }

  private static String key(double start, double end, double span) {
    if (Math.abs(end - start) < 0.1 * span) {
      return "plot.summary.varies";
    }
    return end > start ? "plot.summary.rises" : "plot.summary.falls";
  }

  /** Three significant digits. */
  public static String number(double value, Locale locale) {
    if (value == 0) {
      return "0";
    }
    int digits = (int) Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
    return PlotTicks.number(value, Math.min(6, digits), false, locale);
  }
}
