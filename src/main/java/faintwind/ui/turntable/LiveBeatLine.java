package faintwind.ui.turntable;

import java.util.List;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;

/** Beats and taps on one line that runs past "now". With the focus, the space bar taps. */
final class LiveBeatLine extends Region {
  private static final double HEIGHT = 58;
  private static final double AXIS = 24;
  private static final double NOW = 0.81;
  private static final double SHOWN_BEATS = 16;

  private final Runnable tap;

  LiveBeatLine(String accessibleText, Runnable tap) {
    this.tap = tap;
    setId("live-beat");
    getStyleClass().add("live-beat");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(accessibleText);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMinWidth(200);
    setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.SPACE) {
            event.consume();
            tap.run();
          }
        });
    setOnMousePressed(
        event -> {
          requestFocus();
          tap.run();
        });
  }

  @Override
  public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
    if (action == AccessibleAction.FIRE) {
      tap.run();
    } else {
      super.executeAccessibleAction(action, parameters);
    }
  }

  /**
   * Draws the line.
   *
   * @param since_s time since the first beat, s
   * @param period_s from beat to beat, s; 0 where there is no beat
   * @param taps times of taps since the first beat, s
   */
  void show(double since_s, double period_s, List<Double> taps) {
    getChildren().clear();
    add(new Line(0, AXIS, getWidth(), AXIS), "live-axis");
    if (!(period_s > 0)) {
      return;
    }
    double perSecond = getWidth() / (SHOWN_BEATS * period_s);
    double now = NOW * getWidth();
    long first = (long) Math.ceil((since_s - now / perSecond) / period_s);
    long last = (long) Math.floor((since_s + (getWidth() - now) / perSecond) / period_s);
    for (long beat = Math.max(first, -4); beat <= last; beat++) {
      double x = now + (beat * period_s - since_s) * perSecond;
      add(
          new Line(x, AXIS - 9, x, AXIS + 9),
          beat * period_s <= since_s ? "live-beat-past" : "live-beat-ahead");
    }
    for (double tapped_s : taps) {
      double x = now + (tapped_s - since_s) * perSecond;
      if (x >= 0 && x <= getWidth()) {
        add(new Circle(x, AXIS, 4.5), "live-tap");
      }
    }
    add(new Line(now, AXIS - 22, now, AXIS + 22), "live-now");
  }

  private void add(Shape shape, String styleClass) {
    shape.getStyleClass().add(styleClass);
    shape.setManaged(false);
    shape.setMouseTransparent(true);
    getChildren().add(shape);
  }
}
