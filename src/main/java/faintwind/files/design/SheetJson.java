package faintwind.files.design;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Messages;
import faintwind.physics.design.CurvePoint;
import faintwind.physics.design.Spread;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import java.util.Locale;

/**
 * Everything that follows from a design as JSON, {@code "format": "faintwind-size/1"}: each
 * quantity with its unit, band, verdict, reason, equation and source; the prediction against speed;
 * the budget of tolerances.
 */
public final class SheetJson {
  private SheetJson() {}

  /**
   * The text.
   *
   * @param name name of the design
   * @param sheet what follows from it
   * @param messages the words for names, reasons and sources
   */
  public static String text(String name, DesignSheet sheet, Messages messages) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "faintwind-size/1");
    root.put("name", name);
    root.put("stops", sheet.stops());
    ArrayNode quantities = root.putArray("quantities");
    sheet.quantities().forEach(q -> quantities.add(quantity(q, messages)));
    ArrayNode curve = root.putArray("curve");
    sheet.curve().forEach(p -> curve.add(point(p)));
    ArrayNode budget = root.putArray("delta_at_1_m_s_budget");
    for (Spread.Line line : sheet.budget()) {
      ObjectNode node = budget.addObject();
      node.put("part", messages.text("part." + line.part().name().toLowerCase(Locale.ROOT)));
      node.put("down_K", line.down());
      node.put("up_K", line.up());
    }
    return root.toPrettyString() + "\n";
  }

  private static ObjectNode quantity(Outcome q, Messages messages) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    String key = "quantity." + q.id().id();
    node.put("id", q.id().id());
    node.put("name", messages.text(key));
    node.put("unit", q.id().unit());
    node.put("value", q.value().nominal());
    node.put("low", q.value().low());
    node.put("high", q.value().high());
    node.put("verdict", q.verdict().name().toLowerCase(Locale.ROOT));
    q.reason().ifPresent(r -> node.put("reason", messages.sentence(r)));
    node.put("source", messages.text(key + ".why"));
    return node;
  }

  private static ObjectNode point(CurvePoint p) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("speed_m_s", p.speed_m_s());
    node.put("delta_K", p.delta_K().nominal());
    node.put("delta_low_K", p.delta_K().low());
    node.put("delta_high_K", p.delta_K().high());
    node.put("time_constant_s", p.timeConstant_s().nominal());
    node.put("signal_V", p.signal_V());
    node.put("resolution_m_s", p.resolution_m_s());
    node.put("in_range", p.inRange());
    return node;
  }
}
