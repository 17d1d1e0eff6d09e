package faintwind.record;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One line of the journal.
 *
 * @param id unique in its journal
 * @param at when, with the offset of the place
 * @param who the name given by the person, or {@code faintwind} for what the program did
 * @param step id of the checklist step it belongs to
 * @param event what happened
 */
public record JournalEntry(
    String id, OffsetDateTime at, String who, Optional<String> step, Event event) {

  public JournalEntry {
    if (id.isBlank()) {
      throw new IllegalArgumentException("id is empty, allowed any unique text");
    }
  }
}
