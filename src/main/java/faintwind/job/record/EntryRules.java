package faintwind.job.record;

import faintwind.files.lesson.ClassFile;
import faintwind.guide.Situation;
import faintwind.guide.Voids;
import faintwind.guide.Waivers;
import faintwind.guide.checklist.Step;
import faintwind.guide.lesson.SchoolClass;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Classroom;
import faintwind.record.Event;
import faintwind.record.Event.AlterationAccepted;
import faintwind.record.Event.Attached;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockConfirmed;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.Readers;
import faintwind.record.Standing;
import faintwind.record.Strikes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What an entry must be before it is written, beside the rules of its step. */
final class EntryRules {
  private EntryRules() {}

  /**
   * Refuses what would enter a file of the folder anew with other content than it was entered with:
   * that would hide an alteration. A report may be made again.
   *
   * @throws IllegalArgumentException where an event has a way of its own, with its own rules
   */
  static Checked<List<? extends Event>> plain(InstrumentView view, List<? extends Event> events) {
    List<Problem> problems = new ArrayList<>();
    for (Event event : events) {
      if (isJudged(event)) {
        throw new IllegalArgumentException(
            "event = " + event.getClass().getSimpleName() + ", allowed: those without rules");
      }
      boolean report = event instanceof FileAdded added && added.kind() == FileRole.REPORT;
      event
          .attached()
          .filter(file -> !report)
          .flatMap(f -> altered(view, f))
          .ifPresent(problems::add);
    }
    return problems.isEmpty() ? Checked.ok(events) : Checked.refused(problems);
  }

  /** That a file is not the one that was entered, nor accepted since; empty where it is neither. */
  static Optional<Problem> altered(InstrumentView view, Attached now) {
    Optional<Attached> last = entered(view, now.file());
    boolean accepted =
        view.state().standing(AlterationAccepted.class).stream()
            .map(Standing::event)
            .anyMatch(a -> a.place().equals(now.file()) && a.sha256().equals(now.sha256()));
    return last.filter(was -> !was.equals(now) && !accepted)
        .map(
            was ->
                Problem.error(
                    "folder.file-changed", Where.file(now.file()), now.file(), now.sha256()));
  }

  /** A file of the folder as it was entered last; empty where no line in force names it. */
  static Optional<Attached> entered(InstrumentView view, String file) {
    return view.state().lines().stream()
        .filter(Standing::stands)
        .flatMap(line -> line.event().attached().stream())
        .filter(was -> was.file().equals(file))
        .reduce((first, second) -> second);
  }

  /** Whether an event has a way of its own, with its own rules. */
  private static boolean isJudged(Event event) {
    return event instanceof StepFinished
        || event instanceof ReadingEntered
        || event instanceof QuestionAnswered
        || event instanceof CautionAcknowledged
        || event instanceof ClockStarted
        || event instanceof ClockConfirmed
        || event instanceof MeterChosen
        || event instanceof Waived
        || event instanceof Corrected;
  }

  /** Whether an event can stand in another's place: of its kind, and about the same thing. */
  static boolean isLike(Event struck, Event replacement) {
    if (struck instanceof ReadingEntered a && replacement instanceof ReadingEntered b) {
      return a.reading().equals(b.reading());
    }
    if (struck instanceof QuestionAnswered a && replacement instanceof QuestionAnswered b) {
      return a.question().equals(b.question());
    }
    boolean fixed =
        replacement instanceof CautionAcknowledged
            || replacement instanceof Waived
            || replacement instanceof StepFinished;
    return !fixed && struck.getClass().equals(replacement.getClass());
  }

  /**
   * That somebody without a code goes by the name of a teacher whose class asks for one; empty
   * where nobody does. Where the file of the class cannot be used, nobody goes by the name of the
   * teacher that the journal knows.
   */
  static Optional<Problem> unsigned(InstrumentView view, String who) {
    Path around = view.path().toAbsolutePath().normalize().getParent();
    if (around == null || !Files.isRegularFile(around.resolve(ClassFile.NAME))) {
      return Optional.empty();
    }
    try {
      return ClassFile.read(around)
          .fold(
              (it, notes) ->
                  it.teacher()
                      .map(SchoolClass.Teacher::name)
                      .filter(name -> Classroom.isSame(name, who))
                      .map(name -> Problem.error("enter.no-code", Where.NOWHERE, name)),
              problems -> asTeacher(view, who, around));
    } catch (IOException unreadable) {
      return asTeacher(view, who, around);
    }
  }

  /** That the file of the class, which would tell whether a code is asked for, cannot be used. */
  private static Optional<Problem> asTeacher(InstrumentView view, String who, Path around) {
    return view.state()
        .teacher()
        .filter(name -> Classroom.isSame(name, who))
        .map(
            name ->
                Problem.error(
                    "enter.class-broken",
                    Where.file(around.resolve(ClassFile.NAME).toString()),
                    name,
                    String.valueOf(around)));
  }

  /** Why a correction may not be written; empty where it may. */
  static Optional<Problem> uncorrectable(InstrumentState state, Corrected corrected, String who) {
    String entry = corrected.entry();
    Optional<Standing<? extends Event>> struck =
        state.lines().stream()
            .filter(line -> line.entry().equals(entry) && line.stands())
            .findFirst();
    if (struck.isEmpty()) {
      return Optional.of(Problem.error("enter.unknown-entry", Where.NOWHERE, entry));
    }
    Optional<Problem> never = Strikes.refusal(state.lines(), struck.get(), who);
    if (never.isPresent()) {
      return never;
    }
    if (corrected.replacement().filter(now -> !isLike(struck.get().event(), now)).isPresent()) {
      return Optional.of(Problem.error("enter.other-kind", Where.NOWHERE, entry));
    }
    return corrected.why().isBlank()
        ? Optional.of(Problem.error("enter.no-reason", Where.NOWHERE, ""))
        : Optional.empty();
  }

  /** That a caution was read; one of a pair who has read it leaves it to the others. */
  static Checked<Event> reader(InstrumentState state, String step, String caution, String who) {
    List<String> readers = state.readers(step, caution);
    boolean others = readers.size() < state.members();
    return others && Readers.hasRead(readers, who) && !Readers.isPair(state.name().orElse(""), who)
        ? Checked.refused(
            Problem.error(
                "enter.read-already",
                Where.step(step),
                who.strip(),
                String.valueOf(readers.size()),
                String.valueOf(state.members()),
                state.name().orElse("")))
        : Checked.ok(new CautionAcknowledged(caution));
  }

  /** A waiver, where the rules of {@link Waivers} let it be written. */
  static Checked<Event> waiver(
      InstrumentView view, Step step, Waived waiver, String who, Situation situation) {
    Where where = Where.step(step.id());
    if (step.caution(waiver.what()).isPresent()) {
      return Checked.refused(Problem.error("enter.caution-not-waived", where, waiver.what()));
    }
    if (!Waivers.isWaivable(step, waiver.what())) {
      return Checked.refused(Problem.error("enter.unknown-item", where, waiver.what(), step.id()));
    }
    List<Problem> refusals = Waivers.refusals(view.checklist(), step, waiver, who, situation);
    return refusals.isEmpty() ? Checked.ok(waiver) : Checked.refused(refusals);
  }

  /** Why a reading that was just written tests something else than its step asks for, if so. */
  static Optional<Problem> voidCause(InstrumentView view, JournalEntry entry) {
    InstrumentState after = Voids.applied(view.checklist(), view.state().with(entry));
    return after.lines().get(after.lines().size() - 1).voidCause();
  }
}
