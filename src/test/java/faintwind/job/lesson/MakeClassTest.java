package faintwind.job.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.job.JobWatch;
import faintwind.job.record.BeginInstrument;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class is made whole, goes on where it was stopped, or leaves nothing behind. */
class MakeClassTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);
  private static final Path DESIGN = Path.of("assets/examples/design.json");

  @TempDir Path temp;
  private final MakeClass job = new MakeClass(Clock.systemUTC(), WORDS);

  private static MakeClass.Wish wish(Optional<Path> design) {
    return new MakeClass.Wish(
        "Year 10", "", List.of(), List.of("Otters", "", ""), List.of("one", "two"), design, "");
  }

  /** Stops before a pair. */
  private static JobWatch stoppingBefore(int pair) {
    return new JobWatch() {
      private long done;

      @Override
      public void progress(String stage, long count, long total) {
        done = count;
      }

      @Override
      public boolean cancelled() {
        return done + 1 >= pair;
      }
    };
  }

  @Test
  void oneThatWasStoppedGoesOnAndKeepsThePairsThatAreThere() throws IOException {
    Path folder = temp.resolve("class");
    Checked<SchoolClass> stopped = job.make(folder, wish(Optional.of(DESIGN)), stoppingBefore(3));
    assertThat(WORDS.lines(stopped.problems())).contains("2 of 3 pairs are made and kept");
    assertThat(folder.resolve("class.json")).doesNotExist();
    byte[] first = Files.readAllBytes(folder.resolve("pair-01/journal.jsonl"));

    Checked<SchoolClass> made = job.make(folder, wish(Optional.of(DESIGN)));
    assertThat(made.problems()).isEmpty();
    assertThat(folder.resolve("pair-01/journal.jsonl")).hasBinaryContent(first);
    assertThat(folder.resolve("pair-03/journal.jsonl")).exists();
    assertThat(folder.resolve("class.json")).exists();
  }

  @Test
  void aClassThatIsSmallerThanTheHalfMadeOneTellsWhatIsLeftOver() throws IOException {
    Path folder = temp.resolve("class");
    job.make(folder, wish(Optional.of(DESIGN)), stoppingBefore(3));
    LookAtClass looking = new LookAtClass(folder, WORDS);
    assertThat(WORDS.lines(looking.look(OffsetDateTime.now(ZoneOffset.UTC)).problems()))
        .contains("made half way", "Pairs that are there: 2", "class create");
    MakeClass.Wish smaller = wish(List.of(), List.of(""));
    Checked<SchoolClass> made = job.make(folder, smaller);
    assertThat(made.isOk()).isTrue();
    assertThat(WORDS.lines(made.problems())).contains("belong to no pair: 1, namely pair-02");
    LookAtClass none = new LookAtClass(temp, WORDS);
    assertThat(WORDS.lines(none.look(OffsetDateTime.now(ZoneOffset.UTC)).problems()))
        .contains("There is no class in");
  }

  @Test
  void anInstrumentOfSomebodyElseInThePlaceOfAPairIsRefused() throws IOException {
    Path folder = temp.resolve("class");
    new BeginInstrument(Clock.systemUTC(), "Käthe")
        .begin(folder.resolve("pair-01"), Optional.of("Rind"), Optional.empty());
    Checked<SchoolClass> made = job.make(folder, wish(Optional.of(DESIGN)));
    assertThat(made.isOk()).isFalse();
    assertThat(WORDS.lines(made.problems()))
        .contains("pair-01 holds an instrument already", "Käthe");
    assertThat(folder.resolve("pair-02")).doesNotExist();
  }

  @Test
  void nicknamesAreOnePairsAndOnOneLine() throws IOException {
    Path folder = temp.resolve("class");
    Checked<SchoolClass> made =
        job.make(folder, wish(List.of(), List.of("Otters", "otters ", "New\nts", "")));
    assertThat(made.isOk()).isFalse();
    assertThat(made.problems())
        .extracting(Problem::id)
        .containsExactly("class.nickname-twice", "class.nickname-control");
    assertThat(folder).doesNotExist();
  }

  @Test
  void aLessonOfAnotherAgeIsTold() throws IOException {
    LocalDateTime now = LocalDateTime.now(Clock.systemUTC());
    List<Lesson> lessons =
        Stream.of(now.minusDays(360), now.plusYears(4), now.minusYears(2), now.plusYears(7000))
            .map(at -> new Lesson(at, 45))
            .toList();
    Checked<SchoolClass> made = job.make(temp.resolve("class"), wish(lessons, List.of("")));
    assertThat(made.isOk()).isTrue();
    assertThat(made.problems())
        .extracting(Problem::id)
        .containsExactly("class.lesson-far", "class.lesson-far");
  }

  private static MakeClass.Wish wish(List<Lesson> lessons, List<String> nicknames) {
    return new MakeClass.Wish("Year 10", "", lessons, nicknames, List.of(), Optional.empty(), "");
  }

  /** The journal of a pair that was only begun gets the rest, and is whole. */
  @Test
  void aPairThatWasOnlyBegunIsCompleted() throws IOException {
    Path folder = temp.resolve("class");
    job.make(folder, wish(Optional.of(DESIGN)));
    Path journal = folder.resolve("pair-02/journal.jsonl");
    Files.writeString(journal, Files.readAllLines(journal).get(0) + "\n");
    Files.deleteIfExists(folder.resolve("pair-02/instrument.json"));
    Files.delete(folder.resolve("class.json"));

    assertThat(job.make(folder, wish(Optional.of(DESIGN))).problems()).isEmpty();
    InstrumentFolder.Opened pair = new InstrumentFolder(folder.resolve("pair-02")).open();
    assertThat(pair.problems()).isEmpty();
    assertThat(pair.state().designJson()).isPresent();
    assertThat(pair.state().answer("choose-use", "group")).isPresent();
  }

  @Test
  void theDesignOfAnInstrumentIsTaken() throws IOException {
    Path cellar = Path.of("demo-projects/cellar");
    Path folder = temp.resolve("class");
    assertThat(job.make(folder, wish(Optional.of(cellar))).problems()).isEmpty();
    String design = new InstrumentFolder(cellar).open().state().designJson().orElseThrow();
    assertThat(folder.resolve("design.json")).hasContent(design);

    Path without = temp.resolve("class/pair-01");
    assertThat(job.make(without, wish(Optional.empty())).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.id()).isEqualTo("class.in-instrument"));
  }

  @Test
  void anInstrumentWithoutADesignIsRefusedAndNothingIsWritten() throws IOException {
    Path plain = temp.resolve("plain");
    job.make(plain, wish(Optional.empty()));
    Path folder = temp.resolve("class");
    Checked<SchoolClass> made = job.make(folder, wish(Optional.of(plain.resolve("pair-01"))));
    assertThat(WORDS.lines(made.problems())).contains("has no design yet");
    assertThat(folder).doesNotExist();
  }
}
