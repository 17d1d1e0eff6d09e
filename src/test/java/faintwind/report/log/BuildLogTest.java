package faintwind.report.log;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import faintwind.report.page.Html;
import faintwind.report.page.Pdf;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
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
            CHECKLIST, situation, Optional.empty(), Map.of(), List.of(), "faintwind test");
    return new BuildLog(Messages.of(Locale.ENGLISH)).html(content);
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
        .contains("Corrected by Ada Test, 2026-05-01 08:00: other &lt;piece&gt;")
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
        .map(c -> Html.escaped(c.text()))
        .forEach(text -> assertThat(html).contains(text));
    assertThat(html).contains("Read by Ada Test, 2026-");
  }

  @Test
  void madeUpDataSaySoAtEachHeadingAndOnEachPrintedPage() throws Exception {
    String html = html();
    assertThat(html.split("<h2>", -1)).hasSizeGreaterThan(5);
    for (String part : html.substring(html.indexOf("<h2>") + 4).split("<h2>", -1)) {
      assertThat(part.substring(0, part.indexOf("</h2>"))).contains("made-up data");
    }
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    Pdf.write(html, pdf);
    try (PDDocument document = org.apache.pdfbox.Loader.loadPDF(pdf.toByteArray())) {
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
    try (PDDocument document = org.apache.pdfbox.Loader.loadPDF(pdf.toByteArray())) {
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
