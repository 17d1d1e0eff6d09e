package faintwind.job.record;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.guide.ClockStart;
import faintwind.guide.Gate;
import faintwind.guide.Situation;
import faintwind.guide.Verdicts;
import faintwind.guide.Waivers;
import faintwind.guide.checklist.OwnFiles;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockConfirmed;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.Event.Waived;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;

/** Writes what a person enters into the journal: on disk when a method returns, or refused. */
public final class Enter {
  private final InstrumentView view;
  private final Clock clock;
  private final Person person;

  /**
   * Prepares entries.
   *
   * @param clock of this computer, with the zone of the place
   */
  public Enter(InstrumentView view, Clock clock, Person person) {
    this.view = view;
    this.clock = clock;
    this.person = person;
  }

  /**
   * Begins an instrument's folder.
   *
   * @throws IOException where the folder has a journal already or cannot be written
   */
  public static void begin(Path path, InstrumentCreated first, Clock clock, Person person)
      throws IOException {
    JournalEntry entry =
        new JournalEntry(
            person.ids().get(), OffsetDateTime.now(clock), person.name(), Optional.empty(), first);
    InstrumentFolder.create(path, entry);
  }

  /**
   * Who enters.
   *
   * @param name as it will stand in the log
   * @param ids gives an id that this journal does not have yet
   * @param byCode whether it is a teacher whose code was asked for and is right
   */
  public record Person(String name, Supplier<String> ids, boolean byCode) {
    public Person(String name, Supplier<String> ids) {
      this(name, ids, false);
    }

    /** A person whose entries get random ids. */
    public static Person named(String name) {
      return new Person(name, () -> UUID.randomUUID().toString());
    }
  }

  /**
   * Writes an event that has nothing to be judged: a note, a part, a design, a file, a photo.
   *
   * @throws IllegalArgumentException where the event has a way of its own, with its own rules
   */
  public Checked<JournalEntry> plain(Optional<String> step, Event event) throws IOException {
    return plain(step, List.of(event));
  }

  /** The same for several events that belong together: all are written or none. */
  public Checked<JournalEntry> plain(Optional<String> step, List<? extends Event> events)
      throws IOException {
    Checked<? extends List<? extends Event>> plain = EntryRules.plain(view, events);
    return plain.isOk()
        ? write(step, InForceLook.gated(view, events))
        : Checked.refused(plain.problems());
  }

  /** Puts a calibration in force that does not meet the build, explained by name and reason. */
  public Checked<JournalEntry> forceExplained(String file, String why) throws IOException {
    return write(Optional.empty(), InForceLook.explained(view, file, why, person.name()));
  }

  private Checked<JournalEntry> write(Optional<String> step, Checked<List<Event>> judged)
      throws IOException {
    return judged instanceof Checked.Ok<List<Event>> ok
        ? write(step, ok.value())
        : Checked.refused(judged.problems());
  }

  /** Notes that a step was opened. */
  public Checked<JournalEntry> open(String stepId) throws IOException {
    return ofStep(stepId, step -> Checked.ok(new StepOpened()));
  }

  /**
   * A typed reading; refused where it is no number of the right kind. A note says where it is void,
   * since it tests something else than it is to test.
   */
  public Checked<JournalEntry> reading(String stepId, String readingId, String typed)
      throws IOException {
    Checked<JournalEntry> written = ofStep(stepId, step -> readingEvent(step, readingId, typed));
    if (!(written instanceof Checked.Ok<JournalEntry> ok)) {
      return written;
    }
    List<Problem> notes = new ArrayList<>(ok.notes());
    EntryRules.voidCause(view, ok.value()).ifPresent(notes::add);
    return Checked.ok(ok.value(), notes);
  }

  private Checked<Event> readingEvent(Step step, String readingId, String typed) {
    Optional<Reading> reading = step.reading(readingId);
    if (reading.isEmpty()) {
      return unknown(step, readingId);
    }
    return NumberText.read(typed, reading.get().unit())
        .map(
            amount -> new ReadingEntered(readingId, typed, amount, verdict(reading.get(), amount)));
  }

  private Optional<ReadingVerdict> verdict(Reading reading, Amount amount) {
    Situation now = situation();
    Map<String, Double> values = new HashMap<>(now.values(view.checklist()));
    values.put(reading.name(), Math.min(amount.value(), Reading.BEYOND));
    return Verdicts.judge(reading, amount, now.now(), now, values).map(Reading.Judgement::verdict);
  }

