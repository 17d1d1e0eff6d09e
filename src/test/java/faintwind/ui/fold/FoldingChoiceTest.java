package faintwind.ui.fold;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.FaintwindApp;
import javafx.scene.Scene;
import javafx.scene.control.ListCell;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class FoldingChoiceTest {
  private final Pane sheet = new Pane();

  @Start
  void start(Stage stage) {
    FaintwindApp.dressProgram();
    stage.setScene(new Scene(sheet, 600, 300));
    stage.show();
  }

  /** A box of two lines for words in one looks like a mistake. */
  @Test
  void itIsAsHighAsItsWordsInTheRoomThatTheyHave(FxRobot robot) {
    FoldingChoice<String> choice = new FoldingChoice<>();
    robot.interact(
        () -> {
          choice.getItems().setAll("riding logger and battery");
          choice.setValue("riding logger and battery");
          sheet.getChildren().setAll(choice);
          sheet.applyCss();
          sheet.layout();
        });
    for (int wide = 120; wide < 400; wide += 5) {
      int width = wide;
      robot.interact(
          () -> {
            choice.resize(width, choice.prefHeight(width));
            choice.layout();
          });
      ListCell<String> words = choice.getButtonCell();
      double around = choice.snappedTopInset() + choice.snappedBottomInset();
      assertThat(choice.getHeight() - around)
          .as("at %s", width)
          .isEqualTo(words.prefHeight(words.getWidth()));
    }
  }
}
