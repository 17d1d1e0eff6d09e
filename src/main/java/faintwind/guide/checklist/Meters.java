package faintwind.guide.checklist;

import faintwind.record.Event.MeterChosen;
import faintwind.record.InstrumentState;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The classes of meters that are known, and which one counts where none was chosen.
 *
 * @param classes all of them
 * @param usual id of the one that counts where none was chosen; may be empty: then readings are
 *     judged as if the meter were never wrong
 */
public record Meters(List<MeterClass> classes, String usual) {
  /** No meter is known: readings are taken as they are. */
  public static final Meters NONE = new Meters(List.of(), "");

  public Meters {
    classes = List.copyOf(classes);
  }

  /** The class of that id. */
  public Optional<MeterClass> find(String id) {
    return classes.stream().filter(m -> m.id().equals(id)).findFirst();
  }

  /** The class that counts where none was chosen. */
  public Optional<MeterClass> usualClass() {
    return find(usual);
  }

  /**
   * Whether the range is on record on which over range was seen at a time, though it was not typed:
   * a meter was chosen that picks its range itself. Where no class is known at all, readings are
   * taken as they are.
   */
  public boolean knowsRange(InstrumentState state, OffsetDateTime when) {
    return classes.isEmpty() || chosen(state, when).filter(MeterClass::picksRange).isPresent();
  }

  /**
   * The meter in use at a time: a better one chosen later says nothing of an earlier reading. Where
   * the chosen class is not known any more, the usual one counts.
   */
  public Optional<MeterClass> at(InstrumentState state, OffsetDateTime when) {
    return chosen(state, when).or(this::usualClass);
  }

  private Optional<MeterClass> chosen(InstrumentState state, OffsetDateTime when) {
    return state
        .last(MeterChosen.class, line -> !line.at().isAfter(when))
        .flatMap(line -> find(line.event().meter()));
  }
}
