package faintwind.job.design;

import faintwind.files.design.SheetJson;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.design.CurvePoint;
import faintwind.physics.design.Spread;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A sized design as lines of text, or as JSON. */
public final class SheetText {
  private SheetText() {}

  /** JSON, {@code "format": "faintwind-size/1"}. */
  public static String json(Sized sized, Messages messages) {
    return SheetJson.text(sized.design().name(), sized.sheet(), messages);
  }

  /** Every quantity by group, the prediction against speed, and what delta depends on most. */
  public static List<String> lines(Sized sized, Messages messages) {
    List<String> lines = new ArrayList<>();
    lines.add(messages.text("size.title", sized.design().name()));
    for (OutcomeId.Group group : OutcomeId.Group.values()) {
      List<String> own =
          sized.sheet().quantities().stream()
              .filter(q -> q.id().group() == group)
              .map(q -> "  " + line(q, messages))
              .toList();
      if (!own.isEmpty()) {
        lines.add("");
        lines.add(messages.text("quantity-group." + group.name().toLowerCase(Locale.ROOT)));
        lines.addAll(own);
      }
    }
    lines.add("");
    lines.add(messages.text("size.curve"));
    lines.add("  " + messages.text("size.curve.head"));
    sized.sheet().curve().forEach(p -> lines.add(line(p, messages)));
    lines.add("");
    lines.add(messages.text("size.budget", budget(sized.sheet().budget(), messages)));
    return lines;
  }

  private static String line(Outcome q, Messages messages) {
    String name = messages.text("quantity." + q.id().id());
    Interval v = q.value();
    String text =
        v.low() == v.high()
            ? messages.text("size.exact", name, figures(v.nominal()), q.id().unit())
            : messages.text(
                "size.band",
                name,
                figures(v.nominal()),
                q.id().unit(),
                figures(v.low()),
                figures(v.high()));
    boolean usable = q.verdict() == DesignVerdict.PLAIN || q.verdict() == DesignVerdict.GOOD;
    if (usable && q.reason().isPresent()) {
      return messages.text("size.verdict", text.strip(), messages.text("design-verdict.outside"));
    }
    if (q.verdict() == DesignVerdict.PLAIN) {
      return text.strip();
    }
    String verdict = messages.text("design-verdict." + q.verdict().name().toLowerCase(Locale.ROOT));
    return messages.text("size.verdict", text.strip(), verdict);
  }

  private static String line(CurvePoint p, Messages messages) {
    String row =
        String.format(
            Locale.ROOT,
            "  %9.2f  %8.2f %7.2f %7.2f  %8.0f  %8.4f  %8.4f",
            p.speed_m_s(),
            p.delta_K().nominal(),
            p.delta_K().low(),
            p.delta_K().high(),
            p.timeConstant_s().nominal(),
            1e3 * p.signal_V(),
            p.resolution_m_s());
    return p.inRange() ? row : row + "  " + messages.text("size.curve.outside");
  }

  private static String budget(List<Spread.Line> budget, Messages messages) {
    return budget.stream()
        .limit(3)
        .map(
            b ->
                messages.text(
                    "size.budget.part",
                    messages.text("part." + b.part().name().toLowerCase(Locale.ROOT)),
                    figures(b.down()),
                    figures(b.up())))
        .collect(Collectors.joining(", "));
  }

  private static String figures(double value) {
    return Numerals.digits(value, 4);
  }
}
