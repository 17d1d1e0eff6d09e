package faintwind.record;

import faintwind.message.Problem;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ChecklistChosen;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.Standing.Strike;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;

/**
 * Everything the journal says, with corrections applied: a corrected event is struck through and
 * stays. The order is that of the journal. A correction that names no known entry strikes nothing
 * and is listed in {@link #strayCorrections()}; so does one that {@link Strikes} refuses, listed in
 * {@link #refusedCorrections()}.
 */
public final class InstrumentState {

  /** A folder in which nothing has happened. */
  public static final InstrumentState EMPTY =
      new InstrumentState(List.of(), List.of(), List.of(), "");

  private final List<Standing<? extends Event>> lines;
  private final List<String> strayCorrections;
  private final List<Problem> refusedCorrections;
  private final String head;

  /** The lines by what they say and by their step: each step asks for its own again and again. */
  private final Map<Class<?>, List<Standing<? extends Event>>> byKind = new HashMap<>();

  private final Map<String, List<Standing<? extends Event>>> byStep = new HashMap<>();
  private final Map<String, Integer> places = new HashMap<>();

  private InstrumentState(
      List<Standing<? extends Event>> lines,
      List<String> strayCorrections,
      List<Problem> refusedCorrections,
      String head) {
    this.lines = List.copyOf(lines);
    this.strayCorrections = List.copyOf(strayCorrections);
    this.refusedCorrections = List.copyOf(refusedCorrections);
    this.head = head;
    for (Standing<? extends Event> line : lines) {
      places.putIfAbsent(line.entry(), places.size());
      byKind.computeIfAbsent(line.event().getClass(), kind -> new ArrayList<>()).add(line);
      line.step()
          .ifPresent(step -> byStep.computeIfAbsent(step, id -> new ArrayList<>()).add(line));
    }
  }

  /** Every event, struck or standing. */
  public List<Standing<? extends Event>> lines() {
    return lines;
  }

  /** Every event of a step, struck or standing. */
  public List<Standing<? extends Event>> lines(String step) {
    return Collections.unmodifiableList(byStep.getOrDefault(step, List.of()));
  }

  /** Where among the lines an entry stands; empty where there is none of that id. */
  public OptionalInt place(String entry) {
    Integer place = places.get(entry);
    return place == null ? OptionalInt.empty() : OptionalInt.of(place);
  }

  /** Ids of corrections whose target is unknown or was struck before. */
  public List<String> strayCorrections() {
    return strayCorrections;
  }

  /** Why corrections of entries that nobody, or not just anybody, takes back strike nothing. */
  public List<Problem> refusedCorrections() {
    return refusedCorrections;
  }

  /**
   * SHA-256 of the journal's last line, in lower-case hexadecimal: whoever knows it can tell that
   * nothing before it was altered since; empty where nothing is on record.
   */
  public String head() {
    return head;
  }

  /** Reads entries that no journal keeps. */
  public static InstrumentState replay(List<JournalEntry> entries) {
    return replay(entries, "");
  }

  /** Reads the entries in their order. */
  public static InstrumentState replay(List<JournalEntry> entries, String head) {
    Map<String, Standing<? extends Event>> byEntry = new LinkedHashMap<>();
    List<String> stray = new ArrayList<>();
    List<Problem> refused = new ArrayList<>();
    for (JournalEntry entry : entries) {
      if (entry.event() instanceof Corrected corrected) {
        Standing<? extends Event> target = byEntry.get(corrected.entry());
        Optional<Problem> refusal =
            target == null
                ? Optional.empty()
                : Strikes.refusal(byEntry.values(), target, entry.who());
        if (target == null || !target.stands()) {
          stray.add(entry.id());
        } else if (refusal.isPresent()) {
          refused.add(refusal.get());
        } else {
          correct(byEntry, target, entry, corrected);
        }
      } else {
        byEntry.put(entry.id(), standing(entry, entry.event(), entry.step(), Optional.empty()));
      }
    }
    return new InstrumentState(List.copyOf(byEntry.values()), stray, refused, head);
  }

