package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.ShippedChecklist;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Standing;
import faintwind.ui.frame.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Keys and clicks do what they were meant for, once; the focus stays at the work. */
@ExtendWith(ApplicationExtension.class)
class KeysAndFocusTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    journey = Journey.of(hands, folder).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  /** Two of a key that waited in the queue: both come before anything new can be seen. */
  private void twice(FxRobot robot, KeyCode code) {
    robot.interact(
        () -> {
          for (int i = 0; i < 2; i++) {
            fire(KeyEvent.KEY_PRESSED, code);
            fire(KeyEvent.KEY_RELEASED, code);
          }
        });
  }

  private void fire(EventType<KeyEvent> type, KeyCode code) {
    Scene scene = journey.stage().getScene();
    Node target = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
    Event.fireEvent(target, new KeyEvent(type, "", "", code, false, true, false, false));
  }

  private boolean isAtATab() {
    Node owner = journey.stage().getScene().getFocusOwner();
    return owner instanceof Hyperlink && String.valueOf(owner.getId()).startsWith("place-");
  }

  private String focused() {
    Node owner = journey.stage().getScene().getFocusOwner();
    return owner == null ? "" : String.valueOf(owner.getId());
  }

  @Test
  void aKeyThatWaitedDoesNotBeginTwoInstrumentsNorTakeADesign(FxRobot robot) throws IOException {
    journey.open();
    journey.fire("#start-parts");
    robot.clickOn("#new-name").write("Rind 7");
    journey.settle();
    twice(robot, KeyCode.ENTER);
    Waiting.until(() -> journey.there("#design-take-first"));
    try (Stream<Path> folders = Files.list(folder)) {
      assertThat(folders.filter(Files::isDirectory)).hasSize(1);
    }
    assertThat(journey.state("rind-7").standing(DesignChosen.class)).isEmpty();
    journey.settle();
    twice(robot, KeyCode.ENTER);
    Waiting.until(() -> journey.there("#outcome-smallest-speed-m-s"));
    Waiting.until(() -> journey.state("rind-7").standing(DesignChosen.class).size() == 1);
    assertThat(journey.there("#design-parts-page")).as("the second key opened the list").isFalse();
    journey.settle();
    journey.press(KeyCode.CONTROL, KeyCode.ENTER);
    Waiting.until(() -> journey.there("#design-parts-page"));
  }

  @Test
  void cautionsAreReadOneByOneWithTheKeyboardAndTheFocusStaysAtThem(FxRobot robot)
      throws IOException {
    Cellar.begin("Rind 2").design().before("glue-heater").open("glue-heater").into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    Waiting.until(() -> focused().startsWith("caution-"));
    int cautions = ShippedChecklist.standard().step("glue-heater").orElseThrow().cautions().size();
    assertThat(cautions).isGreaterThan(1);
    for (int read = 1; read <= cautions; read++) {
      int sofar = read;
      // one at a time, those that were read above it; its answers follow in the order of Tab
      Waiting.until(() -> robot.lookup("#step-cautions .caution").queryAll().size() == sofar);
      journey.press(KeyCode.TAB);
      for (int tabs = 0; tabs < 3 && !focused().endsWith("-read"); tabs++) {
        assertThat(focused()).startsWith("caution-").contains("-not-");
        journey.press(KeyCode.TAB);
      }
      assertThat(focused()).startsWith("caution-").endsWith("-read");
      journey.press(KeyCode.SPACE);
      Waiting.until(() -> acknowledged() == sofar);
      boolean last = read == cautions;
      Waiting.until(() -> !isAtATab() && (last || focused().startsWith("caution-")));
      assertThat(acknowledged()).isEqualTo(read);
    }
  }

  private int acknowledged() {
    return journey.state("r2").standing(CautionAcknowledged.class, "glue-heater").size();
  }

  @Test
  void aDoubleClickWritesOneEntry(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2").design().before("glue-heater").open("glue-heater").into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    Waiting.until(() -> journey.there("#caution-epoxy-skin-not-1"));
    journey.fire("#caution-epoxy-skin-not-1");
    assertThat(journey.words("#step-cautions")).contains("The answer is in the text above.");
    Node answer = robot.lookup("#caution-epoxy-skin-read").query();
    Bounds before = answer.localToScreen(answer.getLayoutBounds());
    robot.doubleClickOn(answer);
    robot.clickOn(MouseButton.PRIMARY); // three in a row
    Waiting.until(() -> acknowledged() > 0);
    Waiting.until(() -> journey.there("#caution-epoxy-final-read"));
    assertThat(acknowledged()).isEqualTo(1);
    for (Node next : robot.lookup("#step-cautions .button").queryAll()) {
      assertThat(
              next.localToScreen(next.getLayoutBounds())
                  .contains(before.getCenterX(), before.getCenterY()))
          .as("an answer stays under the pointer")
          .isFalse();
    }
  }

  @Test
  void aDesignIsTakenBackAndNotDroppedWithoutAQuestion(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2").design().before("weigh-blanks").open("weigh-blanks").into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    robot.interact(() -> journey.window().desk().go().accept(Place.DESIGN));
    Waiting.until(() -> journey.there("#design-diameter"));
    Waiting.until(() -> journey.there("#outcome-smallest-speed-m-s"));
    TextField diameter = robot.lookup("#design-diameter").queryAs(TextField.class);
    String before = diameter.getText();
    change(robot, diameter, "16");
    journey.press(KeyCode.CONTROL, KeyCode.Z);
    Waiting.until(() -> diameter.getText().equals(before));
    Waiting.until(() -> journey.there("#design-parts"));

    change(robot, diameter, "16");
    robot.interact(() -> journey.window().desk().go().accept(Place.RECORD));
    Waiting.until(() -> journey.there("#unsaved-keep"));
    journey.fire("#unsaved-stay");
    assertThat(journey.there("#design-title")).isTrue();
    robot.interact(() -> journey.window().desk().go().accept(Place.RECORD));
    journey.fire("#unsaved-drop");
    Waiting.until(() -> journey.there("#ledger"));
    assertThat(journey.state("r2").standing(DesignChosen.class)).hasSize(1);
  }

  private void change(FxRobot robot, TextField field, String typed) {
    robot.interact(
        () -> {
          field.requestFocus();
          field.setText(typed);
        });
    journey.press(KeyCode.TAB);
    Waiting.until(() -> journey.there("#design-keep"));
  }

  @Test
  void theWindowIsClosedOnlyOnceAllIsKeptOrDropped(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2").design().before("weigh-blanks").open("weigh-blanks").into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    robot.interact(() -> journey.window().desk().go().accept(Place.DESIGN));
    Waiting.until(() -> journey.there("#outcome-smallest-speed-m-s"));
    TextField diameter = robot.lookup("#design-diameter").queryAs(TextField.class);
    // not even the field is left: what stands in it counts all the same
    robot.interact(
        () -> {
          diameter.requestFocus();
          diameter.setText("16");
        });
    askToClose(robot);
    journey.fire("#unsaved-stay");
    assertThat(journey.stage().isShowing()).isTrue();
    askToClose(robot);
    journey.fire("#unsaved-keep");
    Waiting.until(() -> !journey.stage().isShowing());
    List<Standing<DesignChosen>> kept = journey.state("r2").standing(DesignChosen.class);
    assertThat(kept.get(kept.size() - 1).event().json()).contains("16");
    assertThat(kept).hasSize(2);
  }

  private void askToClose(FxRobot robot) {
    Stage stage = journey.stage();
    robot.interact(
        () -> Event.fireEvent(stage, new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
    Waiting.until(() -> journey.there("#unsaved-stay") || !stage.isShowing());
  }

  @Test
  void whatIsTypedInAStepIsOnDiskWhenTheWindowHasClosed(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2")
        .design()
        .before("get-parts")
        .open("get-parts")
        .cautions("get-parts")
        .into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    TextField part = robot.lookup("#entry-part").queryAs(TextField.class);
    TextField price = robot.lookup("#entry-price").queryAs(TextField.class);
    TextField currency = robot.lookup("#entry-currency").queryAs(TextField.class);
    robot.interact(
        () -> {
          part.requestFocus();
          part.setText("Two balls of copper");
          price.setText("9.50");
        });
    askToClose(robot);
    assertThat(journey.words("#next-sentence")).contains("In which currency is the price?");
    journey.fire("#unsaved-stay");
    robot.interact(() -> currency.setText("EUR"));
    askToClose(robot);
    Waiting.until(() -> !journey.stage().isShowing());
    assertThat(journey.state("r2").standing(PartRecorded.class))
        .extracting(line -> line.event().part())
        .containsExactly("Two balls of copper");
  }

  @Test
  void theWindowOpensWhereAndAsLargeAsItWasClosed(FxRobot robot) {
    journey.open(1100, 760);
    Waiting.until(() -> true);
    robot.interact(
        () -> {
          journey.stage().setX(60);
          journey.stage().setY(40);
        });
    journey.close();
    journey.open();
    Waiting.until(() -> journey.stage().getWidth() == 1100);
    assertThat(journey.stage().getHeight()).isEqualTo(760);
    assertThat(journey.stage().getX()).isEqualTo(60);
    assertThat(journey.stage().getY()).isEqualTo(40);
  }

  @Test
  void theLastEntryIsStruckThroughFromTheRecord(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2")
        .design()
        .before("weigh-blanks")
        .open("weigh-blanks")
        .type("weigh-blanks", "blank-a", "9.75")
        .into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    robot.interact(() -> journey.window().desk().go().accept(Place.RECORD));
    Waiting.until(() -> journey.there("#ledger .row"));
    journey.press(KeyCode.CONTROL, KeyCode.Z);
    Waiting.until(() -> journey.there("#record-strike"));
    assertThat(journey.words("#next-sentence")).contains("9.75");
    assertThat(stands()).containsExactly(true);
    journey.fire("#record-strike");
    Waiting.until(() -> stands().equals(List.of(false)));
    Waiting.until(() -> journey.there("#ledger .struck"));
  }

  private List<Boolean> stands() {
    return journey.state("r2").history("weigh-blanks", "blank-a").stream()
        .map(line -> line.stands())
        .toList();
  }
}
