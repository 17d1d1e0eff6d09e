package faintwind.ui.frame;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.util.Locale;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Where the keyboard is after the foot of the screen has changed. */
@ExtendWith(ApplicationExtension.class)
class NextLineTest {
  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private NextLine line;

  @SuppressWarnings("NullAway.Init")
  private Scene scene;

  @Start
  void start(Stage stage) {
    line = new NextLine(Messages.of(Locale.ENGLISH));
    scene = new Scene(new VBox(new Button("elsewhere"), line));
    stage.setScene(scene);
    stage.show();
    line.show(offering("plan-make"));
    line.focusTarget().requestFocus();
  }

  @Test
  void sameButtonDrawnAgainKeepsTheFocus(FxRobot robot) {
    robot.interact(() -> line.show(offering("plan-make")));
    assertThat(scene.getFocusOwner().getId()).isEqualTo("plan-make");
  }

  @Test
  void anotherButtonDoesNotTakeTheFocusOfTheLast(FxRobot robot) {
    robot.interact(() -> line.show(offering("heater-on")));
    assertThat(scene.getFocusOwner()).isSameAs(line);
  }

  @Test
  void focusElsewhereStaysThere(FxRobot robot) {
    robot.interact(
        () -> {
          scene.getRoot().getChildrenUnmodifiable().get(0).requestFocus();
          line.show(offering("heater-on"));
        });
    assertThat(scene.getFocusOwner()).isNotSameAs(line);
    assertThat(Focus.isInside(scene.getFocusOwner(), line)).isFalse();
  }

  private static Next offering(String id) {
    return Next.say(Mark.READY, id, new Act(id, id, () -> {}));
  }
}
