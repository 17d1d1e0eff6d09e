package faintwind.job.air;

import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.field.FieldSummary.AboveLimit;
import faintwind.calibration.field.FieldSummary.Gust;
import faintwind.calibration.field.FieldSummary.Hour;
import faintwind.calibration.field.FieldSummary.Percentile;
import faintwind.message.Numerals;

/**
 * The figures of a log as a table: {@code figure,at,value,u95,least,most,unit}. Shares have an
 * interval in place of an uncertainty; of an hour or a gust {@code most} is its highest speed or
 * its end.
 */
public final class SummaryTable {
  private static final int DIGITS = 6;

  private final StringBuilder text = new StringBuilder("figure,at,value,u95,least,most,unit\n");

  private SummaryTable() {}

  /** The table as text. */
  public static String of(Summary summary) {
    SummaryTable table = new SummaryTable();
    table.fill(summary);
    return table.text.toString();
  }

  private void fill(Summary summary) {
    FieldSummary found = summary.found();
    row("mean", "", found.mean().speed_m_s(), number(found.mean().u95_m_s()), "m/s");
    row("time", "", found.cover().used_s() / Hour.LENGTH_S, "", "h");
    row("left-out", "", found.cover().leftOut_s() / Hour.LENGTH_S, "", "h");
    row("faint", "", found.cover().faintShare(), "", "share");
    row("beyond", "", found.cover().beyondShare(), "", "share");
    row("wind-run", "", found.run_m(), number(found.u95Run_m()), "m");
    AboveLimit calm = found.calm();
    below("calm", calm);
    for (Percentile p : found.percentiles()) {
      row("percentile", number(p.percent()), p.speed_m_s(), number(p.u95_m_s()), "m/s");
    }
    for (AboveLimit limit : found.limits()) {
      String least = number(limit.least());
      String most = number(limit.most());
      line("above", number(limit.limit_m_s()), number(limit.above()), "", least, most, "share");
      below("below", limit);
    }
    for (Hour hour : found.hours()) {
      String most = number(hour.highest_m_s());
      hour.mean()
          .ifPresent(
              mean ->
                  line(
                      "hour",
                      summary.at(hour.from_s()),
                      number(mean.speed_m_s()),
                      number(mean.u95_m_s()),
                      "",
                      most,
                      "m/s"));
    }
    for (Gust gust : found.gusts()) {
      row("gust", summary.at(gust.peak_s()), gust.peak_m_s(), number(gust.u95_m_s()), "m/s");
    }
  }

  private void below(String figure, AboveLimit limit) {
    String least = number(1 - limit.most());
    String most = number(1 - limit.least());
    line(figure, number(limit.limit_m_s()), number(limit.below()), "", least, most, "share");
  }

  private void row(String figure, String at, double value, String u95, String unit) {
    line(figure, at, number(value), u95, "", "", unit);
  }

  private void line(String... cells) {
    text.append(String.join(",", cells)).append('\n');
  }

  private static String number(double value) {
    return Numerals.digits(value, DIGITS);
  }
}
