package faintwind.ui.air;

import faintwind.message.Checked;
import faintwind.record.Event.FileAdded;
import faintwind.record.JournalEntry;
import java.nio.file.Path;

/** Places that are gone to one after another with the instrument. */
interface PlaceList {
  Readings readings();

  AirWays ways();

  /** Takes times of a converted log from now on. */
  void use(Path speeds);

  /** The file of a result that was entered, relative to the instrument's folder. */
  static String file(Checked<JournalEntry> entry) {
    return entry.fold(
        (value, notes) -> value.event() instanceof FileAdded added ? added.file() : "",
        problems -> "");
  }
}
