package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * What the models of the data screens share: what there is to show, and what to do now.
 *
 * @param <V> what there is to show
 */
public abstract class DataModel<V> {
  private final Messages words;
  private final ReadOnlyObjectWrapper<V> view;
  private final ReadOnlyObjectWrapper<Next> next =
      new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, ""));

  /**
   * A model with nothing to do yet.
   *
   * @param nothing what it shows
   */
  protected DataModel(Messages words, V nothing) {
    this.words = words;
    this.view = new ReadOnlyObjectWrapper<>(nothing);
  }

  public final ReadOnlyObjectProperty<V> view() {
    return view.getReadOnlyProperty();
  }

  public final ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  protected final void put(V now) {
    view.set(now);
  }

  protected final void say(Next now) {
    next.set(now);
  }

  protected final Messages words() {
    return words;
  }

  /** Words in the person's language. */
  protected final String text(String key, Object... arguments) {
    return words.text(key, arguments);
  }

  /** Problems in sentences with their place. */
  protected final List<String> lines(List<Problem> problems) {
    return problems.stream().map(words::line).toList();
  }

  /** That a file could not be had. */
  protected final String failed(Path file, IOException broke) {
    return text(
        "window.file.failed", String.valueOf(file.getFileName()), DiskWords.say(broke, words));
  }
}
