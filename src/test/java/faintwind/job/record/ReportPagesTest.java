package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.Sha256;
import faintwind.message.Messages;
import faintwind.ui.Cellar;
import faintwind.ui.measure.OtherDates;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The build log and the certificate of the shipped instrument, as a stranger gets them. */
class ReportPagesTest {
  private static final Pattern FACE =
      Pattern.compile("font-family: \"([^\"]+)\"[^}]*base64,([^)]+)\\)");
  private static final double HALF = 0.5;
  private static final double MARGIN_MM = 18;
  private static final double WIDTH_MM = 210;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  static Path folder;

  @SuppressWarnings("NullAway.Init")
  private static String html;

  @BeforeAll
  static void write() throws IOException {
    Path cellar = Cellar.shipped(folder, "rind-1");
    WriteReport job =
        new WriteReport(
            Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC), Messages.of(Locale.GERMANY));
    assertThat(job.write(cellar, folder.resolve("log.html")).isOk()).isTrue();
    assertThat(job.write(cellar, folder.resolve("log.pdf")).isOk()).isTrue();
    assertThat(job.writeCertificate(cellar, folder.resolve("certificate.pdf")).isOk()).isTrue();
    html = Files.readString(folder.resolve("log.html"));
  }

  private static Document page() throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> all(Document page, String tag) {
    NodeList found = page.getElementsByTagName(tag);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      all.add((Element) found.item(i));
    }
    return all;
  }

  @Test
  void thePageStandsAloneInItsOwnFaces() throws Exception {
    List<MatchResult> faces = FACE.matcher(html).results().toList();
    assertThat(faces).extracting(face -> face.group(1)).contains("Lato", "DejaVu Sans Mono");
    for (MatchResult face : faces) {
      byte[] bytes = Base64.getDecoder().decode(face.group(2));
      Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes));
      assertThat(font.canDisplayUpTo("Rind 1, 0.097 m/s µΩ±²")).isNegative();
    }
    assertThat(html.replace("http://www.w3.org/", ""))
        .doesNotContain("http:", "https:", "<link", "<script", "@import");
    assertThat(Files.size(folder.resolve("log.html"))).isLessThan(2_000_000);
  }

  @Test
  void theLanguageIsThatOfTheWordsAndAPhoneCanReadIt() throws Exception {
    Document page = page();
    assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(all(page, "meta"))
        .anyMatch(
            meta ->
                meta.getAttribute("name").equals("viewport")
                    && meta.getAttribute("content").contains("device-width"));
    assertThat(all(page, "img")).allMatch(image -> !image.getAttribute("alt").isBlank());
  }

  @Test
  void everyTableHasHeaderCellsWithTheirScope() throws Exception {
    for (Element table : all(page(), "table")) {
      NodeList heads = table.getElementsByTagName("th");
      assertThat(heads.getLength()).as(table.getTextContent()).isPositive();
      for (int i = 0; i < heads.getLength(); i++) {
        assertThat(((Element) heads.item(i)).getAttribute("scope")).isIn("col", "row");
      }
    }
  }

  @Test
  void everyLineOfTheContentsLeadsSomewhere() throws Exception {
    Document page = page();
    Set<String> ids = new HashSet<>();
    all(page, "h2").forEach(head -> ids.add(head.getAttribute("id")));
    List<Element> links = all(page, "a");
    assertThat(links).hasSizeGreaterThan(7);
    assertThat(links).allMatch(link -> ids.contains(link.getAttribute("href").substring(1)));
  }

  @Test
  void timesHaveTheirZoneAndAreWrittenInOneWay() {
    String visible = html.replaceAll("(?s)<(style|svg).*?</\\1>", " ").replaceAll("<[^>]*>", " ");
    assertThat(Pattern.compile("\\d\\d:\\d\\d(?! UTC[+-]\\d\\d)").matcher(visible).results())
        .isEmpty();
    assertThat(visible.lines()).noneMatch(OtherDates::isOther);
    assertThat(visible).containsPattern("13 September 2026,\\s+\\d\\d:\\d\\d UTC\\+02");
  }

  @Test
  void aFieldLogStandsThereWithItsHashAndItsShape() throws Exception {
    String log = "logs/north-shelf-day.csv";
    String hash = Sha256.of(Path.of("demo-projects/cellar").resolve(log));
    assertThat(html).contains(log, hash.substring(0, 32));
    assertThat(all(page(), "svg"))
        .anyMatch(drawing -> drawing.getAttribute("class").equals("shape"));
  }

  @Test
  void theCertificateIsOnePage() throws IOException {
    try (PDDocument document = Loader.loadPDF(folder.resolve("certificate.pdf").toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(document))
          .contains("Fitted (± U95)", "Built (± U95)", "Head of the journal", "Smallest speed");
      assertThatTheSmallPlotIsWhole(new PDFRenderer(document).renderImage(0));
    }
  }

  /** A word that is cut ends at the very edge of the plot, which is that of the text. */
  private static void assertThatTheSmallPlotIsWhole(BufferedImage page) {
    int edge = (int) Math.round(page.getWidth() * (1 - MARGIN_MM / WIDTH_MM));
    int plot = 0;
    for (int y = (int) (0.325 * page.getHeight()); y < 0.43 * page.getHeight(); y++) {
      for (int x = edge - 2; x < page.getWidth(); x++) {
        assertThat(page.getRGB(x, y) & 0xFF).as(x + ", " + y).isGreaterThan(200);
      }
      for (int x = edge - 150; x < edge - 2; x++) {
        plot += (page.getRGB(x, y) & 0xFF) < 200 ? 1 : 0;
      }
    }
    assertThat(plot).as("ink of the plot").isGreaterThan(50);
  }

  @Test
  void noPageIsHalfEmptyAndNothingSticksOut() throws IOException {
    try (PDDocument document = Loader.loadPDF(folder.resolve("log.pdf").toFile())) {
      int pages = document.getNumberOfPages();
      for (int page = 1; page <= pages; page++) {
        Extent extent = Extent.of(document, page);
        assertThat(extent.right).as("page " + page).isLessThan(extent.width);
        if (page < pages) {
          assertThat((double) extent.lowest / extent.height).as("page " + page).isGreaterThan(HALF);
        }
      }
    }
  }

  @Test
  void thePagesAreSetInTheProgramsOwnFaces() throws IOException {
    Set<String> faces = new HashSet<>();
    try (PDDocument document = Loader.loadPDF(folder.resolve("log.pdf").toFile())) {
      for (PDPage page : document.getPages()) {
        collect(page.getResources(), faces);
      }
    }
    assertThat(faces)
        .anyMatch(face -> face.contains("Lato-Bold"))
        .allMatch(face -> face.contains("Lato") || face.contains("DejaVuSansMono"));
  }

  private static void collect(PDResources resources, Set<String> faces) throws IOException {
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      faces.add(font.getName());
    }
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
        collect(form.getResources(), faces);
      }
    }
  }

  /** How far the words of a page reach; the line at its foot does not count. */
  private static final class Extent extends PDFTextStripper {
    private static final double FOOT = 0.93;
    private float lowest;
    private float right;
    private final float height;
    private final float width;

    private Extent(PDPage page) {
      height = page.getMediaBox().getHeight();
      width = page.getMediaBox().getWidth();
    }

    static Extent of(PDDocument document, int page) throws IOException {
      Extent extent = new Extent(document.getPage(page - 1));
      extent.setStartPage(page);
      extent.setEndPage(page);
      extent.getText(document);
      return extent;
    }

    @Override
    protected void processTextPosition(TextPosition text) {
      right = Math.max(right, text.getXDirAdj() + text.getWidthDirAdj());
      if (text.getYDirAdj() < FOOT * height) {
        lowest = Math.max(lowest, text.getYDirAdj());
      }
    }
  }
}
