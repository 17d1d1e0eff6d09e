package faintwind.ui;

import java.util.function.Consumer;
import javafx.event.ActionEvent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextInputControl;
import org.testfx.api.FxRobot;

/** Goes through the pages of the field beside that of a log, and stops at each. */
final class AirWalk {
  private final FxRobot robot;
  private final Consumer<String> stop;

  AirWalk(FxRobot robot, Consumer<String> stop) {
    this.robot = robot;
    this.stop = stop;
  }

  /** From the field to its other pages, one after the other. */
  void all() {
    fire("#field-page-summary");
    await("#summary-hours");
    stop.accept("summary");
    fire("#field-page-opening");
    await("#opening-form");
    stop.accept("opening");
    layOpening();
    stop.accept("opening-caution");
    fire("#caution-opening-read");
    await("#air-1-speed");
    stop.accept("opening-points");
    fill(8);
    await("#flow-keep");
    stop.accept("opening-flow");
    fire("#field-page-survey");
    await("#survey-place-1");
    type("#survey-place-1", "Window sill, north");
    type("#survey-place-2", "Door to the store room");
    fill(3);
    await("#survey-keep");
    stop.accept("survey");
  }

  /** A duct of 315 mm with two points on a radius. */
  private void layOpening() {
    type("#opening-width-mm", "315");
    type("#opening-count", "2");
    robot.interact(
        () -> robot.lookup("#opening-rule").queryAs(ComboBox.class).getSelectionModel().select(1));
    fire("#opening-lay");
    await("#flow-cautions");
  }

  private void fill(int places) {
    for (int i = 1; i <= places; i++) {
      type("#air-" + i + "-speed", "0.2" + i);
      type("#air-" + i + "-u95", "0.012");
    }
  }

  private void type(String id, String text) {
    robot.interact(
        () -> {
          TextInputControl field = robot.lookup(id).queryAs(TextInputControl.class);
          field.setText(text);
          field.fireEvent(new ActionEvent());
        });
  }

  private void await(String id) {
    Waiting.until(() -> robot.lookup(id).tryQuery().isPresent());
  }

  private void fire(String id) {
    await(id);
    robot.interact(() -> robot.lookup(id).queryAs(ButtonBase.class).fire());
  }
}
