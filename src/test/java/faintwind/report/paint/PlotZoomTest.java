package faintwind.report.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.message.Messages;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotRange;
import faintwind.report.plot.PlotSpan;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlotZoomTest {
  private static final PlotFigure FALLING = falling();

  private static PlotFigure falling() {
    double[] x = IntStream.rangeClosed(0, 1000).mapToDouble(i -> i).toArray();
    double[] y = IntStream.rangeClosed(0, 1000).mapToDouble(i -> 1000 - i).toArray();
    PlotContent content =
        PlotContent.lines(List.of(PlotLine.of("", PlotPoints.of(x, y), PlotLook.series(1))))
            .with(new PlotSpan(0, 100, "first", PlotToken.MARGIN))
            .with(new PlotSpan(400, 500, "middle", PlotToken.MARGIN));
    PlotPanel panel =
        PlotPanel.of(
            "signal",
            PlotAxis.of("minutes", PlotAxis.Scale.MINUTES),
            PlotAxis.linear("K"),
            content);
    return new PlotFigure("signal", "", List.of(panel));
  }

  private static PlotPanel seen(PlotZoom zoom) {
    return zoom.figure().panels().get(0);
  }

  @Test
  void closerRoundAPlaceKeepsThePlaceAndFitsTheHeight() {
    PlotZoom closer = PlotZoom.all(FALLING).by(0.2, 0.5);
    assertThat(closer.at(0.5)).isCloseTo(500, within(1e-9));
    PlotRange x = PlotRange.ofX(seen(closer));
    assertThat(x.low()).isCloseTo(400, within(1e-9));
    assertThat(x.high()).isCloseTo(600, within(1e-9));
    PlotRange y = PlotRange.ofY(seen(closer));
    assertThat(y.low()).isBetween(350.0, 400.0);
    assertThat(y.high()).isBetween(600.0, 680.0);
    assertThat(seen(closer).content().spans())
        .extracting(PlotSpan::label)
        .containsExactly("middle");
    assertThat(closer.words(Messages.of(Locale.ENGLISH))).isEqualTo("minutes, from 6.67 to 10.0");
  }

  @Test
  void itStaysWithinThePlotAndComesBackToAllOfIt() {
    PlotZoom right = PlotZoom.all(FALLING).by(0.2, 1).moved(5);
    assertThat(right.at(1)).isCloseTo(1000, within(1e-9));
    assertThat(right.moved(-99).at(0)).isCloseTo(0, within(1e-9));
    assertThat(right.by(50, 0.3).isAll()).isTrue();
    assertThat(right.by(50, 0.3).figure()).isSameAs(FALLING);
  }

  @Test
  void whatIsReadIsBroughtIntoSight() {
    PlotZoom left = PlotZoom.all(FALLING).by(0.1, 0);
    assertThat(left.showing(50).at(0)).isEqualTo(left.at(0));
    assertThat(left.showing(700).at(0)).isLessThan(700);
    assertThat(left.showing(700).at(1)).isGreaterThan(700);
  }
}
