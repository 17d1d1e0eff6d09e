package faintwind.report.figure;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.Series;
import faintwind.message.Messages;
import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PictureSvg;
import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotLane;
import faintwind.report.plot.PlotNote;
import faintwind.report.plot.PlotPoints;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlotsTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);
  private static final PictureStyle PAPER = PictureStyle.paper(Locale.ENGLISH);
  private static final PictureSize SIZE = new PictureSize(700, 360);

  private static Series course(double offset) {
    double[] t = IntStream.range(0, 600).mapToDouble(i -> i < 300 ? i : i + 200.0).toArray();
    double[] v = IntStream.range(0, 600).mapToDouble(i -> 30 - i / 60.0 + offset).toArray();
    return Series.of(t, v);
  }

  @Test
  void gapInARecordIsNotDrawnAsALine() {
    assertThat(RecordingPlots.pieces(course(0))).hasSize(2);
  }

  @Test
  void residualStripIsMeasuredLessFitted() {
    RecordingTrace trace =
        new RecordingTrace(
            "spin01",
            "K",
            course(0.5),
            Optional.of(course(0)),
            List.of(new RecordingTrace.Spin(100, 200, "0.30")),
            List.of(new RecordingTrace.Spin(300, 500, "the door was open")));
    PlotFigure figure = new RecordingPlots(WORDS).recording(trace);
    assertThat(figure.panels()).hasSize(2);
    assertThat(figure.tables().get(1).rows())
        .allMatch(row -> Math.abs(row.numbers().get(1) - 0.5) < 1e-12);
    assertThat(PictureSvg.of(figure, SIZE, PAPER)).contains(">0.30<", ">measured<", ">left out<");
    assertThat(figure.panels().get(0).caption()).contains("left out of the fit: the door was open");
    assertThat(figure.panels().get(0).content().spans()).hasSize(2);
  }

  @Test
  void summarySaysWhereACurveFalls() {
    PlotFigure figure =
        new CurvePlots(WORDS)
            .againstSpeed(
                "Warmer than the air, K",
                "",
                List.of(
                    new CurvePlots.Curve(
                        "copper",
                        PlotPoints.of(new double[] {0, 1, 3}, new double[] {32, 13.4, 8}))));
    assertThat(figure.description())
        .isEqualTo("Warmer than the air, K: falls from 32.0 to 8.00; highest 32.0, lowest 8.00.");
  }

  private static final PlotAxis MINUTES = PlotAxis.of("minutes", PlotAxis.Scale.MINUTES);
  private static final PlotAxis CLOCK = PlotAxis.of("time of day", PlotAxis.Scale.CLOCK);

  @Test
  void emptyFieldLogStillDraws() {
    FieldPlots.Log log =
        new FieldPlots.Log(MINUTES, List.of(), List.of(), "K", 0.05, List.of(), List.of());
    assertThat(PictureSvg.of(new FieldPlots(WORDS).log(log), SIZE, PAPER)).contains("Air speed");
  }

  @Test
  void stretchOfAFieldLogKeepsWhatLiesInIt() {
    PlotPoints first = PlotPoints.of(new double[] {0, 10, 20}, new double[] {1, 2, 3});
    PlotPoints second = PlotPoints.of(new double[] {40, 50}, new double[] {4, 5});
    PlotLane lane =
        new PlotLane(
            "gap",
            PlotLane.Texture.POSTS,
            List.of(new PlotLane.Stretch(5, 15), new PlotLane.Stretch(30, 40)),
            "");
    FieldPlots.Log log =
        new FieldPlots.Log(
            MINUTES,
            List.of(first, second),
            List.of(first, second),
            "K",
            0.05,
            List.of(lane),
            List.of(note(12), note(45)));
    FieldPlots.Log picked = log.between(10, 30);
    assertThat(log.span()).isEqualTo(new PlotLane.Stretch(0, 50));
    assertThat(picked.span()).isEqualTo(new PlotLane.Stretch(10, 20));
    assertThat(picked.speed()).hasSize(1);
    assertThat(picked.speed().get(0).size()).isEqualTo(2);
    assertThat(picked.speed().get(0).y(0)).isEqualTo(2);
    assertThat(picked.lanes().get(0).stretches())
        .containsExactly(new PlotLane.Stretch(10, 15), new PlotLane.Stretch(30, 30));
    assertThat(picked.notes()).extracting(PlotNote::x).containsExactly(12.0);
  }

  private static PlotNote note(double at) {
    return new PlotNote(at, 1, List.of("gust"), PlotToken.INK);
  }

  @Test
  void everyFlagHasALaneWithItsName() {
    PlotPoints points = PlotPoints.of(new double[] {0, 3600}, new double[] {0.1, 0.2});
    List<PlotLane> lanes =
        List.of(
            new PlotLane(
                "floor", PlotLane.Texture.SOLID, List.of(new PlotLane.Stretch(0, 600)), ""),
            new PlotLane("gap", PlotLane.Texture.POSTS, List.of(), ""));
    PlotFigure figure =
        new FieldPlots(WORDS)
            .log(
                new FieldPlots.Log(
                    CLOCK, List.of(points), List.of(points), "K", 0.05, lanes, List.of()));
    assertThat(PictureSvg.of(figure, SIZE, PAPER)).contains(">floor<").contains(">gap<");
    assertThat(figure.description()).contains("floor: one stretch").contains("gap: none");
  }

  @Test
  void ballDrawingCarriesItsDimensions() {
    BallDrawing drawing = BallDrawing.of(new BallDrawing.Ball(12.7, 3.2, 9, 2.4, 6.3), WORDS);
    assertThat(PictureSvg.of(drawing, SIZE, PAPER))
        .contains(">12.70 mm<")
        .contains(">3.20 mm<")
        .contains(">9.00 mm<");
  }
}
