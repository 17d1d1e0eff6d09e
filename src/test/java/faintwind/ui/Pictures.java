package faintwind.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javax.imageio.ImageIO;

/** Keeps pictures of the window for the README and for the eye. */
final class Pictures {
  private Pictures() {}

  /** Writes a picture of the scene; on the JavaFX thread. */
  static void keep(Scene scene, Path file) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      ImageIO.write(SwingFXUtils.fromFXImage(scene.snapshot(null), null), "png", file.toFile());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
