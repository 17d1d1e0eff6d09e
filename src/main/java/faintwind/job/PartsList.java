package faintwind.job;

import faintwind.files.PartsFile;
import faintwind.message.Messages;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignSheet;
import faintwind.physics.design.Interval;
import faintwind.physics.design.QuantityId;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What has to be bought for a design, for a number of instruments with spares, in general terms.
 * The spares are common practice, no source: one ball and one resistor more for each instrument, a
 * quarter more wire.
 */
public final class PartsList {
  private static final double MORE_WIRE = 1.25;

  private final Design design;
  private final DesignSheet sheet;
  private final Messages words;

  /** A list for a design and what follows from it. */
  public PartsList(Design design, DesignSheet sheet, Messages words) {
    this.design = design;
    this.sheet = sheet;
    this.words = words;
  }

  /**
   * Header and rows: part, quantity, unit, what exactly, what to look for.
   *
   * @param instruments at least 1
   */
  public List<List<String>> rows(int instruments) {
    if (instruments < 1) {
      throw new IllegalArgumentException("instruments = " + instruments + ", at least 1");
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            text("parts.head.part"),
            text("parts.head.quantity"),
            text("parts.head.unit"),
            text("parts.head.what"),
            text("parts.head.look-for")));
    ballAndHeater(rows, instruments);
    wires(rows, instruments);
    rows.add(row("coat", instruments, "piece", words.text("parts.coat.what")));
    rows.add(row("epoxy", 1, "piece", words.text("parts.epoxy.what")));
    design
        .supply()
        .battery()
        .ifPresent(b -> rows.add(row("battery", instruments, "piece", b.label().name())));
    rows.add(row("supply", instruments, "piece", supply()));
    rows.add(row("logger", instruments, "piece", design.sense().logger().label().name()));
    return rows;
  }

  private void ballAndHeater(List<List<String>> rows, int instruments) {
    Interval d = design.ball().diameter_m().times(1e3);
    rows.add(
        row(
            "ball",
            3 * instruments,
            "piece",
            words.text(
                "parts.ball.what",
                design.ball().metal().label().name(),
                figures(d.nominal()),
                figures(d.half()),
                design.ball().coat().label().name())));
    Interval r = design.heater().resistance_ohm();
    rows.add(
        row(
            "resistor",
            2 * instruments,
            "piece",
            words.text(
                "parts.resistor.what",
                figures(r.nominal()),
                figures(100 * r.half() / r.nominal()),
                design.heater().style().label().name(),
                needed(QuantityId.BORE))));
  }

  private void wires(List<List<String>> rows, int instruments) {
    double lead = 2 * design.heater().leadLength_m() * MORE_WIRE * instruments;
    rows.add(row("lead", lead, "metre", design.heater().leads().label().name()));
    double loop = design.sense().loopLength_m() * MORE_WIRE * instruments;
    rows.add(
        row(
            "thermocouple",
            loop,
            "metre",
            words.text(
                "parts.thermocouple.what",
                design.sense().type().label().name(),
                String.valueOf(design.sense().gauge().awg()))));
    design
        .supply()
        .cable()
        .ifPresent(
            cable ->
                rows.add(
                    row(
                        "cable",
                        2 * cable.length_m() * MORE_WIRE * instruments,
                        "metre",
                        cable.conductor().label().name())));
  }

  private String supply() {
    Interval v = design.supply().voltage_V();
    return words.text(
        "parts.supply.what",
        figures(v.nominal()),
        figures(100 * v.half() / v.nominal()),
        needed(QuantityId.CURRENT_HIGH));
  }

  private String needed(QuantityId id) {
    return sheet.quantity(id).map(q -> figures(q.value().nominal())).orElse("");
  }

  private List<String> row(String part, double quantity, String unit, String what) {
    return List.of(
        text("parts." + part),
        figures(quantity),
        text("parts.unit." + unit),
        what,
        text("parts." + part + ".look-for"));
  }

  private String text(String key) {
    return words.text(key);
  }

  private static String figures(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** Writes the list as CSV. */
  public void write(Path target, int instruments) throws IOException {
    PartsFile.write(target, rows(instruments));
  }
}
