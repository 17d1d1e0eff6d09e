package faintwind.ui.frame;

import faintwind.message.Messages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.Objects;
import javafx.fxml.FXMLLoader;
import javafx.scene.Node;

/** Loads the fixed layout of a screen. */
public final class FxScreen {
  private FxScreen() {}

  /**
   * Loads {@code X.fxml} for an object of class {@code X} and makes that object its controller, so
   * that what the object needs stays constructor arguments. The FXML names no controller; its
   * {@code %key} texts come from the messages.
   *
   * @return the root node of the layout
   * @throws IllegalArgumentException where there is no FXML of that name beside the class
   */
  public static <N extends Node> N load(Object controller, Messages words, Class<N> rootType) {
    String name = controller.getClass().getSimpleName() + ".fxml";
    URL layout = FxScreen.class.getResource("/faintwind/ui/" + name);
    if (layout == null) {
      throw new IllegalArgumentException("no layout faintwind/ui/" + name);
    }
    FXMLLoader loader = new FXMLLoader(layout, words.bundle());
    loader.setController(controller);
    try {
      return rootType.cast(Objects.requireNonNull(loader.load(), name));
    } catch (IOException e) {
      // The layout is inside our own jar: not being able to read it is a broken build.
      throw new UncheckedIOException(name, e);
    }
  }
}
