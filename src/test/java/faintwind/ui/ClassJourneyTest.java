package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Three lessons in rehearsal: five virtual builds, two of them faulty, from the teacher's window
 * and one pair's, on one folder.
 */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class ClassJourneyTest {
  private final MovedClock clock =
      new MovedClock(OffsetDateTime.parse("2026-11-21T14:30:00Z").toInstant());

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void threeLessonsFromTheTeachersWindowAndOnePairs(FxRobot robot) throws IOException {
    RehearsedClass.into(folder, clock);
    Cellar.begin("Mine").design().into(folder, "mine"); // the teacher's own, of no pair
    Journey teacher = new Journey(robot, folder, clock).asked();
    teacher.open(1366, 800);
    Waiting.until(() -> teacher.there("#open-class"));
    teacher.fire("#open-class");
    Waiting.until(() -> said(teacher, "#class-state-pair-03").startsWith("Stopped."));
    assertThat(teacher.wordsHere("#next-sentence")).isEqualTo("Stuck: Pair 3, Pair 4");
    assertThat(said(teacher, "#class-state-mine")).contains("belongs to no pair");
    assertThat(teacher.wordsHere("#class-lesson")).startsWith("Lesson 1: 21 November 2026");
    assertThat(teacher.wordsHere("#class-spread"))
        .contains("Pair 4 lies outside with 104.0 Ω", "colour code");
    assertThat(teacher.wordsHere("#class-clocks")).contains("Pair 5", "done by lesson 2");
    eachStateIsCloseBelowItsPair(robot, teacher);
    teacher.pictures("class");
    theBoardLooksAgainAndLeavesTheFocus(robot, teacher);
    teacherLooksIntoAPair(teacher);
    onePairWorks(robot, teacher);
    secondLesson(robot, teacher);
    thirdLesson(teacher);
    teacher.close();
  }

  private static void eachStateIsCloseBelowItsPair(FxRobot robot, Journey teacher) {
    double wide = teacher.stage().getWidth();
    robot.interact(() -> teacher.stage().setWidth(1920));
    WaitForAsyncUtils.waitForFxEvents();
    for (int pair = 1; pair <= 5; pair++) {
      Bounds name = robot.lookup("#class-pair-pair-0" + pair).query().getBoundsInParent();
      Bounds state = robot.lookup("#class-state-pair-0" + pair).query().getBoundsInParent();
      assertThat(state.getMinY() - name.getMaxY()).as("pair %s", pair).isLessThan(8);
    }
    robot.interact(() -> teacher.stage().setWidth(wide));
  }

  /** Drawn anew with each look: who stands at a pair's name by the keys still does. */
  private void theBoardLooksAgainAndLeavesTheFocus(FxRobot robot, Journey teacher) {
    Node name = robot.lookup("#class-pair-pair-02").query();
    robot.interact(name::requestFocus);
    clock.move(Duration.ofSeconds(70));
    Waiting.until(() -> name.getScene() == null);
    assertThat(teacher.stage().getScene().getFocusOwner().getId()).isEqualTo("class-pair-pair-02");
  }

  /** From the board into the stuck pair's instrument, and back to the board. */
  private static void teacherLooksIntoAPair(Journey teacher) {
    teacher.fire("#class-pair-pair-04");
    Waiting.until(() -> teacher.there("#step-title"));
    assertThat(teacher.wordsHere("#who")).isEqualTo("Pair 4");
    teacher.press(KeyCode.ALT, KeyCode.HOME);
    Waiting.until(() -> teacher.there("#open-class"));
    teacher.fire("#open-class");
    Waiting.until(() -> said(teacher, "#class-state-pair-03").startsWith("Stopped."));
  }

  /** The pair's own window: what it enters is in the teacher's a moment later. */
  private void onePairWorks(FxRobot robot, Journey teacher) throws IOException {
    String before = said(teacher, "#class-state-pair-01");
    Journey pair = new Journey(robot, folder, clock);
    pair.open(1280, 800);
    pair.openInstrument("pair-01");
    pair.step("glue-heater");
    Waiting.until(() -> said(teacher, "#class-state-pair-01").endsWith("Open at another window."));
    assertThat(before).doesNotContain("another window");
    pair.close();
    Waiting.until(() -> said(teacher, "#class-state-pair-01").equals(before));
  }

  /** Two days later: the clock has ended, and the teacher signs a doubtful reading by the code. */
  private void secondLesson(FxRobot robot, Journey teacher) throws IOException {
    clock.move(Duration.ofDays(2));
    Waiting.until(() -> said(teacher, "#class-lesson").startsWith("Lesson 2"));
    assertThat(teacher.there("#class-clocks")).isFalse();
    write(robot, "#class-because", "the meter was cold in the morning");
    write(robot, "#class-code", "1234");
    teacher.fire("#class-sign-4-heater-alone");
    Waiting.until(() -> said(teacher, "#class-sign-remark").contains("not the teacher's"));
    write(robot, "#class-code", "4711");
    teacher.fire("#class-sign-4-heater-alone");
    Waiting.until(() -> said(teacher, "#class-remark").equals("Signed."));
    assertThat(Files.readString(folder.resolve("pair-04/journal.jsonl")))
        .contains("(signed by the teacher's code)");
  }

  /** The folder of one pair drops off the network; on the projector no nickname is shown. */
  private void thirdLesson(Journey teacher) throws IOException {
    clock.move(Duration.ofDays(2));
    Files.move(folder.resolve("pair-02"), folder.resolve(".gone"));
    Waiting.until(() -> said(teacher, "#class-state-pair-02").contains("not there any more"));
    assertThat(said(teacher, "#class-pair-pair-01")).isEqualTo("Pair 1, Otters");
    teacher.fire("#class-projector");
    Waiting.until(() -> said(teacher, "#class-pair-pair-01").equals("Pair 1"));
    assertThat(said(teacher, "#class-state-pair-02")).isEqualTo("Its folder needs you");
    assertThat(teacher.there("#class-state-mine")).isFalse();
    teacher.pictures("class-projector");
    Path report = folder.resolve("report.html");
    teacher.choose(report);
    teacher.fire("#class-report");
    Waiting.until(() -> Files.exists(report));
    assertThat(Files.readString(report)).contains("Pair 3", "not calibrated yet");
  }

  private static String said(Journey journey, String id) {
    return journey.there(id) ? journey.wordsHere(id) : "";
  }

  private static void write(FxRobot robot, String id, String text) {
    robot.interact(() -> robot.lookup(id).queryAs(TextInputControl.class).setText(text));
  }
}
