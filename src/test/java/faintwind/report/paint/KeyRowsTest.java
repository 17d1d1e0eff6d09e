package faintwind.report.paint;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class KeyRowsTest {
  private static final PictureStyle STYLE = PictureStyle.paper(Locale.ENGLISH);
  private static final List<PlotLine> KEYS =
      List.of(
          key("still air", PlotMarker.SQUARE),
          key("clockwise", PlotMarker.TRIANGLE_DOWN),
          key("counter-clockwise", PlotMarker.TRIANGLE_UP));

  private static PlotLine key(String name, PlotMarker marker) {
    return new PlotLine(name, List.of(), PlotLook.markers(marker, PlotToken.INK));
  }

  private static KeyRows within(double width) {
    BufferedImage image = new BufferedImage(400, 100, BufferedImage.TYPE_INT_RGB);
    return new KeyRows(new PlotPen(image.createGraphics(), STYLE), KEYS, width);
  }

  @Test
  void whatDoesNotFitBesideOneAnotherGoesToAFurtherRow() {
    KeyRows one = within(400);
    assertThat(one.names()).containsExactly(List.of("still air", "clockwise", "counter-clockwise"));
    KeyRows two = within(260);
    assertThat(two.names())
        .containsExactly(List.of("still air", "clockwise"), List.of("counter-clockwise"));
    assertThat(two.height()).isEqualTo(2 * one.height());
    assertThat(within(50).names()).hasSize(3);
  }
}
