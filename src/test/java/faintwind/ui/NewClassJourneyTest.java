package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** A teacher makes a class of three pairs in the window, and prints what it needs. */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class NewClassJourneyTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void aClassOfThreePairsIsMadeAndItsBoardSeen(FxRobot robot) throws IOException {
    Journey teacher =
        Journey.of(robot, folder).asked().copy(Path.of("demo-projects/cellar"), "cellar");
    teacher.open(1366, 768);
    Waiting.until(() -> teacher.there("#make-class"));
    teacher.fire("#make-class");
    Waiting.until(() -> teacher.there("#class-new-name"));
    fill(robot, teacher);
    teacher.pictures("class-new");
    teacher.press(KeyCode.F1);
    Waiting.until(() -> teacher.there("#note"));
    assertThat(teacher.words("#note")).contains("Make a class");
    teacher.press(KeyCode.ESCAPE);

    wrongFirst(robot, teacher);
    teacher.fire("#class-new-make");
    Waiting.until(() -> teacher.there("#class-pair-pair-03"));
    assertThat(teacher.wordsHere("#class-title")).startsWith("Year 10: 3 pairs. How strong");
    assertThat(teacher.wordsHere("#class-pair-pair-01")).isEqualTo("Pair 1, Otters");
    assertThat(folder.resolve("year-10/design.json")).exists();

    print(teacher, "#class-labels", "labels.html", "labels.html");
    print(teacher, "#class-sheets", "lesson.html", "lesson-pair-03.html");
    Waiting.until(
        () -> teacher.wordsHere("#class-remark").endsWith("The first is lesson-pair-01.html."));
    homeAndBack(teacher);
    teacher.close();
  }

  private static void fill(FxRobot robot, Journey teacher) {
    teacher.write("#class-new-name", "Year 10");
    teacher.write("#class-new-purpose", "How strong is the draught at our windows?");
    teacher.write("#class-new-pairs", "3");
    teacher.write("#class-new-nicknames", "Otters, , Newts");
    teacher.write("#class-new-first", "2026-12-22 09:50");
    teacher.write("#class-new-count", "3");
    teacher.fire("#class-new-add");
    Waiting.until(() -> teacher.there("#class-new-lesson-3"));
    teacher.fire("#class-new-lesson-2-out");
    Waiting.until(() -> !teacher.there("#class-new-lesson-3"));
    robot.interact(
        () -> {
          ComboBox<?> design = robot.lookup("#class-new-design").queryAs(ComboBox.class);
          assertThat(design.getButtonCell().getText())
              .isEqualTo("Later: each pair chooses its own");
          assertThat(design.getItems()).hasSize(2);
          design.getSelectionModel().select(1);
        });
    Waiting.until(() -> teacher.words("#class-new-design-said").equals("It can be used."));
    teacher.write("#class-new-code", "4711");
  }

  /** The code is typed once only: the box is marked, has the focus, and nothing is written. */
  private void wrongFirst(FxRobot robot, Journey teacher) {
    teacher.fire("#class-new-make");
    Waiting.until(() -> teacher.words("#class-new-again-said").contains("not the same"));
    Waiting.until(
        () ->
            robot.lookup("#class-new-again").queryAll().stream()
                .anyMatch(node -> node.isFocused()));
    assertThat(folder.resolve("year-10")).doesNotExist();
    teacher.write("#class-new-again", "4711");
  }

  private void print(Journey teacher, String button, String asked, String written) {
    teacher.choose(folder.resolve(asked));
    teacher.fire(button);
    Waiting.until(() -> Files.exists(folder.resolve(written)));
  }

  private static void homeAndBack(Journey teacher) {
    teacher.press(KeyCode.ALT, KeyCode.HOME);
    Waiting.until(() -> teacher.there("#open-class-year-10"));
    assertThat(teacher.words("#open-class-year-10")).isEqualTo("Class: Year 10");
    teacher.fire("#open-class-year-10");
    Waiting.until(() -> teacher.there("#class-pair-pair-01"));
  }
}
