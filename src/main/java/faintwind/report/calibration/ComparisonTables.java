package faintwind.report.calibration;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.Comparison;
import faintwind.calibration.compare.Comparison.AtSpeed;
import faintwind.calibration.compare.Comparison.Cause;
import faintwind.calibration.compare.Comparison.Change;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.util.List;

/** A comparison of two calibrations as a sentence and rows of texts, for page, window and line. */
public record ComparisonTables(
    Calibration earlier, Calibration later, Comparison comparison, Messages messages) {
  private static final int MOST_CHANGES = 6;

  /** Whether they agree, and where they lie farthest apart. */
  public String verdict() {
    AtSpeed worst = comparison.worst();
    String key = comparison.agrees() ? "compare.agree" : "compare.differ";
    return messages.text(
        key,
        signed(100 * worst.difference_m_s() / worst.speed_m_s(), 1),
        Numerals.compact(worst.speed_m_s(), 2),
        signed(worst.en().value(), 2));
  }

  /** Which two they are. */
  public String which() {
    return messages.text("compare.which", when(earlier), when(later));
  }

  private String when(Calibration calibration) {
    return DateText.zoned(messages, calibration.origin().validFrom());
  }

  /** What may have changed, likeliest first; empty where they agree. */
  public List<String> causes() {
    return comparison.causes().stream().filter(c -> c.weight() > 0.02).map(this::cause).toList();
  }

  private String cause(Cause cause) {
    return messages.text(
        "compare.cause",
        messages.text(cause.kind().key()),
        Numerals.compact(100 * cause.weight(), 2),
        Numerals.signed(100 * cause.by(), 1));
  }

  /** Keys of the columns of {@link #speeds()}. */
  public static List<String> speedHeads() {
    return List.of(
        "compare.speed", "compare.later", "compare.difference", "compare.u95", "compare.en");
  }

  /** One row a speed. */
  public List<List<String>> speeds() {
    return comparison.speeds().stream()
        .map(
            s ->
                List.of(
                    Numerals.compact(s.speed_m_s(), 3),
                    Numerals.compact(s.later_m_s(), 3),
                    signed(100 * s.difference_m_s() / s.speed_m_s(), 1),
                    Numerals.compact(100 * s.u95_m_s() / s.speed_m_s(), 2),
                    signed(s.en().value(), 2)))
        .toList();
  }

  /** Keys of the columns of {@link #changes()}. */
  public static List<String> changeHeads() {
    return List.of("compare.parameter", "compare.before", "compare.after", "compare.en");
  }

  /** The parameters that changed most. */
  public List<List<String>> changes() {
    return comparison.changes().stream().limit(MOST_CHANGES).map(ComparisonTables::row).toList();
  }

  private static List<String> row(Change change) {
    String unit = change.unit().equals("1") ? "" : " " + change.unit();
    return List.of(
        change.name().replace('_', ' '),
        Numerals.compact(change.earlier(), 4) + unit,
        Numerals.compact(change.later(), 4) + unit,
        signed(change.en().value(), 2));
  }

  /** A nothing has no sign. */
  private static String signed(double value, int places) {
    boolean nothing = Math.abs(value) < 0.5 * Math.pow(10, -places);
    return nothing ? Numerals.places(0, places) : Numerals.signed(value, places);
  }
}
