package faintwind.ui.instrument;

import faintwind.guide.Progress;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.job.World;
import faintwind.job.record.Enter;
import faintwind.job.record.HoldInstrument;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.Rescue;
import faintwind.job.record.WriteReport;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.ui.frame.Desk;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.StringProperty;

/**
 * The instrument that is open in the window. Every entry goes to disk before it shows; one that
 * cannot be written waits here, is said, and is tried again. Entries are written in the order they
 * were made.
 */
public final class OpenInstrument {
  private final Background background;
  private final Messages words;
  private final Clock clock;
  private final StringProperty who;
  private final Opening opening;
  private final ReadOnlyObjectWrapper<Standpoint> now;
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper stranded = new ReadOnlyBooleanWrapper();
  private final Deque<Unwritten> unwritten = new ArrayDeque<>();
  private Optional<HoldInstrument> hold = Optional.empty();

  /** Whether it was left, perhaps before the right to write had come. */
  private boolean left;

  private Optional<Problem> shut = Optional.empty();
  private Optional<Rescue> rescue = Optional.empty();

  /** Something to be written, by the job that judges and writes entries. */
  @FunctionalInterface
  public interface Entry {
    Checked<JournalEntry> write(Enter enter) throws IOException;
  }

  /** Opens the folder again, to see what an entry changed. */
  @FunctionalInterface
  public interface Opening {
    InstrumentView open(Path folder) throws IOException;
  }

  /**
   * Everything that depends on the journal and the time.
   *
   * @param view the instrument as its folder keeps it
   * @param situation what verdicts and gates depend on
   * @param progress where every step stands
   */
  public record Standpoint(InstrumentView view, Situation situation, Progress progress) {

    /** Works everything out for a moment. */
    public static Standpoint of(InstrumentView view, OffsetDateTime time) {
      return new Standpoint(view, view.situation(time), view.progress(time));
    }
  }

  private record Written(Checked<JournalEntry> answer, Standpoint standpoint, Rescue rescue) {}

  /**
   * An instrument that was just opened.
   *
   * @param desk words, background and clock
   * @param who the name that entries are signed with
   */
  public OpenInstrument(Desk desk, Standpoint standpoint, Opening opening, StringProperty who) {
    background = desk.background();
    words = desk.words();
    clock = desk.clock();
    this.opening = opening;
    this.who = who;
    now = new ReadOnlyObjectWrapper<>(standpoint);
  }

  public Path folder() {
    return now.get().view().path();
  }

  /** The instrument's name, or that of its folder. */
  public String name() {
    return state().name().orElseGet(() -> String.valueOf(folder().getFileName()));
  }

  /** Whether the folder is for rehearsals. */
  public boolean rehearsal() {
    return state().rehearsal();
  }

  /** Whether nothing was chosen and no step opened: what to buy is the first question. */
  public boolean isNew() {
    return state().designJson().isEmpty() && state().standing(Event.StepOpened.class).isEmpty();
  }

  /** Says that its data are made up or a rehearsal; empty where they were measured. */
  public String mark() {
    if (rehearsal()) {
      return words.text("window.rehearsal");
    }
    return state().madeUp() ? words.text("window.made-up") : "";
  }

  public Checklist checklist() {
    return now.get().view().checklist();
  }

  public InstrumentState state() {
    return now.get().view().state();
  }

  /** Where the instrument stands; changes with each entry and with time, on the JavaFX thread. */
  public ReadOnlyObjectProperty<Standpoint> now() {
    return now.getReadOnlyProperty();
  }

  /** The name that entries are signed with. */
  public StringProperty who() {
    return who;
  }

  /** What kept the last entry from being written, in words; empty while all is on disk. */
  public ReadOnlyStringProperty trouble() {
    return trouble.getReadOnlyProperty();
  }

  private record Unwritten(Entry entry, Consumer<Checked<JournalEntry>> told) {}

  /** Writes an entry. */
  public void enter(Entry entry) {
    enter(entry, answer -> {});
  }

  /**
   * Writes an entry and tells, on the JavaFX thread, what came of it once it is on disk or refused.
   */
  public void enter(Entry entry, Consumer<Checked<JournalEntry>> told) {
    unwritten.addLast(new Unwritten(entry, told));
    if (unwritten.size() == 1) {
      writeFirst();
    }
  }

  /** Does something once no entry waits to be written, or none can be. */
  public void whenWritten(Runnable then) {
    if (unwritten.isEmpty() || stranded.get()) {
      then.run();
    } else {
      background.entry(watch -> true, done -> whenWritten(then), world -> then.run());
    }
  }

  /** Whether entries wait because the folder cannot be written to. */
  public ReadOnlyBooleanProperty stranded() {
    return stranded.getReadOnlyProperty();
  }

