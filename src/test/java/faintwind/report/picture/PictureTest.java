package faintwind.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotContent;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotPoints;
import faintwind.report.plot.PlotSpan;
import faintwind.report.plot.PlotTable;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PictureTest {
  private static final PictureSize SIZE = new PictureSize(560, 320);
  private static final PictureStyle PAPER = PictureStyle.paper(Locale.ENGLISH);

  static PlotFigure figure() {
    double[] x = IntStream.rangeClosed(0, 50).mapToDouble(i -> i / 20.0).toArray();
    double[] y = IntStream.rangeClosed(0, 50).mapToDouble(i -> 2 + 3 * x[i]).toArray();
    double[] low = IntStream.rangeClosed(0, 50).mapToDouble(i -> y[i] - 0.25).toArray();
    double[] high = IntStream.rangeClosed(0, 50).mapToDouble(i -> y[i] + 0.25).toArray();
    PlotLine turned =
        PlotLine.of(
            "clockwise",
            PlotPoints.of(new double[] {0.5, 1.5}, new double[] {4.1, 5.6}),
            PlotLook.markers(PlotMarker.TRIANGLE_DOWN, PlotToken.INK));
    PlotContent content =
        PlotContent.lines(
                List.of(
                    PlotLine.of("copper", PlotPoints.withBand(x, y, low, high), PlotLook.series(1)),
                    PlotLine.of("aluminium", PlotPoints.of(x, high), PlotLook.series(2)),
                    turned))
            .with(new PlotSpan(0, 0.2, "", PlotToken.GROUND));
    PlotAxis speed = PlotAxis.fromZero("air speed, m/s");
    return new PlotFigure(
        "Loss & speed",
        "rises from 2 to 6",
        List.of(PlotPanel.of("Loss", speed, PlotAxis.fromZero("G/C"), content)));
  }

  private static PlotFigure of(List<PlotLine> lines) {
    return new PlotFigure(
        "lines",
        "",
        List.of(
            PlotPanel.of(
                "", PlotAxis.linear("x"), PlotAxis.linear("y"), PlotContent.lines(lines))));
  }

  @Test
  void svgHasViewBoxTitleDescriptionAndItsLabelsAsText() throws Exception {
    Document svg = parsed(PictureSvg.of(figure(), SIZE, PAPER));
    Element root = svg.getDocumentElement();
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 560 320");
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(first(root, "title")).isEqualTo("Loss & speed");
    assertThat(first(root, "desc")).isEqualTo("rises from 2 to 6");
    assertThat(texts(svg))
        .contains("Loss", "copper", "aluminium", "clockwise", "air speed, m/s", "2.5");
  }

  @Test
  void printedSeriesDifferInDashAndUseNoColour() {
    assertThat(PictureSvg.of(figure(), SIZE, PAPER))
        .contains("stroke-dasharray:10,4")
        .contains("DejaVu Sans");
    BufferedImage image = PictureImage.of(figure(), SIZE, PAPER, 1);
    assertThat(pixels(image))
        .allMatch(c -> (c >> 16 & 255) == (c & 255) && (c >> 8 & 255) == (c & 255));
  }

  @Test
  void longRecordGivesASmallSvg() {
    int n = 200_000;
    double[] x = IntStream.range(0, n).mapToDouble(i -> i).toArray();
    double[] y = IntStream.range(0, n).mapToDouble(i -> Math.sin(i * 0.7)).toArray();
    PlotFigure figure = of(List.of(PlotLine.of("", PlotPoints.of(x, y), PlotLook.series(1))));
    assertThat(PictureSvg.of(figure, SIZE, PAPER).length()).isLessThan(60_000);
  }

  @Test
  void tableHoldsEveryNumberThatWasGiven() {
    PlotTable table = figure().tables().get(0);
    assertThat(table.columns()).containsExactly("air speed, m/s", "G/C");
    assertThat(table.rows()).hasSize(51 + 51 + 2);
    assertThat(table.rows().get(20).series()).isEqualTo("copper");
    assertThat(table.rows().get(20).numbers()).containsExactly(1.0, 5.0, 4.75, 5.25);
    assertThat(table.rows().get(103).numbers()).containsExactly(1.5, 5.6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"fw-light", "fw-dark", "fw-contrast"})
  void everyThemeHasEveryColourAndDraws(String theme) {
    PictureStyle style = PictureStyle.window(theme, Locale.ENGLISH);
    for (PlotToken token : PlotToken.values()) {
      assertThat(style.palette().colour(token)).isNotNull();
    }
    BufferedImage image = PictureImage.of(figure(), SIZE, style, 2);
    assertThat(image.getWidth()).isEqualTo(1120);
    int series = style.palette().colour(PlotToken.SERIES_1).getRGB();
    assertThat(pixels(image)).anyMatch(c -> c == series);
  }

  @Test
  void unknownThemeIsRefusedByName() {
    assertThatThrownBy(() -> PlotPalette.ofClass("fw-sepia"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fw-sepia");
  }

  @Test
  void labelsAtTheLinesEndsDoNotOverlap() throws Exception {
    double[] x = {0, 1};
    List<PlotLine> lines =
        IntStream.rangeClosed(1, 5)
            .mapToObj(
                i ->
                    PlotLine.of(
                        "line " + i,
                        PlotPoints.of(x, new double[] {0, 1 + i * 1e-3}),
                        PlotLook.series(i)))
            .toList();
    Document svg = parsed(PictureSvg.of(of(lines), SIZE, PAPER));
    NodeList texts = svg.getElementsByTagName("text");
    double[] at =
        IntStream.range(0, texts.getLength())
            .mapToObj(i -> (Element) texts.item(i))
            .filter(e -> e.getTextContent().startsWith("line "))
            .mapToDouble(e -> Double.parseDouble(e.getAttribute("y")))
            .sorted()
            .toArray();
    assertThat(at).hasSize(5);
    for (int i = 1; i < at.length; i++) {
      assertThat(at[i] - at[i - 1]).isGreaterThanOrEqualTo(16.9);
    }
  }

  /** A label that would leave the picture or take the lines' room stands over them. */
  @Test
  void longLabelsStandOverTheLinesWhole() throws Exception {
    double[] x = {0, 1};
    List<PlotLine> lines =
        IntStream.rangeClosed(1, 3)
            .mapToObj(
                i ->
                    PlotLine.of(
                        "Aluminium 6061-T6, ball of 9.53 mm " + i,
                        PlotPoints.of(x, new double[] {0, i}),
                        PlotLook.series(i)))
            .toList();
    Document svg = parsed(PictureSvg.of(of(lines), new PictureSize(340, 240), PAPER));
    NodeList texts = svg.getElementsByTagName("text");
    List<Element> labels =
        IntStream.range(0, texts.getLength())
            .mapToObj(i -> (Element) texts.item(i))
            .filter(e -> e.getTextContent().startsWith("Aluminium"))
            .toList();
    assertThat(labels).hasSize(3);
    assertThat(labels)
        .allSatisfy(e -> assertThat(Double.parseDouble(e.getAttribute("x"))).isLessThan(80))
        .allSatisfy(e -> assertThat(Double.parseDouble(e.getAttribute("y"))).isLessThan(100));
    assertThat(labels.stream().map(e -> e.getAttribute("y")).distinct()).hasSize(3);
  }

  private static List<Integer> pixels(BufferedImage image) {
    int width = image.getWidth();
    return IntStream.range(0, width * image.getHeight())
        .mapToObj(i -> image.getRGB(i % width, i / width))
        .toList();
  }

  private static String first(Element root, String name) {
    return root.getElementsByTagName(name).item(0).getTextContent();
  }

  private static List<String> texts(Document svg) {
    NodeList nodes = svg.getElementsByTagName("text");
    return IntStream.range(0, nodes.getLength())
        .mapToObj(i -> nodes.item(i).getTextContent())
        .toList();
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }
}
