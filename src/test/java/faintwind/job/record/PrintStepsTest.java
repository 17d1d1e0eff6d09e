package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.Enter.Person;
import faintwind.job.record.PrintSteps.Extent;
import faintwind.job.record.PrintSteps.Wanted;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class PrintStepsTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), NOW.getOffset());
  private static final String BANNER = "Local rules and a licensed plater come first";
  private static final String NICKEL_INSTRUCTION = "Connect the ball to minus";

  private final AtomicInteger next = new AtomicInteger();
  private final Person maker = new Person("Maker", () -> "e" + next.incrementAndGet());
  @TempDir Path temp;

  private Path instrument() throws IOException {
    Path folder = temp.resolve("rind");
    Enter.begin(folder, new InstrumentCreated("Rind <9> & north", true), CLOCK, maker);
    String design = Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"));
    ok(enter(folder).plain(Optional.empty(), new DesignChosen(design, "first")));
    return folder;
  }

  private InstrumentView view(Path folder) throws IOException {
    KeptDesigns designs = KeptDesigns.withShippedParts();
    return ok(InstrumentView.open(folder, designs::sheet));
  }

  private Enter enter(Path folder) throws IOException {
    return new Enter(view(folder), CLOCK, maker);
  }

  private static <T> T ok(Checked<T> checked) {
    assertThat(checked.isOk()).as(checked.problems().toString()).isTrue();
    return ((Checked.Ok<T>) checked).value();
  }

  private PrintSteps print() {
    return new PrintSteps(CLOCK, Messages.of(Locale.ENGLISH));
  }

  private String html(Path folder, Wanted wanted) throws IOException {
    Path target = temp.resolve("steps.html");
    ok(print().write(folder, wanted, target));
    return Files.readString(target);
  }

  private static Wanted stage(String id) {
    return new Wanted(Extent.STAGE, id);
  }

  private Step finishWithAnswers(Path folder, String id, String... answers) throws IOException {
    Step step = view(folder).checklist().step(id).orElseThrow();
    for (Caution caution : step.cautions()) {
      ok(enter(folder).acknowledge(id, caution.id()));
    }
    for (int i = 0; i < answers.length; i += 2) {
      ok(enter(folder).answer(id, answers[i], answers[i + 1]));
    }
    return step;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "01-design",
        "02-make",
        "03-plating",
        "04-assemble",
        "05-chain",
        "06-turntable",
        "07-formula",
        "08-use"
      })
  void everyStagePrintsItsStepsWithCautionsBeforeTheInstruction(String id) throws Exception {
    Path folder = instrument();
    String page = html(folder, stage(id));
    Document parsed = parsed(page);
    String text =
        parsed
            .getElementsByTagName("body")
            .item(0)
            .getTextContent()
            .replaceAll("[\\s\u00a0]+", " ");
    Checklist checklist = view(folder).checklist();
    for (Step step : checklist.steps()) {
      if (!checklist.stageOf(step.id()).orElseThrow().id().equals(id)) {
        continue;
      }
      int title = text.indexOf(". " + step.title());
      assertThat(title).as(step.id()).isPositive();
      String first = step.text().how().get(0);
      int instruction = first.contains("{") ? -1 : text.indexOf(first, title);
      for (Caution caution : step.cautions()) {
        assertThat(text.indexOf(caution.source(), title)).as(caution.id()).isPositive();
        if (instruction > 0) {
          assertThat(text.indexOf(caution.text(), title)).isBetween(title, instruction);
        }
      }
    }
    assertThat(text).contains("Rind <9> & north").doesNotContain("{").doesNotContain("<b>");
  }

  @Test
  void readingsHaveBlanksAndTheVerdictsToTick() throws IOException {
    String page = html(instrument(), new Wanted(Extent.STEP, "weigh-blanks"));
    assertThat(page).contains("Blank A").contains("class=\"short\"").contains("<b>doubtful</b>");
    assertThat(page.split("class=\"tick\"", -1).length).isGreaterThan(10);
  }

  @Test
  void everyPrintedPageOfPlatingIsHeadedByTheWarning() throws IOException {
    Path folder = instrument();
    Path target = temp.resolve("plating.pdf");
    ok(print().write(folder, stage("03-plating"), target));
    try (PDDocument pdf = Loader.loadPDF(target.toFile())) {
      assertThat(pdf.getNumberOfPages()).isGreaterThan(2);
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(page);
        text.setEndPage(page);
        assertThat(text.getText(pdf).substring(0, 120)).as("page " + page).contains(BANNER);
      }
    }
  }

  @Test
  void paperIsNoWayRoundADesignThatStops() throws IOException {
    Path folder = instrument();
    Wanted first = new Wanted(Extent.STEP, "first-power");
    assertThat(html(folder, first)).contains("Connect the supply to the cable");
    String hot =
        Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"))
            .replace("\"resistance_ohm\": 100", "\"resistance_ohm\": 1");
    ok(enter(folder).plain(Optional.empty(), new DesignChosen(hot, "hotter")));
    assertThat(html(folder, first))
        .doesNotContain("Connect the supply to the cable")
        .contains("The instruction is printed once every caution is answered");
  }

  @Test
  void paperIsNoWayRoundTheGateOfHomePlating() throws IOException {
    Path folder = instrument();
    assertThat(html(folder, stage("03-plating"))).doesNotContain(NICKEL_INSTRUCTION);
    assertThat(html(folder, new Wanted(Extent.STEP, "plating-home-nickel")))
        .doesNotContain(NICKEL_INSTRUCTION)
        .contains("The instruction is printed once every caution is answered");
    assertThat(html(folder, Wanted.ALL)).doesNotContain(NICKEL_INSTRUCTION);
  }

  @Test
  void whatAnAnswerMadeNeedlessIsNamedAndLeftOut() throws IOException {
    Path folder = instrument();
    finishWithAnswers(folder, "plating-needed", "needed", "no");
    assertThat(html(folder, stage("03-plating")))
        .contains("Write the order sheet: not needed by an answer on record.")
        .doesNotContain("Order sheet for a licensed plater");
  }

  @Test
  void aCardStandsOnceOnASheet() throws IOException {
    String page = html(instrument(), stage("02-make"));
    assertThat(page.split("<h4>Drilling card</h4>", -1)).hasSize(2);
    assertThat(page).contains("Drilling card: see above.");
  }

  @Test
  void unknownStepOrStageIsRefusedAndNothingIsWritten() throws IOException {
    Path folder = instrument();
    Path target = temp.resolve("none.pdf");
    for (Wanted wanted : new Wanted[] {stage("09-moon"), new Wanted(Extent.STEP, "fly")}) {
      Checked<Path> written = print().write(folder, wanted, target);
      assertThat(written.isOk()).isFalse();
      assertThat(written.problems().get(0).id()).startsWith("print.unknown-");
      assertThat(target).doesNotExist();
    }
  }

  @Test
  void aPageOfTheWindowIsKeptInTheInstrumentsFolder() throws IOException {
    Path folder = instrument();
    Path kept = ok(print().keep(view(folder), new Wanted(Extent.STEP, "drill-heated")));
    assertThat(kept).isEqualTo(folder.resolve("reports/steps/drill-heated.pdf")).isNotEmptyFile();
  }

  @Test
  void orderSaysWhatCanBeDoneNow() throws IOException {
    Path folder = instrument();
    JournalEntry opened = ok(enter(folder).open("choose-use"));
    assertThat(opened.step()).contains("choose-use");
    assertThat(ok(new OrderText(CLOCK, Messages.of(Locale.ENGLISH)).lines(folder)))
        .startsWith("Can be done now:", "  Write down what the instrument is for (choose-use)")
        .contains("  Drill the heated ball (drill-heated): after choose-use");
  }

  private static Document parsed(String html) throws Exception {
    DocumentBuilderFactory xml = DocumentBuilderFactory.newInstance();
    xml.setNamespaceAware(true);
    return xml.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
  }
}
