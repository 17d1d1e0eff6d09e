package faintwind.ui.turntable;

import faintwind.calibration.run.Series;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

/** The signal so far and, dotted, what is expected of the rest; a band for each spin. */
final class LiveTrace extends Region {
  private static final double LEFT = 48;
  private static final double BOTTOM = 44;
  private static final double TOP = 22;
  private static final double RIGHT = 12;
  private static final int[] MINUTES = {1, 2, 5, 10, 20, 30, 60, 120};

  private final String minutes;
  private final String expected;
  private double from_s;
  private double to_s = 1;
  private double low;
  private double high = 1;

  /**
   * A stretch in which the arm turns.
   *
   * @param speed words over it
   * @param here whether it is turned now
   */
  record Band(double from_s, double to_s, String speed, boolean here) {}

  LiveTrace(String minutes, String expected) {
    this.minutes = minutes;
    this.expected = expected;
    setId("live-trace");
    getStyleClass().add("live-trace");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinHeight(140);
    setPrefHeight(140);
    setMinWidth(200);
  }

  /** Draws everything anew. */
  void show(Series seen, Optional<Series> ahead, List<Band> bands) {
    getChildren().clear();
    if (seen.size() < 2 || getWidth() < LEFT + RIGHT + 20) {
      return;
    }
    fit(seen, ahead);
    for (Band band : bands) {
      band(band);
    }
    rules();
    line(seen, "live-seen");
    ahead.ifPresent(path -> line(path, "live-expected"));
    ahead
        .filter(path -> path.size() > 3)
        .ifPresent(
            path -> {
              int k = (int) (0.9 * (path.size() - 1));
              label(expected, x(path.time_s(k)) - 40, y(path.value(k)) - 26, "fine", "soft");
            });
    now(seen);
  }

  private void fit(Series seen, Optional<Series> ahead) {
    from_s = seen.first_s();
    to_s = Math.max(seen.last_s() + 60, ahead.map(Series::last_s).orElse(0.0));
    double least = 0;
    double most = 0;
    for (Series series : ahead.map(a -> List.of(seen, a)).orElse(List.of(seen))) {
      for (int i = 0; i < series.size(); i++) {
        least = Math.min(least, series.value(i));
        most = Math.max(most, series.value(i));
      }
    }
    double span = Math.max(most - least, 1e-9);
    low = least < -0.02 * span ? least : 0;
    high = most + 0.08 * span;
  }

  private double x(double time_s) {
    return LEFT + (time_s - from_s) / (to_s - from_s) * (getWidth() - LEFT - RIGHT);
  }

  private double y(double value) {
    return getHeight() - BOTTOM - (value - low) / (high - low) * (getHeight() - BOTTOM - TOP);
  }

  private void band(Band band) {
    double left = x(Math.max(from_s, band.from_s()));
    double width = Math.max(1, x(Math.min(to_s, band.to_s())) - left);
    add(
        new Rectangle(left, 0, width, getHeight() - BOTTOM),
        band.here() ? "live-band-here" : "live-band");
    if (width > 26) {
      label(band.speed(), left + width / 2 - 14, 2, "fine", band.here() ? "bold" : "soft");
    }
  }

  private void rules() {
    double step = step(high - low);
    for (double v = Math.ceil(low / step) * step; v <= high; v += step) {
      boolean ink = Math.abs(v) < step / 1e6;
      add(new Line(LEFT, y(v), getWidth() - RIGHT, y(v)), ink ? "live-ink-line" : "live-rule");
      String text = String.format(Locale.ROOT, step < 1 ? "%.1f" : "%.0f", v + 0.0);
      label(text.replace('-', '−'), 8, y(v) - 9, "fine", "soft");
    }
    double span_min = (to_s - from_s) / 60;
    int every = MINUTES[MINUTES.length - 1];
    for (int m : MINUTES) {
      if (span_min / m <= 12) {
        every = m;
        break;
      }
    }
    for (double m = Math.ceil(from_s / 60 / every) * every; m * 60 <= to_s; m += every) {
      double at = x(m * 60);
      add(new Line(at, getHeight() - BOTTOM, at, getHeight() - BOTTOM + 5), "live-ink-line");
      label(String.valueOf(Math.round(m)), at - 7, getHeight() - BOTTOM + 7, "fine", "soft");
    }
    label(minutes, getWidth() - 62, getHeight() - 19, "fine", "bold");
  }

  private static double step(double span) {
    double raw = span / 4;
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    double share = raw / power;
    return power * (share < 1.5 ? 1 : share < 3.5 ? 2 : share < 7.5 ? 5 : 10);
  }

  private void line(Series series, String styleClass) {
    Polyline line = new Polyline();
    for (int i = 0; i < series.size(); i++) {
      line.getPoints().addAll(x(series.time_s(i)), y(series.value(i)));
    }
    add(line, styleClass);
  }

  private void now(Series seen) {
    double at = x(seen.last_s());
    double value = y(seen.value(seen.size() - 1));
    add(new Line(at, value, at, getHeight() - BOTTOM), "live-now-line");
    add(new Circle(at, value, 6), "live-now-ball");
  }

  private void add(Shape shape, String styleClass) {
    shape.getStyleClass().add(styleClass);
    shape.setManaged(false);
    getChildren().add(shape);
  }

  private void label(String text, double x, double y, String... styles) {
    Label label = Words.plain(text, styles);
    label.setManaged(false);
    getChildren().add(label);
    label.applyCss();
    label.autosize();
    label.relocate(x, y);
  }
}
