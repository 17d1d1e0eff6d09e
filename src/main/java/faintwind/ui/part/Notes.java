package faintwind.ui.part;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;

/** The note that stands open in the margin, if any, and the control that asked for it. */
public final class Notes {
  private final ReadOnlyObjectWrapper<Optional<Open>> open =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /**
   * A note that is open.
   *
   * @param asker the control that gets the focus back when it closes
   * @param more what stands below its words; such a note belongs to the screen and not to a row
   */
  public record Open(Note note, Node asker, Optional<Node> more) {}

  public ReadOnlyObjectProperty<Optional<Open>> open() {
    return open.getReadOnlyProperty();
  }

  /** Opens a note, or closes it where the same control asks again. */
  public void toggle(Note note, Node asker) {
    boolean same = open.get().map(o -> o.asker() == asker).orElse(false);
    open.set(same ? Optional.empty() : Optional.of(new Open(note, asker, Optional.empty())));
  }

  /** Opens a note of the screen. */
  public void open(Open now) {
    open.set(Optional.of(now));
  }

  /** Closes the note and gives the focus back; tells whether there was one. */
  public boolean close() {
    Optional<Open> was = open.get();
    open.set(Optional.empty());
    was.ifPresent(o -> o.asker().requestFocus());
    return was.isPresent();
  }

  /** Forgets the note without moving the focus, for a change of screen. */
  public void clear() {
    open.set(Optional.empty());
  }
}
