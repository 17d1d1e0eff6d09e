package faintwind.job.field;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was converted, for standard error or a screen; never part of the converted log.
 *
 * @param log name of the log
 * @param calibration what it was converted by
 * @param settings averaging time of the speed and who chose it
 * @param rows rows in and out
 * @param usable rows without a flag
 * @param flagged rows by flag
 * @param range lowest and highest speed of the usable rows, where there are any
 */
public record ConversionSummary(
    String log,
    String calibration,
    SpeedSettings settings,
    long rows,
    long usable,
    Map<SpeedFlag, Long> flagged,
    Optional<Range> range) {
  public ConversionSummary {
    flagged = Map.copyOf(flagged);
  }

  /**
   * Speeds found.
   *
   * @param lowest_m_s lowest
   * @param mean_m_s mean over the rows
   * @param highest_m_s highest
   */
  public record Range(double lowest_m_s, double mean_m_s, double highest_m_s) {}

  /** The summary in words, a line each. */
  public List<String> lines(Messages messages) {
    List<String> lines = new ArrayList<>();
    lines.add(
        messages.text("convert.summary.log", log, String.valueOf(rows), String.valueOf(usable)));
    lines.add(messages.text("convert.summary.calibration", calibration));
    lines.add(average(messages));
    range.ifPresent(
        r ->
            lines.add(
                messages.text(
                    "convert.summary.range",
                    Numerals.places(r.lowest_m_s(), 3),
                    Numerals.places(r.mean_m_s(), 3),
                    Numerals.places(r.highest_m_s(), 3))));
    for (SpeedFlag flag : SpeedFlag.values()) {
      Long count = flagged.get(flag);
      if (count != null && count > 0) {
        lines.add(
            messages.text(
                "convert.summary.flag",
                flag.word(),
                String.valueOf(count),
                messages.text("convert.flag." + flag.word())));
      }
    }
    return lines;
  }

  private String average(Messages messages) {
    if (settings.average_s() <= 0) {
      return messages.text("convert.summary.no-average");
    }
    String id = settings.chosen() ? "convert.summary.average" : "convert.summary.average-by-noise";
    return messages.text(id, shortened(settings.average_s()));
  }

  private static String shortened(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }
}
