package faintwind.ui.frame;

import java.awt.Desktop;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** Asks for a file or folder with the system's own dialog. Tests answer in its place. */
public interface FileQuestion {

  /** The folder in which the next question begins: the instrument's, until another was chosen. */
  default void beginIn(Path folder) {}

  /** A file to read. */
  Optional<Path> open(String title, String kind, String... patterns);

  /** A file to write. */
  Optional<Path> save(String title, String suggestedName);

  /**
   * Opens a file with the system's own program for it, where there is one; the file stays where it
   * is in any case.
   */
  default void show(Path file) {}

  /** The system's dialogs over a window. */
  static FileQuestion over(Window owner) {
    return new FileQuestion() {
      private Optional<Path> begin = Optional.empty();

      @Override
      public void beginIn(Path folder) {
        begin = Optional.of(folder);
      }

      private Optional<File> folder() {
        return begin.map(Path::toAbsolutePath).filter(Files::isDirectory).map(Path::toFile);
      }

      /** What is looked for next is likely to lie beside what was chosen last. */
      private Optional<Path> chosen(@Nullable File file) {
        Optional<Path> path = Optional.ofNullable(file).map(File::toPath);
        path.map(Path::getParent).ifPresent(this::beginIn);
        return path;
      }

      @Override
      public Optional<Path> open(String title, String kind, String... patterns) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().add(new ExtensionFilter(kind, patterns));
        folder().ifPresent(chooser::setInitialDirectory);
        return chosen(chooser.showOpenDialog(owner));
      }

      @Override
      public Optional<Path> save(String title, String suggestedName) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.setInitialFileName(suggestedName);
        folder().ifPresent(chooser::setInitialDirectory);
        return chosen(chooser.showSaveDialog(owner));
      }

      @Override
      public void show(Path file) {
        // A thread of its own: starting another program can take seconds.
        Thread opener = new Thread(() -> openWithSystem(file), "open " + file.getFileName());
        opener.setDaemon(true);
        opener.start();
      }
    };
  }

  private static void openWithSystem(Path file) {
    if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
      return;
    }
    try {
      Desktop.getDesktop().open(file.toFile());
    } catch (IOException noProgram) {
      // The screen says where the file is; it can be opened by hand.
      System.Logger log = System.getLogger(FileQuestion.class.getName());
      log.log(System.Logger.Level.DEBUG, "no program opens {0}", file);
    }
  }
}
