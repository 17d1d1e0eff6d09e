package faintwind.job.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.job.PaperFile;
import faintwind.job.record.AtInstrument;
import faintwind.message.Messages;
import faintwind.record.Event.NoteWritten;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.text.Normalizer;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a shared folder can do to a class, one fault after another: a pair's folder that vanishes
 * and comes back, the whole share gone, a folder half copied, one of a newer program, one copied in
 * the place of another, one that may not be read, a journal cut in the middle, a last line that is
 * being written, a clock an hour fast or slow, folders with umlauts and spaces, two pairs with the
 * same nickname. (Open elsewhere, and copied beside the others: {@link LookAtClassTest}.)
 */
class SharedFolderFaultsTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-12-01T09:55Z");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), ZoneOffset.UTC);
  private static final Messages WORDS = Messages.of(Locale.UK);
  private static final List<String> NICKNAMES = List.of("Otters", "Owls", "Otters", "");

  @TempDir static Path made;
  @TempDir Path temp;
  private Path folder = Path.of("");
  private LookAtClass looking = new LookAtClass(folder, WORDS);

  @BeforeAll
  static void makeFourPairs() throws IOException {
    MakeClass.Wish wish =
        new MakeClass.Wish(
            "Year 10", "", List.of(), List.of("", "", "", ""), List.of(), Optional.empty(), "");
    assertThat(new MakeClass(CLOCK, WORDS).make(made.resolve("class"), wish).isOk()).isTrue();
    // two of one nickname are refused there; by hand they can be written
    ClassFile.write(
        made.resolve("class"),
        new SchoolClass(
            "Year 10",
            "",
            List.of(),
            PairPlaces.pairs(NICKNAMES),
            List.of(),
            Optional.empty(),
            Optional.empty()));
  }

  @BeforeEach
  void lookedAtOnce() throws IOException {
    folder = temp.resolve("class");
    copy(made.resolve("class"), folder);
    looking = new LookAtClass(folder, WORDS);
    assertThat(look(0).pairs()).hasSize(4).allMatch(pair -> pair.trouble().isEmpty());
  }

  private ClassLook look(int minutesLater) throws IOException {
    return looking
        .look(NOW.plusMinutes(minutesLater))
        .fold(
            (look, notes) -> look,
            p -> {
              throw new AssertionError(p.toString());
            });
  }

  private PairLook pair(int number, int minutesLater) throws IOException {
    return look(minutesLater).pairs().get(number - 1);
  }

  private Path journal(int number) {
    return folder.resolve("pair-0" + number).resolve("journal.jsonl");
  }

  private void note(int number, Clock clock) throws IOException {
    assertThat(
            new AtInstrument(folder.resolve("pair-0" + number), clock, "Ida")
                .work((view, enter) -> enter.plain(Optional.empty(), new NoteWritten("weighed")))
                .isOk())
        .isTrue();
  }

  /** Trouble of one pair with what it told last, while the others work on. */
  private void assertLastSeen(int number, int minutesLater, String why) throws IOException {
    ClassLook look = look(minutesLater);
    PairLook pair = look.pairs().get(number - 1);
    assertThat(pair.trouble().orElseThrow())
        .contains(why)
        .endsWith("Last seen at 09:55; what it told then is shown.");
    assertThat(pair.known()).as("what it told last").isPresent();
    assertThat(look.pairs().stream().filter(p -> p.trouble().isEmpty())).hasSize(3);
  }

  @Test
  void folderThatVanishesIsAsLastSeenAndComesBackByItself() throws IOException {
    PairLook before = pair(2, 0);
    Files.move(folder.resolve("pair-02"), temp.resolve("away"));
    assertLastSeen(2, 7, "pair-02 is not there any more.");
    assertLastSeen(2, 20, "pair-02 is not there any more.");
    Files.move(temp.resolve("away"), folder.resolve("pair-02"));
    assertThat(pair(2, 21)).isEqualTo(before);
  }

  @Test
  void lastSeenOnAnotherDayIsSaidWithTheDay() throws IOException {
    Files.move(folder.resolve("pair-02"), temp.resolve("away"));
    assertThat(pair(2, 2 * 24 * 60).trouble().orElseThrow())
        .contains("Last seen at 1 December 2026, 09:55");
  }

  @Test
  void wholeShareThatDropsOffKeepsEveryRowAndComesBack() throws IOException {
    Files.move(folder, temp.resolve("away"));
    ClassLook gone = look(3);
    assertThat(gone.trouble()).isPresent();
    assertThat(gone.pairs()).hasSize(4);
    assertThat(gone.pairs())
        .allSatisfy(
            pair -> {
              assertThat(pair.trouble().orElseThrow()).contains("Last seen at 09:55");
              assertThat(pair.known()).isPresent();
            });
    assertThat(new ClassText(WORDS).lines(gone).get(1)).startsWith("The class folder cannot");
    Files.move(temp.resolve("away"), folder);
    assertThat(look(4).trouble()).isEmpty();
    assertThat(look(4).pairs()).allMatch(pair -> pair.trouble().isEmpty());
  }

  @Test
  void classFileThatIsBeingCopiedIsTheOneOfBefore() throws IOException {
    String whole = Files.readString(folder.resolve("class.json"));
    for (String half : List.of("", whole.substring(0, whole.length() / 2))) {
      Files.writeString(folder.resolve("class.json"), half);
      assertThat(look(1).trouble()).isPresent();
      assertThat(look(1).pairs()).hasSize(4).allMatch(pair -> pair.trouble().isEmpty());
    }
    assertThat(new LookAtClass(folder, WORDS).look(NOW).isOk()).as("never seen").isFalse();
  }

  @Test
  void folderHalfCopiedIsTheOneOfBefore() throws IOException {
    note(2, CLOCK);
    look(0);
    byte[] whole = Files.readAllBytes(journal(2));
    for (int cut : List.of(0, 20, whole.length / 3)) {
      Files.write(journal(2), Arrays.copyOf(whole, cut));
      assertLastSeen(2, 1, "");
    }
    Files.write(journal(2), whole);
    assertThat(pair(2, 2).trouble()).isEmpty();
    Files.delete(folder.resolve("pair-02/instrument.json"));
    assertThat(pair(2, 3).trouble()).as("made again from the journal").isEmpty();
  }

  @Test
  void lastLineThatIsBeingWrittenIsNoTrouble() throws IOException {
    byte[] whole = Files.readAllBytes(journal(2));
    note(2, CLOCK);
    byte[] more = Files.readAllBytes(journal(2));
    Files.write(journal(2), Arrays.copyOf(more, whole.length + 30));
    assertThat(pair(2, 1).trouble()).isEmpty();
    Files.write(journal(2), more);
    assertThat(pair(2, 2).trouble()).isEmpty();
    assertThat(pair(2, 2).known().orElseThrow().looked().view().state().lines())
        .hasSize(pair(1, 2).known().orElseThrow().looked().view().state().lines().size() + 1);
  }

  @Test
  void journalCutInTheMiddleIsTheOneOfBefore() throws IOException {
    note(2, CLOCK);
    note(2, CLOCK);
    look(0);
    List<String> lines = new ArrayList<>(Files.readAllLines(journal(2)));
    lines.set(1, lines.get(1).substring(0, 25));
    Files.write(journal(2), lines);
    assertLastSeen(2, 1, "journal");
    lines.remove(1);
    Files.write(journal(2), lines);
    PairLook lost = pair(2, 2);
    assertThat(lost.trouble()).as("a line that is missing altogether").isPresent();
    assertThat(lost.known().orElseThrow().looked().view().state().lines())
        .as("those of before")
        .hasSizeGreaterThan(lines.size());
  }

  @Test
  void newerFolderTellsSoAndIsReadOnceOnly() throws IOException {
    Files.writeString(
        journal(2),
        Files.readString(journal(2))
            + "{\"id\":\"x\",\"at\":\"2026-12-01T09:00Z\",\"who\":\"I\",\"what\":\"of-tomorrow\"}\n",
        StandardCharsets.UTF_8);
    PairLook newer = pair(2, 1);
    assertThat(newer.trouble().orElseThrow()).contains("of-tomorrow");
    assertThat(pair(2, 2).known().orElseThrow()).isSameAs(newer.known().orElseThrow());
  }

  @Test
  void folderCopiedInThePlaceOfAnotherIsToldAtBoth() throws IOException {
    Files.move(folder.resolve("pair-03"), temp.resolve("away"));
    copy(folder.resolve("pair-02"), folder.resolve("pair-03"));
    assertThat(pair(2, 1).trouble().orElseThrow()).contains("the same beginning as pair-03");
    assertThat(pair(3, 1).trouble().orElseThrow()).contains("the same beginning as pair-02");
  }

  @Test
  void journalThatCannotBeReadIsTheOneOfBefore() throws IOException {
    Files.delete(journal(2));
    Files.createDirectory(journal(2));
    assertLastSeen(2, 1, "");
  }

  @Test
  void folderThatMayNotBeReadIsTheOneOfBefore() throws IOException {
    assumeTrue(!"root".equals(System.getProperty("user.name")), "root may read all");
    Files.setPosixFilePermissions(
        folder.resolve("pair-02"), PosixFilePermissions.fromString("---------"));
    assertLastSeen(2, 1, "");
    Files.setPosixFilePermissions(
        folder.resolve("pair-02"), PosixFilePermissions.fromString("rwxr-xr-x"));
    assertThat(pair(2, 2).trouble()).isEmpty();
  }

  @Test
  void clockThatIsAnHourFastIsRemarkedAndOneThatIsSlowDoesNoHarm() throws IOException {
    note(2, Clock.offset(CLOCK, Duration.ofHours(1)));
    note(3, Clock.offset(CLOCK, Duration.ofHours(-1)));
    PairLook fast = pair(2, 0);
    assertThat(fast.trouble()).isEmpty();
    assertThat(new ClassText(WORDS).state(fast))
        .endsWith("The clock of its machine is fast by 60 minutes.");
    assertThat(pair(3, 0).trouble()).isEmpty();
    assertThat(pair(3, 0).remarks()).isEmpty();
  }

  @Test
  void umlautsAndSpacesAreTheSameHoweverASystemWritesThem() throws IOException {
    String name = "Kühlraum Süd 2";
    String file = Files.readString(folder.resolve("class.json"));
    Files.writeString(folder.resolve("class.json"), file.replace("\"pair-02\"", '"' + name + '"'));
    String apart = Normalizer.normalize(name, Normalizer.Form.NFD);
    assertThat(apart).isNotEqualTo(name);
    Files.move(folder.resolve("pair-02"), folder.resolve(apart));
    ClassLook look = look(1);
    assertThat(look.pairs()).as("and no stranger").hasSize(4);
    assertThat(look.pairs()).allMatch(pair -> pair.trouble().isEmpty());
    assertThat(new ClassPage(WORDS).labels(look)).contains(name);
  }

  @Test
  void twoPairsWithTheSameNicknameAreTwo() throws IOException {
    ClassLook look = look(0);
    assertThat(look.pairs())
        .extracting(PairLook::label)
        .containsExactly("Pair 1, Otters", "Pair 2, Owls", "Pair 3, Otters", "Pair 4");
    String labels = new ClassPage(WORDS).labels(look);
    assertThat(labels).contains("Pair 1, Otters", "Pair 3, Otters");
    assertThat(Collections.frequency(new ClassText(WORDS).fits(look, 45), "")).isZero();
  }

  /** As they would be printed; the first page stood empty, and a label had a row to itself. */
  @Test
  void theLabelsOfAClassBeginOnTheFirstPage() throws IOException {
    Path file = folder.resolve("labels.pdf");
    PaperFile.write(file, new ClassPage(WORDS).labels(look(0)));
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(document)).contains("Pair 1, Otters", "Pair 4");
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }
}
