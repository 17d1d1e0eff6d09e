package faintwind.ui;

import faintwind.ui.frame.Frame;
import faintwind.ui.frame.Look;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** Colours, text size and fit of the window, as a person chose them. */
final class Dress {
  private static final double BASE_FONT_PX = 15;

  private final Stage stage;
  private final Frame frame;
  private final Look look;

  Dress(Stage stage, Frame frame, Look look) {
    this.stage = stage;
    this.frame = frame;
    this.look = look;
    // the toolkit's own hint is neither in the language of the window nor gone before it closes
    stage.setFullScreenExitHint("");
  }

  /** Puts the style sheets on and follows what is chosen. */
  void put(Scene scene) {
    scene
        .getStylesheets()
        .addAll(
            stylesheet("/faintwind/ui/tokens.css"),
            stylesheet("/faintwind/ui/faintwind.css"),
            stylesheet("/faintwind/ui/data.css"));
    look.theme().addListener((property, was, now) -> root());
    look.textPct().addListener((property, was, now) -> root());
    look.lessMotion().addListener((property, was, now) -> root());
    look.projector().addListener((property, was, now) -> root());
    root();
  }

  private void root() {
    // In one step: without any theme the colour tokens are unknown.
    List<String> classes = new ArrayList<>(frame.getStyleClass());
    classes.removeIf(name -> name.startsWith("fw-"));
    classes.add(look.theme().get().styleClass());
    frame.getStyleClass().setAll(classes);
    frame.setStyle("-fx-font-size: " + BASE_FONT_PX * look.effectivePct() / 100 + "px;");
    fit();
  }

  void fit() {
    frame.fit(look.effectivePct(), look.projector().get());
    stage.setFullScreen(look.projector().get());
  }

  /** Address of a style sheet in the program. */
  static String stylesheet(String name) {
    return Objects.requireNonNull(Dress.class.getResource(name), name).toExternalForm();
  }
}
