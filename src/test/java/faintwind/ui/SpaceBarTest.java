package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.frame.Screen;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Who turns the arm taps the space bar and looks at the balls, not at what has the focus. */
@ExtendWith(ApplicationExtension.class)
class SpaceBarTest {
  private final AtomicInteger taps = new AtomicInteger();
  private final AtomicInteger pressed = new AtomicInteger();
  private boolean turns = true;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private Button button;

  @SuppressWarnings("NullAway.Init")
  private TextField text;

  private final class Arm implements Screen {
    private final VBox sheet = new VBox(button, text);

    @Override
    public Node sheet() {
      return sheet;
    }

    @Override
    public ObservableValue<Next> next() {
      return new ReadOnlyObjectWrapper<>(Next.say(Mark.DOING, "Turn."));
    }

    @Override
    public boolean space() {
      if (turns) {
        taps.incrementAndGet();
      }
      return turns;
    }
  }

  @Start
  void start(Stage stage) {
    button = new Button("Stop");
    button.setOnAction(event -> pressed.incrementAndGet());
    text = new TextField();
    new ScreenStage(stage).showWithKeys(new Arm());
  }

  @Test
  void itIsATapWhereverTheFocusIsAndTypedInAText(FxRobot robot) {
    robot.interact(() -> button.requestFocus());
    robot.push(KeyCode.SPACE);
    Node tab = robot.lookup("#place-make").query();
    robot.interact(tab::requestFocus);
    robot.push(KeyCode.SPACE);
    assertThat(taps).hasValue(2);
    assertThat(pressed).as("the button that has the focus").hasValue(0);
    robot.interact(() -> text.requestFocus());
    robot.push(KeyCode.SPACE);
    assertThat(taps).hasValue(2);
    assertThat(text.getText()).isEqualTo(" ");
    turns = false;
    robot.interact(() -> button.requestFocus());
    robot.push(KeyCode.SPACE);
    assertThat(pressed).as("no arm turns").hasValue(1);
  }
}
