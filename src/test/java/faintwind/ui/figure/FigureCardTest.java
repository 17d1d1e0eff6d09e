package faintwind.ui.figure;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The table of a plot says what its axis says. */
class FigureCardTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  private static List<List<String>> rows(String name, PlotAxis.Scale scale, double... at) {
    PlotLine line = PlotLine.of("", PlotPoints.of(at, new double[] {0.1, 0.2}), PlotLook.series(0));
    PlotPanel panel =
        PlotPanel.of(
            "Air speed, m/s",
            PlotAxis.of(name, scale),
            PlotAxis.linear(""),
            PlotContent.lines(List.of(line)));
    return FigureCard.table(new PlotFigure("", "", List.of(panel)), WORDS).rows();
  }

  @Test
  void aTimeOfDayIsNoNumberOfSeconds() {
    assertThat(rows("time of day", PlotAxis.Scale.CLOCK, 44_100, 88_210))
        .extracting(row -> row.get(1))
        .containsExactly("12:15:00", "00:30:10");
  }

  @Test
  void minutesAreMinutes() {
    assertThat(rows("minutes", PlotAxis.Scale.MINUTES, 30, 600))
        .extracting(row -> row.get(1))
        .containsExactly("0.5", "10");
  }
}
