package faintwind.job.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.WriterLock;
import faintwind.guide.CautionQuestions;
import faintwind.guide.Gate;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Step;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.job.lesson.SignOff.Signed;
import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event.NoteWritten;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class on a shared folder: whatever is wrong with one pair, the others work on. */
class LookAtClassTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-12-01T09:55Z");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), ZoneOffset.UTC);
  private static final Messages WORDS = Messages.of(Locale.UK);
  private static final String CAUTION = "eyes";
  private static final int PAIRS = 12;

  @TempDir static Path made;
  @TempDir Path temp;
  private Path folder = Path.of("");
  private LookAtClass looking = new LookAtClass(folder, WORDS);

  @BeforeEach
  void twelvePairs() throws IOException {
    folder = temp.resolve("class");
    copy(made.resolve("class"), folder);
    looking = new LookAtClass(folder, WORDS);
  }

  @BeforeAll
  static void makeTwelvePairs() throws IOException {
    List<Lesson> lessons =
        List.of(
            new Lesson(LocalDateTime.parse("2026-12-01T09:50"), 45),
            new Lesson(LocalDateTime.parse("2026-12-03T09:50"), 45));
    MakeClass.Wish wish =
        new MakeClass.Wish(
            "Year 10",
            "",
            lessons,
            Stream.generate(() -> "").limit(PAIRS).toList(),
            List.of("builds", "writes"),
            Optional.of(Path.of("assets/examples/design.json")),
            "4711");
    Checked<SchoolClass> done = new MakeClass(CLOCK, WORDS).make(made.resolve("class"), wish);
    assertThat(done.problems()).isEmpty();
  }

  private ClassLook look() throws IOException {
    return looking
        .look(NOW)
        .fold(
            (look, notes) -> look,
            p -> {
              throw new AssertionError(p.toString());
            });
  }

  private PairLook pair(int number) throws IOException {
    return look().pairs().stream()
        .filter(p -> p.pair().number() == number)
        .findFirst()
        .orElseThrow();
  }

  private void note(int number, String who) throws IOException {
    new AtInstrument(folder.resolve(String.format("pair-%02d", number)), CLOCK, who)
        .work((view, enter) -> enter.plain(Optional.empty(), new NoteWritten("weighed")));
  }

  @Test
  void lessonRolesAndWhatFitsAreSaid() throws IOException {
    ClassLook look = look();
    ClassText text = new ClassText(WORDS);
    assertThat(text.lesson(look)).startsWith("Lesson 1: ").contains("Roles: builds; writes");
    assertThat(look.it().rolesIn(2)).containsExactly("writes", "builds");
    assertThat(text.fits(look, 45)).hasSize(PAIRS).first().asString().contains("10 minutes");
    assertThat(text.json(look)).contains("faintwind-class-look/1");
  }

  @Test
  void eachOfAPairReadsACautionAndAnswersItsQuestion() throws IOException {
    AtInstrument first = new AtInstrument(folder.resolve("pair-01"), CLOCK, "Pair 1");
    assertThat(unread(first)).isEqualTo(2);
    assertThat(first.work((view, enter) -> enter.acknowledge("ready-workplace", CAUTION)).isOk())
        .isTrue();
    assertThat(unread(first)).isEqualTo(1);
    first.work((view, enter) -> enter.acknowledge("ready-workplace", CAUTION));
    assertThat(unread(first)).as("the pair's name stands for each").isZero();
  }

  @Test
  void swappedFoldersAForeignInstrumentAndALostDesignAreTold() throws IOException {
    assertThat(look().pairs()).hasSize(PAIRS).allMatch(pair -> pair.remarks().isEmpty());
    Files.move(folder.resolve("pair-01"), folder.resolve("x"));
    Files.move(folder.resolve("pair-02"), folder.resolve("pair-01"));
    Files.move(folder.resolve("x"), folder.resolve("pair-02"));
    remove(folder.resolve("pair-03"));
    copy(Path.of("demo-projects/cellar"), folder.resolve("pair-03"));
    Files.delete(folder.resolve("design.json"));
    looking = new LookAtClass(folder, WORDS);
    ClassText text = new ClassText(WORDS);
    assertThat(text.pair(pair(1))).contains("Its journal is that of Pair 2");
    assertThat(text.pair(pair(2))).contains("Its journal is that of Pair 1");
    assertThat(text.pair(pair(3))).contains("was not begun for this class");
    assertThat(text.lines(look())).anyMatch(line -> line.contains("design.json:"));
  }

  @Test
  void aBrokenStepOfTheTeachersOwnIsTold() throws IOException {
    Path own = folder.resolve("checklist/01-design/choose-use.json");
    Files.createDirectories(own.getParent());
    Files.writeString(own, "{\"id\":");
    assertThat(new ClassText(WORDS).lines(look()))
        .filteredOn(line -> line.contains("checklist/01-design/choose-use.json"))
        .singleElement()
        .asString()
        .contains("Your own file is not used");
  }

  private static void remove(Path from) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  @Test
  void oneNameCountsOnceHoweverItIsWritten() throws IOException {
    assertThat(read("Ada").problems()).isEmpty();
    for (String again : List.of("Ada", "ADA", " ada ")) {
      assertThat(WORDS.lines(read(again).problems()))
          .contains("has read this caution already: 1 of 2 have", "Pair 1");
    }
    AtInstrument ada = new AtInstrument(folder.resolve("pair-01"), CLOCK, "Ada");
    assertThat(unread(ada)).isEqualTo(1);
    assertThat(WORDS.lines(ada.work((view, enter) -> enter.finish("ready-workplace")).problems()))
        .contains("read by Ada, 1 of 2");
    assertThat(read("Bo").problems()).isEmpty();
    assertThat(unread(ada)).isZero();
  }

  private Checked<?> read(String who) throws IOException {
    return new AtInstrument(folder.resolve("pair-01"), CLOCK, who)
        .work((view, enter) -> enter.acknowledge("ready-workplace", CAUTION));
  }

  /** How often the caution is still to be read; its question is asked as long as it is. */
  private static int unread(AtInstrument pair) throws IOException {
    return pair.work(
            (view, enter) -> {
              Step step = view.checklist().step("ready-workplace").orElseThrow();
              Caution caution = step.caution(CAUTION).orElseThrow();
              int left = view.state().unread(step.id(), CAUTION);
              assertThat(Gate.unread(step, view.situation(NOW)).contains(caution))
                  .isEqualTo(left > 0);
              assertThat(
                      CautionQuestions.of(caution, view.checklist(), view.state(), "Pair 1")
                          .isPresent())
                  .isEqualTo(left > 0);
              return Checked.ok(left);
            })
        .fold((left, notes) -> left, problems -> -1);
  }

  @Test
  void whatIsWrongWithOnePairIsItsRowsReasonAndTheOthersWorkOn() throws IOException {
    look();
    Files.writeString(folder.resolve("pair-02/journal.jsonl"), "{\"id\":\"e1\"} and more\n");
    Files.move(folder.resolve("pair-03"), temp.resolve("gone"));
    copy(folder.resolve("pair-04"), folder.resolve("pair-04 copy"));
    Files.writeString(
        folder.resolve("pair-05/journal.jsonl"),
        "{\"id\":\"x\",\"at\":\"2026-12-01T09:00Z\",\"who\":\"Ida\",\"what\":\"of-tomorrow\"}\n",
        StandardOpenOption.APPEND);
    ClassLook look = look();
    assertThat(look.pairs()).hasSize(PAIRS + 1);
    assertThat(pair(2).trouble()).hasValueSatisfying(t -> assertThat(t).contains("journal"));
    assertThat(pair(3).trouble().orElseThrow()).startsWith("pair-03 is not there any more.");
    assertThat(pair(3).known()).as("what it told last").isPresent();
    assertThat(pair(4).trouble()).isEmpty();
    assertThat(pair(5).trouble().orElseThrow()).contains("of-tomorrow");
    PairLook copy = look.pairs().get(PAIRS);
    assertThat(copy.trouble().orElseThrow()).contains("the same beginning as pair-04");
    assertThat(look.pairs().stream().filter(p -> p.trouble().isEmpty())).hasSize(PAIRS - 3);
    assertThat(new ClassText(WORDS).lines(look)).anyMatch(l -> l.contains("not there any more"));
  }

  @Test
  void folderThatIsOpenElsewhereIsReadAllTheSame() throws IOException {
    try (WriterLock lock =
        WriterLock.take(folder.resolve("pair-07"), "Ida, room 3").orElseThrow()) {
      assertThat(pair(7).remarks()).hasSize(1);
      assertThat(pair(7).trouble()).isEmpty();
      assertThat(new ClassText(WORDS).state(pair(7))).endsWith("Open at another window.");
      assertThat(new ClassText(WORDS).json(look())).as("no names").doesNotContain("Ida");
      assertThat(lock).isNotNull();
    }
    assertThat(pair(7).remarks()).isEmpty();
  }

  @Test
  void onlyWhatChangedIsReadAgainAndTwelveAreRefreshedInAMoment() throws IOException {
    ClassLook first = look();
    note(6, "Ida");
    ClassLook second = look();
    for (int i = 0; i < PAIRS; i++) {
      Object before = first.pairs().get(i).known().orElseThrow();
      Object after = second.pairs().get(i).known().orElseThrow();
      if (i == 5) {
        assertThat(after).as("pair 6").isNotSameAs(before);
      } else {
        assertThat(after).as("pair %d", i + 1).isSameAs(before);
      }
    }
    double least_ms = Double.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      note(6, "Ida");
      long begin = System.nanoTime();
      look();
      least_ms = Math.min(least_ms, (System.nanoTime() - begin) / 1e6);
    }
    System.out.printf("class of %d refreshed in %.0f ms, one pair changed%n", PAIRS, least_ms);
    assertThat(least_ms).isLessThan(300);
  }

  @Test
  void onlyTheCodeSignsInTheTeachersName() throws IOException {
    SignOff signing = new SignOff(folder, CLOCK, WORDS);
    Signed looked = new Signed(2, "choose-use", Optional.empty(), "looked at it together");
    assertThat(signing.sign(looked, "4712").problems())
        .extracting(p -> p.id())
        .containsExactly("class.wrong-code");
    assertThat(signing.sign(looked, "4711").isOk()).isTrue();
    assertThat(Files.readString(folder.resolve("pair-02/journal.jsonl")))
        .contains("(signed by the teacher's code)");
    note(2, " teacher");
    assertThat(Files.readString(folder.resolve("pair-02/journal.jsonl"))).doesNotContain("weighed");
    note(2, "Ida");
    assertThat(Files.readString(folder.resolve("pair-02/journal.jsonl"))).contains("weighed");
    assertThat(Files.readString(folder.resolve("class.json"))).doesNotContain("4711");
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }
}