  /**
   * Takes the right to write for as long as the instrument is open. Where another window or machine
   * has it, or the folder cannot be written to, this one is for reading only and says so.
   */
  public void hold() {
    left = false;
    Path folder = folder();
    background.entry(
        watch -> {
          Rescue kept = Rescue.of(folder);
          return new Held(HoldInstrument.take(folder, signed()), kept);
        },
        this::held,
        world -> shutBy(World.problem(world)));
  }

  private record Held(Checked<HoldInstrument> answer, Rescue rescue) {}

  private void held(Held held) {
    rescue = Optional.of(held.rescue());
    if (!(held.answer() instanceof Checked.Ok<HoldInstrument> ok)) {
      shutBy(held.answer().problems().get(0));
      return;
    }
    hold = Optional.of(ok.value());
    ok.notes().forEach(note -> trouble.set(words.sentence(note)));
    if (left) {
      close();
      return;
    }
    if (shut.isPresent()) {
      shut = Optional.empty();
      trouble.set("");
      Path folder = folder();
      background.entry(
          watch -> Standpoint.of(opening.open(folder), OffsetDateTime.now(clock)),
          now::set,
          world -> {});
    }
  }

  private void shutBy(Problem why) {
    shut = Optional.of(why);
    trouble.set(words.sentence(why));
    now.set(guarded(now.get().view(), shut));
  }

  private Standpoint guarded(InstrumentView view, Optional<Problem> why) {
    InstrumentView seen = why.isPresent() && view.writable() ? view.readOnly(why.get()) : view;
    return Standpoint.of(seen, OffsetDateTime.now(clock));
  }

  /** Gives the right to write back. */
  public void close() {
    left = true;
    hold.ifPresent(
        held -> {
          try {
            held.close();
          } catch (IOException gone) {
            trouble.set(String.valueOf(gone.getMessage()));
          }
        });
    hold = Optional.empty();
  }

  /**
   * Keeps the instrument in another place, with what waits to be written, and goes on there.
   *
   * @param place a folder that is not there yet
   */
  public void keepElsewhere(Path place) {
    Path former = folder();
    rescue.ifPresent(
        kept ->
            background.entry(
                watch -> {
                  kept.to(former, place);
                  return Standpoint.of(opening.open(place), OffsetDateTime.now(clock));
                },
                this::wentElsewhere,
                world ->
                    trouble.set(
                        words.text("window.not-kept", String.valueOf(world.getMessage())))));
  }

  private void wentElsewhere(Standpoint there) {
    close();
    stranded.set(false);
    trouble.set("");
    now.set(there);
    hold();
    if (!unwritten.isEmpty()) {
      writeFirst();
    }
  }

  /** Tries again what could not be written, or to be let write. */
  public void tryAgain() {
    if (shut.isPresent()) {
      hold();
    }
    if (!unwritten.isEmpty() && !trouble.get().isEmpty()) {
      writeFirst();
    }
  }

  private void writeFirst() {
    Entry entry = unwritten.getFirst().entry();
    Enter enter = new Enter(now.get().view(), clock, Enter.Person.named(signed()));
    Path folder = folder();
    Optional<Problem> why = shut;
    background.entry(
        watch -> {
          Checked<JournalEntry> answer = entry.write(enter);
          return new Written(answer, guarded(opening.open(folder), why), Rescue.of(folder));
        },
        this::written,
        world -> {
          trouble.set(words.text("window.not-kept", String.valueOf(world.getMessage())));
          stranded.set(true);
        });
  }

  /** Who rehearses need not be named. */
  String signed() {
    return rehearsal() && who.get().isBlank() ? words.text("window.rehearsal") : who.get();
  }

  private void written(Written written) {
    stranded.set(false);
    rescue = Optional.of(written.rescue());
    trouble.set(written.answer().isOk() ? "" : sentences(written.answer().problems()));
    // Who is told may make the next entry at once: it has to find this one still in its place.
    now.set(written.standpoint());
    Unwritten was = unwritten.removeFirst();
    was.told().accept(written.answer());
    if (!unwritten.isEmpty()) {
      writeFirst();
    }
  }

  private String sentences(List<Problem> problems) {
    return problems.stream().map(words::sentence).collect(Collectors.joining(" "));
  }

  /**
   * Writes the build log, off the JavaFX thread.
   *
   * @param target where it goes; empty for its place in the folder
   */
  public Checked<Path> writeLog(Optional<Path> target) throws IOException {
    WriteReport job = new WriteReport(clock, words);
    return target.isPresent() ? job.write(folder(), target.get()) : job.keep(folder());
  }

  /** Works everything out again for the time it is now: clocks go on. */
  public void tick() {
    InstrumentView view = now.get().view();
    background.entry(
        watch -> Standpoint.of(view, OffsetDateTime.now(clock)),
        standpoint -> {
          // An entry that came meanwhile has newer news.
          if (now.get().view().state().equals(view.state())) {
            now.set(standpoint);
          }
        },
        world -> {});
  }
}
