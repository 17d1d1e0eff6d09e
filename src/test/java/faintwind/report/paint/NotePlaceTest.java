package faintwind.report.paint;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotDash;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotPoints;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NotePlaceTest {
  private static final PlotLine DIAGONAL =
      PlotLine.of(
          "",
          PlotPoints.of(new double[] {0, 1}, new double[] {0, 1}),
          new PlotLook(PlotToken.SERIES_2, PlotDash.LONG, PlotMarker.NONE, 2));

  /** Asked for right of the middle, under the line, as a note of four short lines. */
  private static Rectangle2D place(PlotBox box) {
    Rectangle2D wanted =
        new Rectangle2D.Double(
            box.x() + 0.4 * box.width(), box.bottom() - 0.28 * box.height(), 190, 68);
    return notePlace(box).of(wanted, List.of(DIAGONAL));
  }

  private static NotePlace notePlace(PlotBox box) {
    return new NotePlace(
        new PlotPlace(0, 1, box.x(), box.right(), false),
        new PlotPlace(0, 1, box.bottom(), box.y(), false),
        box);
  }

  @ParameterizedTest
  @ValueSource(doubles = {250, 290, 340, 420, 800})
  void wordsKeepOffTheLineAndInTheBox(double width) {
    PlotBox box = new PlotBox(40, 30, width, 330);
    Rectangle2D found = place(box);
    assertThat(found.intersectsLine(box.x(), box.bottom(), box.right(), box.y())).isFalse();
    assertThat(found.getMinX()).isGreaterThanOrEqualTo(box.x());
    assertThat(found.getMaxX()).isLessThanOrEqualTo(box.right());
    assertThat(found.getMinY()).isGreaterThanOrEqualTo(box.y());
    assertThat(found.getMaxY()).isLessThanOrEqualTo(box.bottom());
  }

  @Test
  void whereNothingIsFreeItStaysWhereItWasAskedFor() {
    PlotBox box = new PlotBox(0, 0, 200, 70);
    Rectangle2D wanted = new Rectangle2D.Double(5, 1, 190, 60);
    assertThat(notePlace(box).of(wanted, List.of(DIAGONAL))).isEqualTo(wanted);
  }
}
