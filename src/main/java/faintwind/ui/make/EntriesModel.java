package faintwind.ui.make;

import faintwind.guide.checklist.Step;
import faintwind.message.Messages;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.PartRecorded;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What a step's text asks to write down beside readings: notes, parts, the time of a tin. */
final class EntriesModel {
  /** What waits for it is a person, not a gate: id of the photo in a waiver. */
  static final String PHOTO = "photo";

  private final Messages words;
  private final OpenInstrument instrument;
  private final StringProperty hours = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
  private final Map<Step, TypedPart> drafts = new LinkedHashMap<>();

  /** A part as it is typed. */
  record TypedPart(String part, String lot, String price, String currency) {
    static final TypedPart NONE = new TypedPart("", "", "", "");

    private boolean isBlank() {
      return (part + lot + price).isBlank();
    }
  }

  EntriesModel(Desk desk, OpenInstrument instrument) {
    words = desk.words();
    this.instrument = instrument;
  }

  /** Hours that the tin states; empty where the usual time counts. */
  StringProperty hours() {
    return hours;
  }

  /** Why the clock was not started; empty where it was. */
  ReadOnlyStringProperty remark() {
    return remark.getReadOnlyProperty();
  }

  /** Starts the clock of a step, with the time of the tin where one is typed. */
  void startClock(Step step) {
    String typed = hours.get().strip().replace(',', '.');
    remark.set("");
    if (step.asks().clock().flatMap(Step.ClockSpec::own).isEmpty() || typed.isEmpty()) {
      instrument.enter(enter -> enter.startClock(step.id()));
      return;
    }
    if (!typed.matches("\\d{1,4}(\\.\\d+)?")) {
      remark.set(words.text("window.entry.hours-not", hours.get()));
      return;
    }
    double own_h = Double.parseDouble(typed);
    instrument.enter(
        enter -> enter.startClock(step.id(), own_h),
        answer -> {
          remark.set(answer.isOk() ? "" : words.sentence(answer.problems().get(0)));
          if (answer.isOk()) {
            hours.set("");
          }
        });
  }

  /** Keeps a note with a step; an empty one is none. */
  void note(Step step, String text) {
    String note = text.strip();
    if (!note.isEmpty()) {
      instrument.enter(enter -> enter.plain(Optional.of(step.id()), new NoteWritten(note)));
    }
  }

  /**
   * Keeps a part where its step is left; one that lacks something stays typed.
   *
   * @return why it cannot be kept; empty where it is, or nothing was typed
   */
  Optional<String> leavePart(Step step, TypedPart typed) {
    if (typed.isBlank()) {
      drafts.remove(step);
      return Optional.empty();
    }
    return part(step, typed);
  }

  /** What is still typed of a step's part. */
  TypedPart draft(Step step) {
    return drafts.getOrDefault(step, TypedPart.NONE);
  }

  /** A part that lacks something would be lost with the screen. */
  Optional<Unsaved> unsaved() {
    return drafts.entrySet().stream()
        .findFirst()
        .map(
            draft ->
                new Unsaved(
                    words.text(
                        "window.entry.part-unsaved",
                        draft.getKey().title(),
                        lacking(draft.getValue()).orElse("")),
                    Optional.empty(),
                    words.text("window.unsaved.drop")));
  }

  /**
   * Keeps a part with a step; one that lacks something stays a draft.
   *
   * @return why it cannot be kept; empty where it is
   */
  Optional<String> part(Step step, TypedPart typed) {
    Optional<String> lacking = lacking(typed);
    if (lacking.isPresent()) {
      drafts.put(step, typed);
      return lacking;
    }
    drafts.remove(step);
    OptionalDouble price =
        typed.price().isBlank()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(number(typed)));
    PartRecorded part =
        new PartRecorded(
            typed.part().strip(), typed.lot().strip(), price, typed.currency().strip());
    instrument.enter(enter -> enter.plain(Optional.of(step.id()), part));
    return Optional.empty();
  }

  private Optional<String> lacking(TypedPart typed) {
    if (typed.part().isBlank()) {
      return Optional.of(words.text("window.entry.no-part"));
    }
    if (typed.price().isBlank()) {
      return Optional.empty();
    }
    if (!number(typed).matches("\\d{1,9}(\\.\\d{1,2})?")) {
      return Optional.of(words.text("window.entry.no-price"));
    }
    return typed.currency().isBlank()
        ? Optional.of(words.text("window.entry.no-currency"))
        : Optional.empty();
  }

  private static String number(TypedPart typed) {
    return typed.price().strip().replace(',', '.');
  }

  /** Notes and parts of a step that count, the earliest first. */
  List<String> kept(Step step) {
    InstrumentState state = instrument.state();
    List<String> kept = new ArrayList<>();
    for (Standing<NoteWritten> line : state.standing(NoteWritten.class, step.id())) {
      kept.add(line.event().text());
    }
    for (Standing<PartRecorded> line : state.standing(PartRecorded.class, step.id())) {
      kept.add(words.text("window.record.part", line.event().part(), line.event().lot()));
    }
    return kept;
  }
}
