package faintwind.report.log;

import faintwind.calibration.bench.ControlChart;
import faintwind.guide.ReadingTrend;
import faintwind.guide.checklist.Reading;
import faintwind.message.AmountText;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Standing;
import faintwind.report.figure.ControlChartPlots;
import faintwind.report.page.Chapter;
import faintwind.report.page.LogWords;
import java.util.ArrayList;
import java.util.List;

/** A reading that was taken again and again, as a control chart: plot and figures. */
final class BuildLogChart {
  private static final int DIGITS = 4;

  private final LogWords words;

  BuildLogChart(LogWords words) {
    this.words = words;
  }

  /** The chart below the readings. */
  void write(Chapter to, Reading reading, ReadingTrend trend) {
    List<Standing<ReadingEntered>> lines = trend.lines();
    ControlChart chart = trend.chart();
    to.say(
        chart.outside().isPresent() ? "build-log.chart.outside" : "build-log.chart",
        reading.label(),
        said(chart.mean(), reading),
        said(chart.low(), reading),
        said(chart.high(), reading),
        lines.size());
    to.plot(new ControlChartPlots(words.messages()).figure(chart, reading.label(), reading.unit()));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double value = chart.values().get(i);
      boolean inside = value >= chart.low() && value <= chart.high();
      rows.add(
          List.of(
              words.whoWhen(lines.get(i).who(), lines.get(i).at()),
              said(value, reading),
              inside ? "" : words.text("build-log.chart.mark")));
    }
    to.table(List.of("build-log.entered", "build-log.typed", "build-log.verdict"), rows);
  }

  private String said(double value, Reading reading) {
    return AmountText.quantity(value, reading.unit(), DIGITS, words.messages().locale());
  }
}
