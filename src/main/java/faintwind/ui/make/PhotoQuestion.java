package faintwind.ui.make;

import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javax.imageio.ImageIO;

/** Takes photos of a step, by file, drop or paste, and keeps them in the instrument's folder. */
final class PhotoQuestion {
  private final Desk desk;
  private final OpenInstrument instrument;

  PhotoQuestion(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
  }

  /** Asks for a file. */
  void ask(String step) {
    desk.files()
        .open(
            desk.text("window.step.choose-photo"),
            desk.text("window.step.photo-files"),
            "*.jpg",
            "*.jpeg",
            "*.png")
        .ifPresent(file -> keep(step, file));
  }

  /** Keeps files with a step; what is no whole picture is refused in words. */
  void keep(String step, List<Path> files) {
    files.forEach(file -> keep(step, file));
  }

  private void keep(String step, Path file) {
    String caption = String.valueOf(file.getFileName());
    instrument.enter(enter -> enter.photo(step, file, caption));
  }

  /** Takes files or a picture from the clipboard; tells whether there was anything to take. */
  boolean paste(String step, Clipboard clipboard) {
    if (clipboard.hasFiles()) {
      keep(step, clipboard.getFiles().stream().map(File::toPath).toList());
      return true;
    }
    if (clipboard.hasImage()) {
      Image image = clipboard.getImage();
      String caption = desk.text("window.step.pasted-photo");
      // encoded where entries are written, off the JavaFX thread
      instrument.enter(enter -> enter.pastedPhoto(step, png(image), caption));
      return true;
    }
    return false;
  }

  private static byte[] png(Image image) throws IOException {
    BufferedImage buffered = SwingFXUtils.fromFXImage(image, null);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(buffered, "png", bytes);
    return bytes.toByteArray();
  }

  /** Says while something is dragged over that files may be dropped. */
  static void over(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY);
    }
    event.consume();
  }

  /** Takes dropped files. */
  void drop(String step, DragEvent event) {
    boolean files = event.getDragboard().hasFiles();
    if (files) {
      keep(step, event.getDragboard().getFiles().stream().map(File::toPath).toList());
    }
    event.setDropCompleted(files);
    event.consume();
  }
}
