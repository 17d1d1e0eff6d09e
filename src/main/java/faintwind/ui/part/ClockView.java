package faintwind.ui.part;

import faintwind.ui.fold.Prose;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A clock in the margin: name, time left, a bar, start and end in words. */
public final class ClockView extends VBox {
  private static final int LONGEST_TIME = 10;

  private final Label name = new Prose();
  private final Label left = new Prose();
  private final ProgressBar bar = new ProgressBar();
  private final Label about = new Prose();

  /**
   * What a clock shows.
   *
   * @param name such as "Epoxy stays soft"
   * @param left time left in words; after the end what stands there in its place
   * @param share share of the time that has gone, 0 to 1
   * @param about start and end in words
   */
  public record Face(String name, String left, double share, String about) {}

  public ClockView(String id, Face face) {
    setId(id);
    getStyleClass().add("clock");
    name.getStyleClass().addAll("tell", "semibold");
    name.setWrapText(true);
    left.getStyleClass().add("clock-left");
    about.getStyleClass().addAll("fine", "soft");
    about.setWrapText(true);
    bar.getStyleClass().add("clock-bar");
    bar.setMaxWidth(Double.MAX_VALUE);
    Boxes.grow(name);
    HBox head = Boxes.row("clock-head", name, left);
    getChildren().addAll(head, bar, about);
    show(face);
  }

  /** A time such as "3 h" stays on one line; what is said after the end may need more. */
  private static String unbroken(String left) {
    return left.length() <= LONGEST_TIME ? left.replace(' ', '\u00a0') : left;
  }

  /** Shows another moment. */
  public void show(Face face) {
    name.setText(face.name());
    left.setText(unbroken(face.left()));
    bar.setProgress(Math.max(0, Math.min(1, face.share())));
    about.setText(face.about());
    setAccessibleText(face.name() + ", " + face.left() + ". " + face.about());
  }
}
