package faintwind.report.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.message.Messages;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PictureSvg;
import faintwind.report.plot.MadeUpCalibration;
import faintwind.report.plot.PlotTable;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CalibrationPlotsTest {
  private static final PictureStyle PAPER = PictureStyle.paper(Locale.ENGLISH);
  private static final PictureSize SIZE = new PictureSize(600, 400);
  private final CalibrationPlots plots = new CalibrationPlots(Messages.of(Locale.ENGLISH));
  private final BandPlots bands = new BandPlots(Messages.of(Locale.ENGLISH));
  private final Calibration calibration = MadeUpCalibration.of("2026-10-14T10:00:00+02:00");

  private static List<PlotTable.Row> rows(PlotFigure figure, String series) {
    return figure.tables().get(0).rows().stream().filter(r -> r.series().equals(series)).toList();
  }

  @Test
  void lossRisesWithSpeedAndLiesInsideItsBand() {
    List<PlotTable.Row> curve = rows(plots.loss(calibration, List.of()), "");
    for (int i = 1; i < curve.size(); i++) {
      List<Double> now = curve.get(i).numbers();
      assertThat(now.get(1)).isGreaterThan(curve.get(i - 1).numbers().get(1));
      assertThat(now.get(1)).isBetween(now.get(2), now.get(3));
    }
  }

  @Test
  void aRunThatReadsHighLiesAboveTheCurve() {
    PlotFigure figure = plots.loss(calibration, List.of());
    // the third made-up run reads 1 % high at 0.4 m/s
    PlotTable.Row run = rows(figure, "run").get(2);
    assertThat(run.numbers().get(0)).isEqualTo(0.4);
    double loss = LossCurve.of(calibration).lossOf(0.4);
    assertThat(run.numbers().get(1)).isGreaterThan(loss).isCloseTo(loss, within(0.02 * loss));
    assertThat(rows(figure, "left out")).hasSize(1);
  }

  @Test
  void errorsAreInPerCentBesideTheStraightLine() {
    PlotFigure figure =
        plots.errors(calibration, List.of(new CalibrationPlots.RunError(0.1, 0.75)));
    assertThat(rows(figure, "complete formula")).hasSize(7);
    assertThat(rows(figure, "straight line").get(0).numbers()).containsExactly(0.1, 75.0);
    assertThat(PictureSvg.of(figure, SIZE, PAPER)).contains("straight line");
  }

  @Test
  void uncertaintyIsRelativeAndResponseInSeconds() {
    double highest_m_s = calibration.coverage().highest_m_s();
    assertThat(rows(bands.u95(calibration), ""))
        .isNotEmpty()
        .allMatch(row -> row.numbers().get(0) <= highest_m_s * 1.001);
    // what was not tried carries its mark
    List<PlotTable.Row> u95 = rows(bands.u95(calibration), "beyond");
    assertThat(u95.get(u95.size() - 1).numbers().get(1)).isCloseTo(3.13333333, within(1e-8));
    assertThat(rows(bands.response(calibration), "beyond").get(0).numbers().get(1))
        .isCloseTo(29.12621359, within(1e-8));
  }
}
