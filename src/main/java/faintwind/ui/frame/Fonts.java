package faintwind.ui.frame;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/** Makes the bundled faces known to JavaFX, so that the window looks the same everywhere. */
public final class Fonts {
  private static final List<String> FACES =
      List.of(
          "Lato-Regular",
          "Lato-Medium",
          "Lato-Semibold",
          "Lato-Bold",
          "Lato-Italic",
          "DejaVuSansMono");

  private Fonts() {}

  public static void load() {
    for (String face : FACES) {
      String name = "/faintwind/assets/fonts/" + face + ".ttf";
      try (InputStream in = Fonts.class.getResourceAsStream(name)) {
        if (in == null || Font.loadFont(in, 15) == null) {
          throw new IllegalStateException("font missing from the program: " + name);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(name, e);
      }
    }
  }
}
