package faintwind.ui.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.Repeat;
import faintwind.guide.lesson.SchoolClass;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewClassModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init")
  private Quiet quiet;

  @SuppressWarnings("NullAway.Init")
  private NewClassModel model;

  private final List<Path> boards = new ArrayList<>();
  private int refusals;

  @BeforeEach
  void form() throws Exception {
    Cellar.begin("Attic").design().into(folder, "a");
    Cellar.begin("Bare").into(folder, "b");
    quiet = new Quiet(folder);
    model = new NewClassModel(quiet.desk(), quiet.workspace(), boards::add);
    model.whenRefused(() -> refusals++);
    quiet.answer(); // which instruments have a design
  }

  private NewClassForm boxes() {
    return model.form();
  }

  private static void type(TypedBox box, String text) {
    box.typed().set(text);
  }

  private void fill() {
    type(boxes().name(), "Year 10, spring");
    type(boxes().pairs(), "3");
  }

  private SchoolClass made(String its) throws IOException {
    return ClassFile.read(folder.resolve(its))
        .fold(
            (it, notes) -> it,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  private static String said(TypedBox box) {
    assertThat(box.isRefused()).as(box.said().get().text()).isTrue();
    return box.said().get().text();
  }

  @Test
  void theButtonComesWithTheNameAndTheFolderIsCalledAsTheClass() {
    assertThat(model.next().get().act()).isEmpty();
    type(boxes().name(), "Year 10, spring");
    assertThat(model.next().get().act()).isPresent();
    assertThat(boxes().folder().text()).isEqualTo("year-10-spring");
    type(boxes().folder(), "mine");
    type(boxes().name(), "Year 11");
    assertThat(boxes().folder().text()).isEqualTo("mine");
    model.leave(boxes().folder());
    assertThat(boxes().folder().said().get().text())
        .isEqualTo("It will be " + folder.resolve("mine"));
  }

  @Test
  void allThatIsWrongIsSaidBesideItsBoxAndNothingIsWritten() throws Exception {
    type(boxes().name(), " ");
    type(boxes().pairs(), "31");
    type(boxes().roles(), "builds,, writes");
    type(boxes().code(), "471");
    type(boxes().again(), "472");
    type(boxes().folder(), " ");
    type(boxes().lessons().first(), "2026-12-01 09:50");
    model.make();
    assertThat(refusals).isEqualTo(1);
    assertThat(said(boxes().name())).contains("no name", "Year 10");
    assertThat(said(boxes().pairs())).contains("31 is outside", "from 1 to 30");
    assertThat(said(boxes().roles())).contains("One of the roles");
    assertThat(said(boxes().code())).contains("At least 4 characters");
    assertThat(said(boxes().again())).contains("not the same");
    assertThat(said(boxes().folder())).contains("No folder is named");
    assertThat(said(boxes().lessons().first())).contains("not added yet");
    type(boxes().name(), "Year 10");
    assertThat(model.next().get().mark()).isEqualTo(Mark.ATTENTION);
    assertThat(model.next().get().sentence()).startsWith("7 things are not right yet");
    assertThat(names(folder)).containsExactlyInAnyOrder("a", "b");
    assertThat(quiet.unanswered()).isZero();
  }

  @Test
  void pairsAndNicknamesAreJudgedTogether() {
    fill();
    for (String wrong : List.of("", "0", "three", "2.5", "-1")) {
      type(boxes().pairs(), wrong);
      boxes().pairs().judge();
      assertThat(boxes().pairs().isRefused()).as(wrong).isTrue();
    }
    type(boxes().pairs(), "2");
    type(boxes().nicknames(), "Otters, , Newts");
    model.leave(boxes().nicknames());
    assertThat(said(boxes().nicknames())).contains("more nicknames (3) than pairs (2)");
    type(boxes().pairs(), "4");
    model.leave(boxes().pairs());
    assertThat(boxes().nicknames().said().get().text())
        .isEqualTo("Pair 1, Otters; Pair 2; Pair 3, Newts; Pair 4");
  }

  @Test
  void lessonsComeWeeklyOverAChangeOfClocksAndAreEditedAndTakenOut() {
    NewLessons lessons = boxes().lessons();
    type(lessons.first(), "22 October 2026, 09:50");
    type(lessons.count(), "3");
    model.addLessons();
    assertThat(days(lessons))
        .containsExactly(
            "22 October 2026, 09:50", "29 October 2026, 09:50", "5 November 2026, 09:50");
    assertThat(lessons.first().text()).isEmpty();

    lessons.repeat().set(Repeat.FORTNIGHTLY);
    type(lessons.first(), "2026-12-24 08:00");
    type(lessons.count(), "2");
    type(lessons.minutes(), "90");
    model.addLessons();
    assertThat(days(lessons)).endsWith("24 December 2026, 08:00", "7 January 2027, 08:00");

    type(lessons.rows().get(4).at(), "8 January 2027, 08:00");
    model.removeLesson(lessons.rows().get(0));
    assertThat(lessons.read().get(3).at()).isEqualTo(LocalDateTime.parse("2027-01-08T08:00"));
    assertThat(lessons.read().get(3).minutes()).isEqualTo(90);
    assertThat(lessons.rows()).hasSize(4);
  }

  @Test
  void aLessonThatIsNoneIsRefusedAtItsBox() {
    NewLessons lessons = boxes().lessons();
    for (String wrong : List.of("", "monday", "30 February 2027, 09:50", "2026-12-01 25:00")) {
      type(lessons.first(), wrong);
      model.addLessons();
      assertThat(said(lessons.first())).contains("is not a day and time");
    }
    type(lessons.first(), "2026-12-01 09:50");
    type(lessons.minutes(), "601");
    type(lessons.count(), "0");
    model.addLessons();
    assertThat(said(lessons.minutes())).contains("from 1 to 600");
    assertThat(said(lessons.count())).contains("from 1 to 60");
    assertThat(lessons.rows()).isEmpty();
    type(lessons.minutes(), "45");
    type(lessons.count(), "2");
    model.addLessons();
    type(lessons.rows().get(1).at(), "1 December 2026, 10:34");
    model.leaveLessons();
    assertThat(said(lessons.rows().get(1).at())).contains("lasts until 1 December 2026, 10:35");
    type(lessons.rows().get(1).at(), "1 December 2026, 10:35");
    model.leaveLessons();
    assertThat(lessons.rows().get(1).isRefused()).isFalse();
  }

  @Test
  void onlyInstrumentsWithADesignAreOfferedAndABrokenFileIsRefused() throws Exception {
    NewDesign design = boxes().design();
    assertThat(design.choices().stream().map(NewDesign.Choice::words))
        .containsExactly("Later: each pair chooses its own", "That of Attic");
    Path broken = Files.writeString(folder.resolve("mine.json"), "{\"format\":");
    design.chosen().set(new NewDesign.Choice("mine", java.util.Optional.of(broken)));
    quiet.answer();
    assertThat(design.said().get().refused()).isTrue();
    assertThat(design.said().get().text()).contains("mine.json");
    fill();
    model.make();
    assertThat(refusals).isEqualTo(1);
    assertThat(folder.resolve("year-10-spring")).doesNotExist();

    design.chosen().set(design.choices().get(1));
    quiet.answer();
    model.make();
    quiet.answer();
    assertThat(boards).containsExactly(folder.resolve("year-10-spring"));
    assertThat(made("year-10-spring").design()).hasValue("design.json");
    assertThat(model.unsaved()).isEmpty();
  }

  @Test
  void aClassIsMadeWithAllThatWasFilledIn() throws Exception {
    fill();
    type(boxes().purpose(), "How strong is the draught?");
    type(boxes().nicknames(), "Otters,,Newts");
    type(boxes().code(), "4711");
    type(boxes().again(), "4711");
    type(boxes().lessons().first(), "1 December 2026, 09:50");
    type(boxes().lessons().count(), "2");
    model.addLessons();
    assertThat(model.unsaved()).hasValueSatisfying(q -> assertThat(q).contains("not made yet"));
    model.make();
    assertThat(model.unsaved()).hasValueSatisfying(q -> assertThat(q).contains("being made"));
    assertThat(model.view().get()).isTrue();
    model.make(); // once more while it is made
    quiet.answer();
    SchoolClass it = made("year-10-spring");
    assertThat(it.name()).isEqualTo("Year 10, spring");
    assertThat(it.pairs())
        .extracting(SchoolClass.Pair::nickname)
        .containsExactly("Otters", "", "Newts");
    assertThat(it.roles()).containsExactly("builds", "checks and writes");
    assertThat(it.lessons()).hasSize(2);
    assertThat(it.teacher()).isPresent();
    assertThat(boards).hasSize(1);
    assertThat(quiet.unanswered()).isZero();
  }

  @Test
  void oneThatWasStoppedHalfWayGoesOnAndOneThatIsThereIsRefused() throws Exception {
    fill();
    model.make();
    quiet.answer();
    Path its = folder.resolve("year-10-spring");
    Files.delete(its.resolve("class.json"));
    String journal = Files.readString(its.resolve("pair-01/journal.jsonl"));

    model = new NewClassModel(quiet.desk(), quiet.workspace(), boards::add);
    quiet.answer();
    fill();
    model.make();
    quiet.answer();
    assertThat(boards).hasSize(2);
    assertThat(its.resolve("pair-01/journal.jsonl")).hasContent(journal);

    model = new NewClassModel(quiet.desk(), quiet.workspace(), boards::add);
    quiet.answer();
    fill();
    model.make();
    quiet.answer();
    assertThat(said(boxes().folder())).contains("There is a class in this folder already");
    assertThat(boards).hasSize(2);
  }

  @Test
  void whatTheDiskRefusesIsSaidAndCanBeTriedAgain() throws Exception {
    fill();
    Path inTheWay = Files.writeString(folder.resolve("year-10-spring"), "a file");
    model.make();
    quiet.answer();
    assertThat(model.next().get().mark()).isEqualTo(Mark.BLOCKED);
    assertThat(model.next().get().sentence()).startsWith("Not made yet: ");
    Files.delete(inTheWay);
    model.next().get().act().orElseThrow().run().run();
    quiet.answer();
    assertThat(boards).hasSize(1);
  }

  private static List<String> days(NewLessons lessons) {
    return lessons.rows().stream().map(row -> row.at().text()).toList();
  }

  private static List<String> names(Path folder) throws IOException {
    try (var all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).toList();
    }
  }
}
