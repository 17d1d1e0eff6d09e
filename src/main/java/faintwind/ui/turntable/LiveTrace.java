package faintwind.ui.turntable;

import faintwind.calibration.run.Series;
import faintwind.message.Numerals;
import faintwind.ui.part.Words;
import java.util.List;
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
  /** Room round the drawing for its labels, in em. */
  private static final double LEFT_EM = 3.2;

  private static final double BOTTOM_EM = 2.9;
  private static final double TOP_EM = 1.5;
  private static final double RIGHT_EM = 0.8;
  private static final double LEAST_EM = 9.3;
  private static final int[] MINUTES = {1, 2, 5, 10, 20, 30, 60, 120};

  private final String minutes;
  private final String expected;
  private final Label size = Words.whole("");
  private Optional<Series> seen = Optional.empty();
  private Optional<Series> ahead = Optional.empty();
  private List<Band> bands = List.of();
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
    // The drawing follows the size of the words in it.
    size.setManaged(false);
    size.fontProperty().addListener(property -> requestLayout());
    getChildren().add(size);
  }

  private double em() {
    return size.getFont().getSize();
  }

  @Override
  protected double computeMinHeight(double width) {
    return LEAST_EM * em();
  }

  @Override
  protected double computePrefHeight(double width) {
    return LEAST_EM * em();
  }

  @Override
  protected double computeMinWidth(double height) {
    return 2 * LEAST_EM * em();
  }

  /** Draws everything anew. */
  void show(Series nowSeen, Optional<Series> nowAhead, List<Band> nowBands) {
    seen = Optional.of(nowSeen);
    ahead = nowAhead;
    bands = nowBands;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    getChildren().setAll(size);
    seen.filter(s -> s.size() > 1 && getWidth() > 2 * LEAST_EM).ifPresent(this::draw);
  }

  private void draw(Series seen) {
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
              Label word = label(expected, "fine", "soft");
              double left = x(path.time_s(k)) - word.getWidth() / 2;
              double most = getWidth() - word.getWidth();
              word.relocate(Math.min(left, most), y(path.value(k)) - 1.7 * em());
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
    return left() + (time_s - from_s) / (to_s - from_s) * (getWidth() - left() - right());
  }

  private double y(double value) {
    return getHeight() - bottom() - (value - low) / (high - low) * (getHeight() - bottom() - top());
  }

  private void band(Band band) {
    double left = x(Math.max(from_s, band.from_s()));
    double width = Math.max(1, x(Math.min(to_s, band.to_s())) - left);
    add(
        new Rectangle(left, 0, width, getHeight() - bottom()),
        band.here() ? "live-band-here" : "live-band");
    Label speed = label(band.speed(), "fine", band.here() ? "bold" : "soft");
    speed.relocate(left + (width - speed.getWidth()) / 2, 0);
    if (speed.getWidth() > width) {
      getChildren().remove(speed);
    }
  }

  private void rules() {
    double lines = Math.max(1, (getHeight() - bottom() - top()) / (2 * em()));
    double step = step(high - low, Math.min(4, lines));
    for (double v = Math.ceil(low / step) * step; v <= high; v += step) {
      boolean ink = Math.abs(v) < step / 1e6;
      add(new Line(left(), y(v), getWidth() - right(), y(v)), ink ? "live-ink-line" : "live-rule");
      String text = Numerals.places(v + 0.0, step < 1 ? 1 : 0);
      Label value = label(text.replace('-', '−'), "fine", "soft");
      value.relocate(left() - value.getWidth() - 0.4 * em(), y(v) - value.getHeight() / 2);
    }
    double span_min = (to_s - from_s) / 60;
    int every = MINUTES[MINUTES.length - 1];
    for (int m : MINUTES) {
      if (span_min / m <= getWidth() / (4 * em())) {
        every = m;
        break;
      }
    }
    for (double m = Math.ceil(from_s / 60 / every) * every; m * 60 <= to_s; m += every) {
      double at = x(m * 60);
      add(new Line(at, getHeight() - bottom(), at, getHeight() - bottom() + 5), "live-ink-line");
      Label minute = label(String.valueOf(Math.round(m)), "fine", "soft");
      minute.relocate(at - minute.getWidth() / 2, getHeight() - bottom() + 0.4 * em());
    }
    Label axis = label(minutes, "fine", "bold");
    axis.relocate(getWidth() - right() - axis.getWidth(), getHeight() - 1.35 * em());
  }

  private static double step(double span, double lines) {
    double raw = span / lines;
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
    add(new Line(at, value, at, getHeight() - bottom()), "live-now-line");
    add(new Circle(at, value, 6), "live-now-ball");
  }

  private void add(Shape shape, String styleClass) {
    shape.getStyleClass().add(styleClass);
    shape.setManaged(false);
    getChildren().add(shape);
  }

  private Label label(String text, String... styles) {
    Label label = Words.whole(text, styles);
    label.setManaged(false);
    getChildren().add(label);
    label.applyCss();
    label.autosize();
    return label;
  }

  private double left() {
    return LEFT_EM * em();
  }

  private double right() {
    return RIGHT_EM * em();
  }

  private double bottom() {
    return BOTTOM_EM * em();
  }

  private double top() {
    return TOP_EM * em();
  }
}