  private static void correct(
      Map<String, Standing<? extends Event>> byEntry,
      Standing<? extends Event> target,
      JournalEntry entry,
      Corrected corrected) {
    Strike strike =
        new Strike(entry.id(), entry.at(), entry.who(), corrected.why(), Optional.empty());
    byEntry.put(corrected.entry(), target.struckBy(strike));
    corrected
        .replacement()
        .ifPresent(
            event ->
                byEntry.put(
                    entry.id(),
                    standing(entry, event, target.step(), Optional.of(corrected.entry()))));
  }

  private static Standing<Event> standing(
      JournalEntry entry, Event event, Optional<String> step, Optional<String> replaces) {
    return new Standing<>(
        entry.id(), entry.at(), entry.who(), step, event, replaces, Optional.empty());
  }

  /** The same with one entry more that corrects none. */
  public InstrumentState with(JournalEntry entry) {
    List<Standing<? extends Event>> more = new ArrayList<>(lines);
    more.add(standing(entry, entry.event(), entry.step(), Optional.empty()));
    return new InstrumentState(more, strayCorrections, refusedCorrections, head);
  }

  /**
   * The same with some entries struck by the program, each for its cause: they stay in sight and
   * count nowhere.
   *
   * @param causes by the id of the entry
   */
  public InstrumentState struck(Map<String, Problem> causes) {
    List<Standing<? extends Event>> marked = new ArrayList<>();
    for (Standing<? extends Event> line : lines) {
      Problem cause = causes.get(line.entry());
      marked.add(
          cause == null
              ? line
              : line.struckBy(
                  new Strike(
                      line.entry(), line.at(), Standing.PROGRAM, cause.id(), Optional.of(cause))));
    }
    return new InstrumentState(marked, strayCorrections, refusedCorrections, head);
  }

  /** The same as typed: what the program struck as void stands again. */
  public InstrumentState asTyped() {
    List<Standing<? extends Event>> typed = new ArrayList<>();
    lines.forEach(line -> typed.add(line.voidCause().isPresent() ? line.unstruck() : line));
    return new InstrumentState(typed, strayCorrections, refusedCorrections, head);
  }

  /** All events of one kind, struck through or not, in order. */
  public <E extends Event> List<Standing<E>> all(Class<E> kind) {
    return all(kind, byKind.getOrDefault(kind, List.of()));
  }

  private static <E extends Event> List<Standing<E>> all(
      Class<E> kind, List<Standing<? extends Event>> among) {
    List<Standing<E>> found = new ArrayList<>();
    for (Standing<? extends Event> line : among) {
      line.of(kind).ifPresent(found::add);
    }
    return found;
  }

  /** The events of one kind that are in force, in order. */
  public <E extends Event> List<Standing<E>> standing(Class<E> kind) {
    return all(kind).stream().filter(Standing::stands).toList();
  }

  /** The events of one kind that are in force in a step, in order. */
  public <E extends Event> List<Standing<E>> standing(Class<E> kind, String step) {
    return all(kind, lines(step)).stream().filter(Standing::stands).toList();
  }

  /** The last event of a kind that is in force. */
  public <E extends Event> Optional<Standing<E>> last(Class<E> kind) {
    return last(kind, line -> true);
  }

  /** The last of them that is wanted: from the end, for the last ones are asked for most. */
  public <E extends Event> Optional<Standing<E>> last(
      Class<E> kind, Predicate<Standing<E>> wanted) {
    return last(kind, byKind.getOrDefault(kind, List.of()), wanted);
  }

