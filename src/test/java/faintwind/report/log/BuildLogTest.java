package faintwind.report.log;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Typeset;
import faintwind.message.Where;
import faintwind.physics.design.Use;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.JournalEntry;
import faintwind.report.page.Html;
import faintwind.report.page.Pdf;
import faintwind.report.plot.MadeUpCalibration;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class BuildLogTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private final List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));

  private String html() {
    Situation situation = SampleBuild.after(entries);
    BuildLogContent content =
        new BuildLogContent(
            CHECKLIST,
            situation,
            Optional.empty(),
            BuildLogContent.Pictures.NONE,
            List.of(),
            "faintwind test",
            Optional.empty());
    return plainTimes(new BuildLog(Messages.of(Locale.ENGLISH)).html(content));
  }

  /** Without the spans that keep a time on its line. */
  private static String plainTimes(String html) {
    return html.replaceAll("<span class=\"time\">([^<]*)</span>", "$1");
  }

  private String certificate() {
    return new BuildLog(Messages.of(Locale.ENGLISH)).certificate(content());
  }

  private BuildLogContent content() {
    Use use = new Use(Use.Place.NARROW, 10, 0.05, 2, 0);
    Optional<BuildLogContent.Formula> formula =
        Optional.of(
            new BuildLogContent.Formula(
                "calibrations/made-up.json",
                MadeUpCalibration.of("2026-04-30T10:00:00Z"),
                Checked.refused(Problem.warning("formula-runs.missing", Where.NOWHERE, ""))));
    entries.add(
        SampleBuild.entry("force", "care", new CalibrationPutInForce("calibrations/made-up.json")));
    return new BuildLogContent(
        CHECKLIST,
        SampleBuild.after(entries),
        formula,
        BuildLogContent.Pictures.NONE,
        List.of(),
        "faintwind test",
        Optional.of(use));
  }

  private static PDDocument pdf(String html) throws IOException {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    Pdf.write(html, pdf);
    return Loader.loadPDF(pdf.toByteArray());
  }

  private static String page(PDDocument document, int page) throws IOException {
    PDFTextStripper words = new PDFTextStripper();
    words.setStartPage(page);
    words.setEndPage(page);
    return words.getText(document);
  }

  @Test
  void theFirstPageSaysWhatAStrangerMustKnowAndIsOnePage() throws Exception {
    String html = new BuildLog(Messages.of(Locale.ENGLISH)).html(content());
    try (PDDocument document = pdf(html)) {
      assertThat(page(document, 1))
          .contains("narrow space", "0.05 to 2 m/s wanted")
          .contains("Calibrated: from", "U95", "In force since", "Smallest speed", "Due again")
          .contains("Ada Test", "Fit and build", "Open or waived")
          .doesNotContain("Contents");
      assertThat(page(document, 2)).contains("Contents", "To be looked at");
      int last = document.getNumberOfPages();
      assertThat(page(document, last - 1) + page(document, last)).contains("Quantity", "Ω");
    }
  }

  @Test
  void theCertificateIsThatPageAloneWithAPlaceToSign() throws Exception {
    try (PDDocument document = pdf(certificate())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(page(document, 1)).contains("Calibrated: from", "Built by", "Signature");
    }
  }

  @Test
  void everyLineOfTheContentsLeadsSomewhereAndTheSheetIsLast() {
    String html = html();
    List<String> targets =
        Pattern.compile("href=\"#([^\"]+)\"").matcher(html).results().map(m -> m.group(1)).toList();
    assertThat(targets).hasSizeGreaterThan(6).doesNotHaveDuplicates();
    assertThat(targets).allMatch(target -> html.contains("<h2 id=\"" + target + "\""));
    String sheet = targets.get(targets.size() - 1);
    assertThat(html.indexOf("<h2 id=\"" + sheet)).isEqualTo(html.lastIndexOf("<h2 id="));
  }

  @Test
  void thePageIsInTheLanguageItSaysAndEveryTableHasHeads() {
    String german = new BuildLog(Messages.of(Locale.GERMANY)).html(content());
    assertThat(german).contains("lang=\"en\"", "name=\"viewport\"", "In force since");
    Matcher table =
        Pattern.compile("<table class=\"(\\w+[^\"]*)\">(.*?)</table>", Pattern.DOTALL)
            .matcher(german);
    int tables = 0;
    while (table.find()) {
      tables++;
      assertThat(table.group(1).equals("signature") || table.group(2).contains("<th scope="))
          .as(table.group(1))
          .isTrue();
    }
    assertThat(tables).isGreaterThan(20);
  }

  @Test
  void everyTimeHasItsZone() {
    assertThat(Pattern.compile("\\d{2}:\\d{2}(?! UTC|:\\d)").matcher(visible(html())).results())
        .isEmpty();
  }

  private static String visible(String html) {
    return html.replaceAll("(?s)<style>.*?</style>", "").replaceAll("<[^>]*>", " ");
  }

  private String correctHeater() {
    String slip =
        entries.stream()
            .filter(
                e ->
                    e.event() instanceof Event.ReadingEntered r
                        && r.reading().equals("heater-alone"))
            .findFirst()
            .orElseThrow()
            .id();
    Event better =
        new Event.ReadingEntered("heater-alone", "99.8", Amount.exact(99.8, "Ω"), Optional.empty());
    entries.add(
        SampleBuild.entry(
            "k", "heater-alone", new Event.Corrected(slip, "other <piece>", Optional.of(better))));
    return slip;
  }

  @Test
  void thePageIsWellFormedAndLoadsNothing() throws Exception {
    correctHeater();
    String html = html();
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    assertThat(html.replace("http://www.w3.org/", ""))
        .doesNotContain("http:", "https:", "<link", "<script", "@import");
  }

  @Test
  void aCorrectedReadingIsStruckThroughWithWhoWhenAndWhy() {
    correctHeater();
    assertThat(html())
        .contains("<s>“100,3”: 100.3")
        .containsPattern(
            "Corrected by Ada Test, 1 May 2026,(<[^>]*>| )*08:00 UTC.01(<[^>]*>)*: other"
                + " &lt;piece&gt;")
        .contains("“99.8”: 99.8");
  }

  @Test
  void aReadingTakenAgainAndAgainIsAControlChart() {
    assertThat(html()).doesNotContain("Control chart");
    for (double delta : new double[] {29.2, 28.8, 29.0, 27.9}) {
      String typed = String.valueOf(delta);
      entries.add(
          SampleBuild.entry(
              "jar" + typed,
              "jar-check",
              new Event.ReadingEntered(
                  "jar-delta", typed, Amount.exact(delta, "K"), Optional.empty())));
    }
    // 29.4 of the sample build, then 29.2, 28.8, 29.0: mean 29.1, mean step 0.2667, limit 0.7093
    assertThat(html())
        .contains("Control chart of &quot;Difference in the closed jar&quot;, 5 values: mean 29.1")
        .containsPattern("limits 28.39.K to 29.81.K")
        .contains("At least one is outside")
        .contains("Control chart: Difference in the closed jar", "Number of the value");
  }

  @Test
  void aWaiverAndAFailingReadingWithItsCauseStandInTheLog() {
    entries.add(
        SampleBuild.entry(
            "x",
            "heater-insulation",
            new Event.ReadingEntered(
                "lead-a-ball", "420k", SampleBuild.amount("420k", "MΩ"), Optional.empty())));
    entries.add(
        SampleBuild.entry(
            "y",
            "heater-insulation",
            new Event.ReadingEntered(
                "lead-b-ball", "420k", SampleBuild.amount("420k", "MΩ"), Optional.empty())));
    assertThat(html()).contains("420k").contains("The heater touches the ball:");
    entries.add(
        SampleBuild.entry(
            "w", "heater-insulation", new Event.Waived("lead-a-ball", "for show only")));
    assertThat(html()).contains("Waived: Lead A to heated ball. Reason: for show only (Ada Test");
  }

  @Test
  void everyCautionStandsThereWithWhoReadIt() {
    String html = html();
    CHECKLIST.step("arm-safety").orElseThrow().cautions().stream()
        .map(c -> Typeset.of(Html.escaped(c.text())))
        .forEach(text -> assertThat(html).contains(text));
    assertThat(html).contains("Read by Ada Test, 2 March 2026, ");
  }

  @Test
  void madeUpDataSaySoAtEachHeadingAndOnEachPrintedPage() throws Exception {
    String html = html();
    assertThat(html.split("<h2 id=", -1)).hasSizeGreaterThan(5);
    for (String part : html.substring(html.indexOf("<h2 id=") + 4).split("<h2 id=", -1)) {
      assertThat(part.substring(0, part.indexOf("</h2>"))).contains("made-up data");
    }
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    Pdf.write(html, pdf);
    try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
      assertThat(document.getNumberOfPages()).isGreaterThan(3);
      PDFTextStripper words = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        words.setStartPage(page);
        words.setEndPage(page);
        assertThat(words.getText(document)).contains("made-up data", "Build log: Test pair");
      }
    }
  }

  @Test
  void thePdfIsTaggedAndEveryPictureHasWords() throws Exception {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    String drawing =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\" width=\"9\" height=\"9\">"
            + "<title>Loss.</title><desc>Falls from 3 to 1.</desc><path d=\"M1,1H8\"/></svg>";
    Pdf.write(html().replace("</body>", drawing + "</body>"), pdf);
    try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
      assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
      List<String> kinds = new ArrayList<>();
      List<String> pictures = new ArrayList<>();
      walk(document.getDocumentCatalog().getStructureTreeRoot(), kinds, pictures);
      assertThat(kinds).contains("H1", "H2", "Table", "TH", "TD", "L");
      assertThat(pictures).doesNotContainNull().contains("Loss. Falls from 3 to 1.");
    }
  }

  private static void walk(PDStructureNode node, List<String> kinds, List<String> pictures) {
    if (node instanceof PDStructureElement element) {
      kinds.add(element.getStructureType());
      if (element.getStructureType().equals("Figure")) {
        pictures.add(element.getAlternateDescription());
      }
    }
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureNode below) {
        walk(below, kinds, pictures);
      }
    }
  }
}
