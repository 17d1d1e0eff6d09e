package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.checklist.SampleBuild;
import faintwind.job.record.Enter.Person;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.StepFinished;
import faintwind.record.JournalEntry;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

class WriteReportTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), NOW.getOffset());
  private static final String HOSTILE = "</p><script>alert('1')</script>&\"\u0001";

  private final AtomicInteger next = new AtomicInteger();
  private final Person maker = new Person("Maker <b>", () -> "e" + next.incrementAndGet());
  @TempDir Path temp;

  private Path instrument(boolean madeUp) throws IOException {
    Path folder = temp.resolve("rind");
    Enter.begin(folder, new InstrumentCreated("Rind 9, north", madeUp), CLOCK, maker);
    for (String need : List.of("polish-and-degrease", "prove-meter")) {
      JournalEntry done =
          new JournalEntry(need, NOW, maker.name(), Optional.of(need), new StepFinished());
      new InstrumentFolder(folder).append(List.of(done));
    }
    Checked<JournalEntry> first = enter(folder).reading("heater-alone", "heater-alone", "10");
    String id = ((Checked.Ok<JournalEntry>) first).value().id();
    assertThat(enter(folder).correctReading(id, "100,3", "a nought was missing").isOk()).isTrue();
    assertThat(enter(folder).plain(Optional.empty(), new NoteWritten(HOSTILE)).isOk()).isTrue();
    return folder;
  }

  private Enter enter(Path folder) throws IOException {
    Checked<InstrumentView> opened =
        InstrumentView.open(folder, json -> Optional.of(SampleBuild.sheet()));
    return new Enter(((Checked.Ok<InstrumentView>) opened).value(), CLOCK, maker);
  }

  private Checked<Path> write(Path folder, Path target) throws IOException {
    return new WriteReport(CLOCK, Messages.of(Locale.ENGLISH)).write(folder, target);
  }

  private String html(Path folder) throws IOException {
    Path target = temp.resolve("log.html");
    Checked<Path> written = write(folder, target);
    assertThat(written.isOk()).as(written.problems().toString()).isTrue();
    return Files.readString(target);
  }

  @Test
  void hostileTextIsShownAndNeverBecomesMarkup() throws Exception {
    String html = html(instrument(true));
    assertThat(html).doesNotContain("<script").doesNotContain("Maker <b>");
    assertThat(html).contains("&lt;/p&gt;&lt;script&gt;").contains("Maker &lt;b&gt;");
    DocumentBuilderFactory xml = DocumentBuilderFactory.newInstance();
    xml.setNamespaceAware(true);
    var page = xml.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    assertThat(page.getElementsByTagName("script").getLength()).isZero();
    assertThat(page.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo("Rind 9, north");
  }

  @Test
  void photoThatIsNotTheOneEnteredIsNotShownAndSaidToBeAbsent() throws IOException {
    Path folder = instrument(true);
    BufferedImage picture = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    Path taken = temp.resolve("bore.png");
    ImageIO.write(picture, "png", taken.toFile());
    assertThat(enter(folder).photo("heater-alone", taken, "the bore").isOk()).isTrue();
    assertThat(html(folder)).contains("data:image/png").doesNotContain("Not shown");

    picture.setRGB(0, 0, 0xFFFFFF);
    try (Stream<Path> kept = Files.list(folder.resolve("photos"))) {
      ImageIO.write(picture, "png", kept.findFirst().orElseThrow().toFile());
    }
    assertThat(html(folder)).contains("Not shown").doesNotContain("data:image/png");
  }

  @Test
  void correctedReadingStaysStruckWithWhoWhenAndWhy() throws IOException {
    String html = html(instrument(true));
    assertThat(html).containsPattern("<s>“10”: [^<]*</s> Corrected by Maker &lt;b&gt;");
    assertThat(html)
        .containsPattern(
            "2 March 2026,</span> <span[^>]*>09:00 UTC.01</span>: a nought was missing")
        .contains("“100,3”:");
    assertThat(html).doesNotContain("<s>“100,3”");
  }

  @Test
  void madeUpInstrumentSaysSoInWordsAndBesideHeadings() throws IOException {
    String words = Messages.of(Locale.ENGLISH).text("build-log.made-up.sentence");
    assertThat(html(instrument(true))).contains(words).contains(">made-up data</span>");
  }

  @Test
  void realInstrumentCarriesNoSuchLabel() throws IOException {
    assertThat(html(instrument(false))).doesNotContain("Made-up data").doesNotContain(">made-up");
  }

  @Test
  void everyPageOfThePdfNamesInstrumentLabelAndNumber() throws IOException {
    Path target = temp.resolve("log.pdf");
    assertThat(write(instrument(true), target).isOk()).isTrue();
    try (PDDocument pdf = Loader.loadPDF(target.toFile())) {
      int pages = pdf.getNumberOfPages();
      assertThat(pages).isGreaterThan(1);
      for (int page = 1; page <= pages; page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(page);
        text.setEndPage(page);
        assertThat(text.getText(pdf))
            .contains("Build log: Rind 9, north")
            .contains("made-up data")
            .contains("page " + page + " of " + pages);
      }
    }
  }

  @Test
  void shippedCellarShowsItsCalibrationWithEvidence() throws IOException {
    String html = html(Path.of("demo-projects/cellar"));
    assertThat(html)
        .contains("1 The recordings", "2 The fit", "3 The choice of the formula")
        .contains("Each run left out in turn")
        .contains("seed 20261125")
        .contains("form of the formula")
        .contains("Covariance of the parameters")
        .contains(">measured<", ">fitted<", "The straight-line look");
  }

  @Test
  void folderWithoutJournalIsRefusedAndNothingIsWritten() throws IOException {
    Path target = temp.resolve("log.html");
    Path empty = Files.createDirectory(temp.resolve("empty"));
    assertThat(write(empty, target).isOk()).isFalse();
    assertThat(target).doesNotExist();
  }
}