  private static <E extends Event> Optional<Standing<E>> last(
      Class<E> kind, List<Standing<? extends Event>> among, Predicate<Standing<E>> wanted) {
    for (int i = among.size() - 1; i >= 0; i--) {
      Standing<? extends Event> line = among.get(i);
      if (kind.isInstance(line.event()) && line.stands()) {
        Optional<Standing<E>> found = line.of(kind);
        if (wanted.test(found.orElseThrow())) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private <E extends Event> Optional<Standing<E>> last(
      Class<E> kind, String step, Predicate<E> wanted) {
    return last(kind, lines(step), line -> wanted.test(line.event()));
  }

  /** The instrument's name, where it was begun. */
  public Optional<String> name() {
    return last(InstrumentCreated.class).map(line -> line.event().name());
  }

  /** Whether its data are made up for demonstration. */
  public boolean madeUp() {
    return last(InstrumentCreated.class).map(line -> line.event().madeUp()).orElse(false);
  }

  /** Whether the folder is for rehearsals with the virtual instrument. */
  public boolean rehearsal() {
    return last(Event.RehearsalBegun.class).isPresent();
  }

  /** Whether the instrument is not used any more. */
  public boolean retired() {
    return last(Event.Retired.class).isPresent();
  }

  /** The design file in force, as JSON text. */
  public Optional<String> designJson() {
    return last(DesignChosen.class).map(line -> line.event().json());
  }

  /** The checklist in use. */
  public Optional<ChecklistChosen> checklist() {
    return last(ChecklistChosen.class).map(Standing::event);
  }

  /** Every entry of one reading, struck through or not: its history. */
  public List<Standing<ReadingEntered>> history(String step, String reading) {
    return all(ReadingEntered.class, lines(step)).stream()
        .filter(line -> line.event().reading().equals(reading))
        .toList();
  }

  /** The entry of a reading that counts: the last one that is in force. */
  public Optional<Standing<ReadingEntered>> reading(String step, String reading) {
    return last(ReadingEntered.class, step, entered -> entered.reading().equals(reading));
  }

  /** The answer that counts. */
  public Optional<Standing<QuestionAnswered>> answer(String step, String question) {
    return last(QuestionAnswered.class, step, answer -> answer.question().equals(question));
  }

  /** Who acknowledged a caution of a step, and when. */
  public Optional<Standing<CautionAcknowledged>> acknowledged(String step, String caution) {
    return last(CautionAcknowledged.class, step, read -> read.caution().equals(caution));
  }

  /** The teacher's name; empty where the build is not one of a classroom. */
  public Optional<String> teacher() {
    return Classroom.teacher(all(QuestionAnswered.class));
  }

  /** Who of those who build it has read a caution of a step. */
  public List<String> readers(String step, String caution) {
    return Readers.of(
        name().orElse(""),
        standing(CautionAcknowledged.class, step).stream()
            .filter(line -> line.event().caution().equals(caution))
            .toList());
  }

  /** How many of those who build it have still to read a caution of a step. */
  public int unread(String step, String caution) {
    return Math.max(0, members() - readers(step, caution).size());
  }

  /** How many build it together; one where nothing is said. */
  public int members() {
    return last(InstrumentCreated.class).flatMap(line -> line.event().members()).orElse(1);
  }

  /** The last start of a clock of a step. */
  public Optional<Standing<ClockStarted>> clock(String step, String clock) {
    return last(ClockStarted.class, step, started -> started.clock().equals(clock));
  }

  /** The waiver of a requirement of a step. */
  public Optional<Standing<Waived>> waiver(String step, String what) {
    return last(Waived.class, step, waived -> waived.what().equals(what));
  }

  /** When the builder last said that a step's work is finished. */
  public Optional<Standing<StepFinished>> finished(String step) {
    return last(StepFinished.class, step, finished -> true);
  }

  /**
   * The calibration that counted at a time: of those measured by then, the one put in force last.
   */
  public Optional<String> calibrationInForce(OffsetDateTime when) {
    return last(CalibrationPutInForce.class, line -> !countsFrom(line).isAfter(when))
        .map(line -> line.event().file());
  }

  /** Since when a calibration counts that was put in force. */
  public static OffsetDateTime countsFrom(Standing<CalibrationPutInForce> line) {
    return line.event().from().orElse(line.at());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof InstrumentState state
        && lines.equals(state.lines)
        && strayCorrections.equals(state.strayCorrections)
        && refusedCorrections.equals(state.refusedCorrections)
        && head.equals(state.head);
  }

  @Override
  public int hashCode() {
    return Objects.hash(lines, strayCorrections, head);
  }
}
