package faintwind.ui;

import faintwind.record.InstrumentState;
import java.nio.file.Path;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The instrument that is open in the window: its folder and its state as the journal tells it. */
public final class OpenInstrument {
  private final Path folder;
  private final ReadOnlyObjectWrapper<InstrumentState> state;

  OpenInstrument(Path folder, InstrumentState state) {
    this.folder = folder;
    this.state = new ReadOnlyObjectWrapper<>(state);
  }

  public Path folder() {
    return folder;
  }

  /** Everything the journal says; changes with each entry, on the JavaFX thread. */
  public ReadOnlyObjectProperty<InstrumentState> state() {
    return state.getReadOnlyProperty();
  }

  public String name() {
    return state.get().name().orElse(String.valueOf(folder.getFileName()));
  }

  public boolean madeUp() {
    return state.get().madeUp();
  }
}
