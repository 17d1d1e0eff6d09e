package faintwind.job.field;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.files.JsonForm;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What was converted, for another program. */
public final class ConversionText {
  private ConversionText() {}

  private record Told(String format, List<Log> logs) {}

  private record Log(
      String log,
      String calibration,
      double average_s,
      Rows rows,
      Optional<ConversionSummary.Range> speeds) {}

  private record Rows(long all, long usable, Map<String, Long> flagged) {}

  /** As JSON. */
  public static String json(List<ConversionSummary> summaries) {
    return JsonForm.text(
        new Told("faintwind-converted/1", summaries.stream().map(ConversionText::told).toList()));
  }

  private static Log told(ConversionSummary summary) {
    Map<String, Long> flagged = new TreeMap<>();
    for (SpeedFlag flag : SpeedFlag.values()) {
      Long count = summary.flagged().get(flag);
      if (count != null) {
        flagged.put(flag.word(), count);
      }
    }
    return new Log(
        summary.log(),
        summary.calibration(),
        summary.settings().average_s(),
        new Rows(summary.rows(), summary.usable(), flagged),
        summary.range());
  }
}
