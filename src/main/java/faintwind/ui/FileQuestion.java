package faintwind.ui;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** Asks for a file or folder with the system's own dialog. Tests answer in its place. */
public interface FileQuestion {

  /** A file to read. */
  Optional<Path> open(String title, String kind, String... patterns);

  /** A file to write. */
  Optional<Path> save(String title, String suggestedName);

  /** A folder. */
  Optional<Path> folder(String title);

  /** The system's dialogs over a window. */
  static FileQuestion over(Window owner) {
    return new FileQuestion() {
      @Override
      public Optional<Path> open(String title, String kind, String... patterns) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().add(new ExtensionFilter(kind, patterns));
        return path(chooser.showOpenDialog(owner));
      }

      @Override
      public Optional<Path> save(String title, String suggestedName) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.setInitialFileName(suggestedName);
        return path(chooser.showSaveDialog(owner));
      }

      @Override
      public Optional<Path> folder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        return path(chooser.showDialog(owner));
      }
    };
  }

  private static Optional<Path> path(@org.jspecify.annotations.Nullable File file) {
    return Optional.ofNullable(file).map(File::toPath);
  }
}
