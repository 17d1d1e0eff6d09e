package faintwind.report.paint;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.report.paint.PlotCursor.Move;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlotCursorTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  private static PlotFigure figure() {
    PlotLine curve =
        PlotLine.of(
            "",
            PlotPoints.withBand(
                new double[] {0, 1, 2},
                new double[] {2, 4, 6},
                new double[] {1, 3, 5},
                new double[] {3, 5, 7}),
            PlotLook.series(1));
    PlotLine runs =
        PlotLine.of(
            "run",
            PlotPoints.of(new double[] {1.5, 0.5}, new double[] {5.1, 2.9}),
            PlotLook.markers(PlotMarker.RING, PlotToken.INK));
    PlotPanel panel =
        PlotPanel.of(
            "Loss",
            PlotAxis.fromZero("air speed, m/s"),
            PlotAxis.fromZero("G/C"),
            PlotContent.lines(List.of(curve, runs)));
    return new PlotFigure("Loss", "", List.of(panel));
  }

  private static PlotCursor start() {
    return PlotCursor.on(figure().panels()).orElseThrow();
  }

  @Test
  void readsPlaceValueAndBandInWords() {
    assertThat(start().moved(Move.ON).words(WORDS))
        .isEqualTo("Loss: air speed, m/s 1.00: 4.00, 95 % sure from 3.00 to 5.00");
  }

  @Test
  void staysAtTheEnds() {
    assertThat(start().moved(Move.BACK).x()).isZero();
    assertThat(start().moved(Move.LAST).moved(Move.ON).x()).isEqualTo(2);
  }

  @Test
  void anotherLineIsReadNearTheSamePlaceAndInOrder() {
    PlotCursor onRuns = start().moved(Move.LAST).moved(Move.LINE_AFTER);
    assertThat(onRuns.words(WORDS)).isEqualTo("run: air speed, m/s 1.50: 5.10");
    assertThat(onRuns.moved(Move.BACK).x()).isEqualTo(0.5);
    assertThat(onRuns.moved(Move.LINE_BEFORE).x()).isEqualTo(1);
  }

  @Test
  void sixtyMovesCrossADenseRecord() {
    double[] t = IntStream.range(0, 9000).mapToDouble(i -> i).toArray();
    PlotFigure dense =
        new PlotFigure(
            "Signal",
            "",
            List.of(
                PlotPanel.of(
                    "Signal",
                    PlotAxis.of("minutes", PlotAxis.Scale.MINUTES),
                    PlotAxis.linear("K"),
                    PlotContent.lines(
                        List.of(PlotLine.of("", PlotPoints.of(t, t), PlotLook.series(1)))))));
    PlotCursor cursor = PlotCursor.on(dense.panels()).orElseThrow();
    for (int i = 0; i < 60; i++) {
      cursor = cursor.moved(Move.ON);
    }
    assertThat(cursor.x()).isEqualTo(8999);
    assertThat(cursor.words(WORDS)).isEqualTo("Signal: minutes 150: 8999");
  }

  @Test
  void figureOfLanesOnlyHasNothingToRead() {
    PlotFigure lanes =
        new PlotFigure(
            "Flags",
            "",
            List.of(
                PlotPanel.of(
                    "", PlotAxis.linear("s"), PlotAxis.linear(""), PlotContent.lanes(List.of()))));
    assertThat(PlotCursor.on(lanes.panels())).isEmpty();
  }
}
