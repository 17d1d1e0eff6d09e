package faintwind.ui.fold;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class ProseTest {
  private final VBox sheet = new VBox();

  @Start
  void start(Stage stage) {
    stage.setScene(new Scene(sheet, 400, 300));
    stage.show();
  }

  /** What somebody typed without a space must not push the rest off the window. */
  @Test
  void aWordOfThreeHundredLettersAsksForNoMoreThanALineAndIsShownWhole(FxRobot robot) {
    Prose words = new Prose("m".repeat(300));
    robot.interact(() -> sheet.getChildren().setAll(words));
    double em_px = words.getFont().getSize();
    assertThat(words.minWidth(-1)).isLessThanOrEqualTo(21 * em_px);
    assertThat(words.prefHeight(400)).isGreaterThan(8 * em_px);
  }

  @Test
  void aWordOfOurOwnIsNeverBroken(FxRobot robot) {
    Prose words = new Prose("counter-electromagnetically so");
    robot.interact(() -> sheet.getChildren().setAll(words));
    Prose word = new Prose("electromagnetically");
    robot.interact(() -> sheet.getChildren().add(word));
    assertThat(words.minWidth(-1)).isGreaterThanOrEqualTo(word.prefWidth(-1) - 1);
  }

  @Test
  void itsWordsAreSetHoweverTheyCome() {
    Prose words = new Prose("below 1 Ω");
    assertThat(words.getText()).isEqualTo("below 1\u00a0Ω");
    words.setText("worst -1.0 %");
    assertThat(words.getText()).isEqualTo("worst −1.0\u00a0%");
  }

  @Test
  void theWordsOfLinksAndButtonsAreSetToo() {
    for (Labeled one : List.of(new ProseLink("27 MΩ"), new ProseButton("27 MΩ"))) {
      assertThat(one.getText()).isEqualTo("27\u00a0MΩ");
      one.setText("until -3 °C");
      assertThat(one.getText()).isEqualTo("until −3\u00a0°C");
    }
  }
}
