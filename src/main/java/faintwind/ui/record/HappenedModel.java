package faintwind.ui.record;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event.HandedOver;
import faintwind.record.Event.NoteWritten;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument.Entry;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * What happened to an instrument that no step asks for: something to be remembered, a repair, a
 * hand-over. What is typed waits until it is entered or left.
 */
final class HappenedModel {
  private final Messages words;
  private final Entering entering;
  private final StringProperty said = new SimpleStringProperty("");
  private final StringProperty to = new SimpleStringProperty("");
  private final ObjectProperty<Optional<Step>> step = new SimpleObjectProperty<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Kind>> open =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Next>> next =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /** What it was. */
  enum Kind {
    NOTE,
    REPAIR,
    HAND_OVER;

    private String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Name of the link to its form. */
    String id() {
      return "happened-" + word();
    }

    /** A text that belongs to it. */
    String key(String part) {
      return "happened." + word() + "." + part;
    }
  }

  /** Writes an entry, and tells what came of it. */
  @FunctionalInterface
  interface Entering {
    void enter(Entry entry, Consumer<Checked<JournalEntry>> told);
  }

  HappenedModel(Messages words, Entering entering) {
    this.words = words;
    this.entering = entering;
    said.addListener((property, was, now) -> showNext());
    to.addListener((property, was, now) -> showNext());
    step.addListener((property, was, now) -> showNext());
  }

  /** What is being entered; empty where nothing is. */
  ReadOnlyObjectProperty<Optional<Kind>> open() {
    return open.getReadOnlyProperty();
  }

  /** What to do now; empty where it has nothing to say. */
  ReadOnlyObjectProperty<Optional<Next>> next() {
    return next.getReadOnlyProperty();
  }

  StringProperty said() {
    return said;
  }

  /** To whom it was handed over. */
  StringProperty to() {
    return to;
  }

  /** The step whose work was mended. */
  ObjectProperty<Optional<Step>> step() {
    return step;
  }

  /** The steps whose work can have been mended: those in which something was entered. */
  static List<Step> begun(Checklist checklist, InstrumentState state) {
    Set<String> ids = new HashSet<>();
    state.lines().forEach(line -> line.step().ifPresent(ids::add));
    return checklist.steps().stream().filter(one -> ids.contains(one.id())).toList();
  }

  /** Opens a form, with what was typed in another still in it. */
  void begin(Kind kind) {
    open.set(Optional.of(kind));
    showNext();
  }

  /** Leaves the form. */
  void leave() {
    said.set("");
    to.set("");
    step.set(Optional.empty());
    open.set(Optional.empty());
    next.set(Optional.empty());
  }

  /** Something else is to be read in the Next line; what is typed stays. */
  void say(Next other) {
    next.set(Optional.of(other));
  }

  /** What was typed and not entered. */
  Optional<Unsaved> unsaved() {
    boolean typed = !said.get().isBlank() || !to.get().isBlank();
    return open.get()
        .filter(kind -> typed)
        .map(
            kind ->
                new Unsaved(
                    words.text("happened.unsaved"),
                    complete(kind),
                    words.text("window.unsaved.drop")));
  }

  private boolean isComplete(Kind kind) {
    return switch (kind) {
      case NOTE -> !said.get().isBlank();
      case REPAIR -> !said.get().isBlank() && step.get().isPresent();
      case HAND_OVER -> !to.get().isBlank();
    };
  }

  private void showNext() {
    open.get().ifPresent(kind -> next.set(Optional.of(next(kind))));
  }

  private Next next(Kind kind) {
    return new Next(
        Mark.DOING,
        words.text(kind.key("next")),
        words.text(kind.key("why")),
        complete(kind),
        List.of(new Act("happened-leave", words.text("window.record.leave"), this::leave)));
  }

  /** Enters it; empty while something that it needs is not said. */
  private Optional<Act> complete(Kind kind) {
    return isComplete(kind) ? Optional.of(enter(kind)) : Optional.empty();
  }

  private Act enter(Kind kind) {
    return new Act(
        "happened-enter",
        words.text(kind.key("enter")),
        () -> entering.enter(entry(kind), answer -> entered(kind, answer)));
  }

  private Entry entry(Kind kind) {
    String text = said.get().strip();
    String whom = to.get().strip();
    String mended = step.get().map(Step::id).orElse("");
    return switch (kind) {
      case NOTE -> enter -> enter.plain(Optional.empty(), new NoteWritten(text));
      case REPAIR -> enter -> enter.repair(mended, text);
      case HAND_OVER -> enter -> enter.plain(Optional.empty(), new HandedOver(whom, text));
    };
  }

  private void entered(Kind kind, Checked<JournalEntry> answer) {
    if (answer.isOk()) {
      leave();
      say(
          Next.say(Mark.DONE, words.text(kind.key("done")))
              .withDetail(words.text(kind.key("then"))));
    } else {
      next.set(Optional.of(next(kind).withDetail(words.sentence(answer.problems().get(0)))));
    }
  }
}