  /** An answer to a question. */
  public Checked<JournalEntry> answer(String stepId, String questionId, String choice)
      throws IOException {
    return ofStep(
        stepId,
        step ->
            step.asks().questions().stream()
                    .filter(q -> q.id().equals(questionId))
                    .anyMatch((Question q) -> q.choice(choice).isPresent())
                ? Checked.ok(new QuestionAnswered(questionId, choice))
                : unknown(step, questionId + " = " + choice));
  }

  /** One caution was read. There is no way to acknowledge several at once. */
  public Checked<JournalEntry> acknowledge(String stepId, String caution) throws IOException {
    return ofStep(
        stepId,
        step ->
            step.caution(caution).isPresent()
                ? EntryRules.reader(view.state(), stepId, caution, person.name())
                : unknown(step, caution));
  }

  /**
   * A caution was read that a screen shows and no step has, such as that of the spinning arm. It
   * opens no step's gate: those look for cautions of their own step.
   */
  public Checked<JournalEntry> acknowledgeOnScreen(String caution) throws IOException {
    return write(Optional.empty(), new CautionAcknowledged(caution));
  }

  /** Starts the clock of a step with its duration by the design in force. */
  public Checked<JournalEntry> startClock(String stepId) throws IOException {
    return ofStep(stepId, step -> ClockStart.usual(step, situation().values(view.checklist())));
  }

  /**
   * Starts the clock of a step with the time that its tin or packet states.
   *
   * @return refused where the step takes no such time, or it is outside the step's limits
   */
  public Checked<JournalEntry> startClock(String stepId, double own_h) throws IOException {
    return ofStep(
        stepId, step -> ClockStart.own(step, own_h, situation().values(view.checklist())));
  }

  /** Keeps a photo with a step; refused where it is no whole picture or too large. */
  public Checked<JournalEntry> photo(String stepId, Path photo, String caption) throws IOException {
    return photo(stepId, folder -> folder.keepPhoto(photo, caption));
  }

  /** Keeps a pasted picture, as the bytes of a PNG, with a step. */
  public Checked<JournalEntry> pastedPhoto(String stepId, byte[] png, String caption)
      throws IOException {
    return photo(stepId, folder -> folder.keepPhoto(png, caption, caption));
  }

  private interface Keeping {
    Checked<PhotoAdded> in(InstrumentFolder folder) throws IOException;
  }

  private Checked<JournalEntry> photo(String stepId, Keeping keeping) throws IOException {
    // says why nothing can be entered, before a file is copied
    if (shut().isPresent() || view.checklist().step(stepId).isEmpty()) {
      return Checked.refused(shut().orElseGet(() -> unknownStep(stepId)));
    }
    Checked<PhotoAdded> kept = keeping.in(new InstrumentFolder(view.path()));
    return kept instanceof Checked.Ok<PhotoAdded> ok
        ? write(Optional.of(stepId), ok.value())
        : Checked.refused(kept.problems());
  }

  /** Copies a run, log or report into the folder and notes it. */
  public Checked<JournalEntry> file(Event.FileRole kind, Path source) throws IOException {
    Optional<Problem> shut = shut();
    return shut.isPresent()
        ? Checked.refused(shut.get())
        : plain(Optional.empty(), new InstrumentFolder(view.path()).keepFile(kind, source));
  }

  /** Calls a step finished; refused with everything that is still missing. */
  public Checked<JournalEntry> finish(String stepId) throws IOException {
    return ofStep(
        stepId,
        step -> {
          List<Problem> missing = Gate.toFinish(view.checklist(), step, situation()).reasons();
          return missing.isEmpty() ? Checked.ok(new StepFinished()) : Checked.refused(missing);
        });
  }

  /**
   * Goes on without a reading, a clock or a photo ({@code photo}), by the rules of {@link Waivers}.
   * A caution or a question cannot be waived.
   */
  public Checked<JournalEntry> waive(String stepId, String what, String reason) throws IOException {
    Waived waiver = new Waived(what, reason);
    return ofStep(
        stepId, step -> EntryRules.waiver(view, step, waiver, person.name(), situation()));
  }

  /** Strikes an entry through; with a replacement, that stands in its place. */
  public Checked<JournalEntry> correct(String entry, String why, Optional<Event> replacement)
      throws IOException {
    Optional<Problem> trouble =
        EntryRules.uncorrectable(
            view.state(), new Corrected(entry, why, replacement), person.name());
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    return write(Optional.empty(), new Corrected(entry, why, replacement));
  }

  /** Corrects a typed reading: the earlier entry is struck through, the new one stands. */
  public Checked<JournalEntry> correctReading(String entry, String typed, String why)
      throws IOException {
    var line =
        view.state().standing(ReadingEntered.class).stream()
            .filter(l -> l.entry().equals(entry))
            .findFirst();
    Optional<Step> step = line.flatMap(l -> l.step()).flatMap(view.checklist()::step);
    if (step.isEmpty()) {
      return Checked.refused(Problem.error("enter.unknown-entry", Where.NOWHERE, entry));
    }
    Checked<Event> event = readingEvent(step.get(), line.orElseThrow().event().reading(), typed);
    return event instanceof Checked.Ok<Event> ok
        ? correct(entry, why, Optional.of(ok.value()))
        : Checked.refused(event.problems());
  }

