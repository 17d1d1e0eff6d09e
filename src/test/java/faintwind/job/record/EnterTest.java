package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.StepState;
import faintwind.guide.checklist.SampleBuild;
import faintwind.job.record.Enter.Person;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EnterTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), NOW.getOffset());
  private final AtomicInteger next = new AtomicInteger();
  private final Person ada = new Person("Ada Test", () -> "e" + next.incrementAndGet());
  @TempDir Path temp;
  private Path folder;

  @BeforeEach
  void begin() throws IOException {
    folder = temp.resolve("rind");
    Enter.begin(folder, new InstrumentCreated("Rind 9", true), CLOCK, ada);
    enter().plain(Optional.empty(), new DesignChosen("{}", "first"));
  }

  private InstrumentView view() throws IOException {
    Checked<InstrumentView> opened =
        InstrumentView.open(folder, json -> Optional.of(SampleBuild.sheet()));
    assertThat(opened.isOk()).as(opened.problems().toString()).isTrue();
    return ((Checked.Ok<InstrumentView>) opened).value();
  }

  private Enter enter() throws IOException {
    return new Enter(view(), CLOCK, ada);
  }

  /** The steps before it were finished, so that a reading of it tests what it is to test. */
  private void reached(String step) throws IOException {
    for (String need : view().checklist().step(step).orElseThrow().order().needs()) {
      JournalEntry entry =
          new JournalEntry(
              "done-" + need,
              OffsetDateTime.now(CLOCK),
              "Ada",
              Optional.of(need),
              new Event.StepFinished());
      new InstrumentFolder(folder).append(List.of(entry));
    }
  }

  private static List<String> ids(Checked<JournalEntry> result) {
    Messages english = Messages.of(Locale.ENGLISH);
    result.problems().forEach(problem -> assertThat(english.line(problem)).isNotBlank());
    return result.problems().stream().map(Problem::id).toList();
  }

  @Test
  void aTypedReadingIsKeptAsTypedAsUnderstoodAndAsJudged() throws IOException {
    reached("heater-insulation");
    assertThat(enter().reading("heater-insulation", "lead-a-ball", "420k").isOk()).isTrue();
    Event.ReadingEntered kept =
        view().state().reading("heater-insulation", "lead-a-ball").orElseThrow().event();
    assertThat(kept.typed()).isEqualTo("420k");
    assertThat(kept.amount().value()).isEqualTo(0.42);
    assertThat(kept.verdict()).contains(ReadingVerdict.STOP);
  }

  @Test
  void whatIsRefusedIsNotWritten() throws IOException {
    long before = Files.size(folder.resolve("journal.jsonl"));
    assertThat(ids(enter().reading("heater-alone", "heater-alone", "4o2")))
        .containsExactly("number.not-a-number");
    assertThat(ids(enter().reading("heater-alone", "heater-alone", "300 K")))
        .containsExactly("number.kelvin-or-kilo");
    assertThat(ids(enter().reading("heater-alone", "nothing", "5")))
        .containsExactly("enter.unknown-item");
    assertThat(ids(enter().open("no-step"))).containsExactly("enter.unknown-step");
    assertThat(ids(enter().waive("heater-alone", "heater-alone", " ")))
        .containsExactly("waiver.no-reason", "waiver.not-taken");
    assertThat(ids(enter().waive("arm-safety", "hair", "short hair")))
        .containsExactly("enter.caution-not-waived");
    assertThat(ids(enter().waive("arm-safety", "balanced", "looks fine")))
        .containsExactly("enter.unknown-item");
    assertThat(ids(enter().correct("e99", "why", Optional.empty())))
        .containsExactly("enter.unknown-entry");
    assertThat(ids(new Enter(view(), CLOCK, new Person(" ", () -> "x")).open("choose-use")))
        .containsExactly("enter.no-name");
    assertThat(Files.size(folder.resolve("journal.jsonl"))).isEqualTo(before);
  }

  @Test
  void aStepIsFinishedOnlyWhenAllItAsksForIsThere() throws IOException {
    assertThat(ids(enter().finish("choose-use")))
        .containsExactly("gate.unanswered", "gate.unanswered");
    enter().answer("choose-use", "place", "indoors");
    enter().answer("choose-use", "group", "no");
    assertThat(enter().finish("choose-use").isOk()).isTrue();
    assertThat(view().progress(NOW).step("choose-use").orElseThrow().state())
        .isEqualTo(StepState.DONE);
  }

  @Test
  void aCorrectedReadingStaysInTheJournalStruckThrough() throws IOException {
    reached("heater-alone");
    Checked<JournalEntry> first = enter().reading("heater-alone", "heater-alone", "10");
    String id = ((Checked.Ok<JournalEntry>) first).value().id();
    assertThat(enter().correctReading(id, "100,3", "a nought was missing").isOk()).isTrue();
    assertThat(view().state().history("heater-alone", "heater-alone")).hasSize(2);
    assertThat(view().state().reading("heater-alone", "heater-alone").orElseThrow().event().typed())
        .isEqualTo("100,3");
    assertThat(ids(enter().correctReading(id, "100", "again")))
        .containsExactly("enter.unknown-entry");
  }

  @Test
  void aClockIsKeptWithItsDurationByTheDesign() throws IOException {
    enter().startClock("warm-up-run");
    assertThat(view().state().clock("warm-up-run", "warm-up").orElseThrow().event().duration_s())
        .isEqualTo(45 * 60.0);
  }

  @Test
  void onlyRealPicturesAreKeptAsPhotos() throws IOException {
    Path text = Files.writeString(temp.resolve("a.jpg"), "not a picture");
    assertThat(ids(enter().photo("mount-pair", text, "x"))).containsExactly("photo.not-a-picture");
    ByteArrayOutputStream dot = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB), "png", dot);
    byte[] png = dot.toByteArray();
    Path picture = Files.write(temp.resolve("b.png"), png);
    assertThat(enter().photo("mount-pair", picture, "from the side").isOk()).isTrue();
    Event.PhotoAdded kept = view().state().all(Event.PhotoAdded.class).get(0).event();
    assertThat(folder.resolve(kept.file())).hasBinaryContent(png);
    Files.writeString(folder.resolve(kept.file()), "changed");
    assertThat(new InstrumentFolder(folder).audit().problems())
        .extracting(Problem::id)
        .containsExactly("folder.file-changed");
  }

  @Test
  void aBrokenJournalOpensForReadingOnlyAndListsItsProblems() throws IOException {
    Path journal = folder.resolve("journal.jsonl");
    Files.writeString(journal, "rubbish\n" + Files.readString(journal));
    InstrumentView view = view();
    assertThat(view.writable()).isFalse();
    assertThat(view.problems()).extracting(Problem::id).contains("journal.not-json");
    assertThat(view.state().name()).contains("Rind 9");
    assertThat(ids(enter().open("choose-use"))).containsExactly("folder.read-only");
    Files.delete(journal);
    assertThat(view().problems()).extracting(Problem::id).containsExactly("folder.journal-gone");
  }

  @Test
  void aFileIsNotCopiedWhereNothingCanBeEntered() throws IOException {
    Enter nameless = new Enter(view(), CLOCK, new Enter.Person("", ada.ids()));
    assertThat(ids(nameless.pastedPhoto("choose-use", new byte[1], "x")))
        .containsExactly("enter.no-name");
    assertThat(ids(enter().pastedPhoto("dance", new byte[1], "x")))
        .containsExactly("enter.unknown-step");
  }

  @Test
  void theSummaryCanAlwaysBeMadeAgainFromTheJournal() throws IOException {
    Path summary = folder.resolve("instrument.json");
    String before = Files.readString(summary);
    Files.delete(summary);
    new InstrumentFolder(folder).writeSummary();
    assertThat(summary).content().isEqualTo(before).contains("\"made_up\" : true");
  }
}
