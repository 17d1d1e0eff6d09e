package faintwind.ui.home;

import faintwind.job.lesson.FoundClass;
import faintwind.message.Messages;
import faintwind.ui.part.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;

/** The classes of the folder, and the way to a new one. */
public final class HomeClasses {
  private final Path folder;
  private final ReadOnlyObjectWrapper<List<FoundClass>> found =
      new ReadOnlyObjectWrapper<>(List.of());
  private Consumer<Path> toBoard = path -> {};
  private Runnable toForm = () -> {};

  HomeClasses(Path folder) {
    this.folder = folder;
  }

  /** Shows the board of a class, or the form for a new one. */
  public void whenAsked(Consumer<Path> board, Runnable form) {
    toBoard = board;
    toForm = form;
  }

  /** Those that were found when the folder was read last. */
  ReadOnlyObjectProperty<List<FoundClass>> found() {
    return found.getReadOnlyProperty();
  }

  /** Reads which there are; never on the JavaFX thread. */
  List<FoundClass> read() throws IOException {
    return FoundClass.in(folder);
  }

  void show(List<FoundClass> now) {
    found.set(now);
  }

  void open(Path its) {
    toBoard.accept(its);
  }

  void make() {
    toForm.run();
  }

  /** A button each. */
  List<Node> buttons(Messages words) {
    return found.get().stream().<Node>map(one -> button(one, words)).toList();
  }

  private Node button(FoundClass one, Messages words) {
    return one.folder().equals(folder)
        ? Words.button("open-class", words.text("class.place"), () -> open(folder))
        : Words.button(
            "open-class-" + one.folder().getFileName(),
            words.text("class.place-named", one.name()),
            () -> open(one.folder()));
  }
}
