package faintwind.guide.checklist;

import faintwind.record.Event.OwnFileNoted;
import faintwind.record.InstrumentState;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the journal does not say yet of the teacher's own files that lie over the checklist. */
public final class OwnFiles {
  private OwnFiles() {}

  /** A note for each file that is new, changed, refused, or not there any more. */
  public static List<OwnFileNoted> toNote(Checklist checklist, InstrumentState state) {
    Map<String, OwnFileNoted> known = new LinkedHashMap<>();
    state.standing(OwnFileNoted.class).forEach(l -> known.put(l.event().file(), l.event()));
    List<OwnFileNoted> notes = new ArrayList<>();
    for (OwnFile file : checklist.ownFiles()) {
      OwnFileNoted now = new OwnFileNoted(file.file(), file.sha256(), reasons(file));
      if (!now.equals(known.remove(file.file()))) {
        notes.add(now);
      }
    }
    for (OwnFileNoted gone : known.values()) {
      if (!gone.sha256().isEmpty()) {
        notes.add(new OwnFileNoted(gone.file(), "", ""));
      }
    }
    return notes;
  }

  /** Ids of what is wrong, each with what was found: the journal holds no sentences. */
  private static String reasons(OwnFile file) {
    return file.refused().stream()
        .map(p -> p.found().isEmpty() ? p.id() : p.id() + ": " + p.found())
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