  /** Work of a step was mended or done again; refused without words. */
  public Checked<JournalEntry> repair(String stepId, String text) throws IOException {
    return text.isBlank()
        ? Checked.refused(Problem.error("enter.no-reason", Where.NOWHERE, ""))
        : ofStep(stepId, step -> Checked.ok(new Event.Repaired(text)));
  }

  /** Accepts an alteration by name and reason; the only entry into a folder that is shut for it. */
  Checked<JournalEntry> accept(String place, String sha256, String reason) throws IOException {
    Event accepted = new Event.AlterationAccepted(place, sha256, reason);
    if (!Waivers.isName(person.name())) {
      return Checked.refused(Problem.error("enter.no-name", Where.NOWHERE, ""));
    }
    Optional<Problem> unsigned = unsigned();
    if (unsigned.isPresent()) {
      return Checked.refused(unsigned.get());
    }
    return Waivers.isReason(reason)
        ? append(Optional.empty(), List.of(accepted))
        : Checked.refused(Problem.error("enter.no-reason", Where.NOWHERE, ""));
  }

  /** Chooses the class of meter that is used from now on. */
  public Checked<JournalEntry> meter(String id) throws IOException {
    return view.meters().find(id).isPresent()
        ? write(Optional.empty(), new MeterChosen(id))
        : Checked.refused(Problem.error("enter.unknown-meter", Where.NOWHERE, id));
  }

  /** Says that the computer's time is right, so that the step's clock counts as it shows. */
  public Checked<JournalEntry> confirmTime(String stepId) throws IOException {
    return ofStep(
        stepId,
        step ->
            step.asks().clock().isPresent()
                ? Checked.ok(new ClockConfirmed(step.asks().clock().get().id()))
                : unknown(step, "clock"));
  }

  private interface EventOfStep {
    Checked<Event> of(Step step);
  }

  private Checked<JournalEntry> ofStep(String stepId, EventOfStep make) throws IOException {
    Optional<Step> step = view.checklist().step(stepId);
    Checked<Event> event =
        step.isPresent() ? make.of(step.get()) : Checked.refused(unknownStep(stepId));
    return event instanceof Checked.Ok<Event> ok
        ? write(Optional.of(stepId), ok.value())
        : Checked.refused(event.problems());
  }

  private static Problem unknownStep(String stepId) {
    return Problem.error("enter.unknown-step", Where.NOWHERE, stepId);
  }

  /** Why nothing at all can be entered now. */
  Optional<Problem> shut() {
    Optional<Problem> folder = view.shut();
    if (folder.isPresent()) {
      return folder;
    }
    if (person.name().isBlank()) {
      return Optional.of(Problem.error("enter.no-name", Where.NOWHERE, ""));
    }
    return unsigned();
  }

  private Optional<Problem> unsigned() {
    return person.byCode() ? Optional.empty() : EntryRules.unsigned(view, person.name());
  }

  private Checked<JournalEntry> write(Optional<String> step, Event event) throws IOException {
    return write(step, List.of(event));
  }

  private Checked<JournalEntry> write(Optional<String> step, List<? extends Event> events)
      throws IOException {
    Optional<Problem> shut = shut();
    if (shut.isPresent()) {
      return Checked.refused(shut.get());
    }
    return append(step, events);
  }

  private Checked<JournalEntry> append(Optional<String> step, List<? extends Event> events)
      throws IOException {
    OffsetDateTime now = OffsetDateTime.now(clock);
    List<JournalEntry> entries = new ArrayList<>();
    for (OwnFileNoted noted : OwnFiles.toNote(view.checklist(), view.state())) {
      entries.add(
          new JournalEntry(person.ids().get(), now, Journal.PROGRAM, Optional.empty(), noted));
    }
    for (Event event : events) {
      entries.add(new JournalEntry(person.ids().get(), now, person.name(), step, event));
    }
    List<Problem> notes = new InstrumentFolder(view.path()).append(entries).stream().toList();
    return Checked.ok(entries.get(entries.size() - 1), notes);
  }

  Situation situation() {
    return view.situation(OffsetDateTime.now(clock));
  }

  private static Checked<Event> unknown(Step step, String what) {
    return Checked.refused(
        Problem.error("enter.unknown-item", Where.step(step.id()), what, step.id()));
  }
}
