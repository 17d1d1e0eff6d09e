package faintwind.ui.record;

import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.Event.StepOpened;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import faintwind.record.Strikes;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The journal as a ledger by date, the newest first; corrected lines stay, struck through. */
public final class RecordModel {
  private final Messages words;
  private final Checklist checklist;
  private final EventWords eventWords;
  private final ReadOnlyObjectWrapper<List<Line>> lines = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Next> next;
  private final Consumer<RecordModel> writeLog;
  private long voids;

  /**
   * A line of the ledger.
   *
   * @param day heading of its day
   * @param time hour and minute
   * @param mark corrected, attention (a waiver, a void reading), the verdict of a reading, or done
   * @param text what was entered
   * @param who wrote it, and in which step
   * @param struck whether it was corrected
   * @param strike who struck it through, when and why, or that it was taken again
   */
  public record Line(
      String day, String time, Mark mark, String text, String who, boolean struck, String strike) {}

  /**
   * A model of a journal.
   *
   * @param writeLog asks where the build log goes and writes it
   */
  public RecordModel(
      Messages words, Checklist checklist, Situation situation, Consumer<RecordModel> writeLog) {
    this.words = words;
    this.checklist = checklist;
    this.writeLog = writeLog;
    eventWords = new EventWords(words, checklist);
    next = new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, ""));
    show(situation);
  }

  /** The lines, newest first. */
  public ReadOnlyObjectProperty<List<Line>> lines() {
    return lines.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Next> next() {
    return next.getReadOnlyProperty();
  }

  /** The one sentence at the top. */
  public String title() {
    int entries = lines.get().size();
    long struck = lines.get().stream().filter(line -> line.mark() == Mark.CORRECTED).count();
    if (entries == 0) {
      return words.text("window.record.empty");
    }
    String title = words.text("window.record.title", entries, struck);
    return voids == 0 ? title : title + words.text("window.record.title-void", voids);
  }

  /** Follows the journal. */
  public void show(Situation situation) {
    InstrumentState state = situation.state();
    RecordVerdicts verdicts = new RecordVerdicts(checklist, situation);
    List<Line> all = new ArrayList<>();
    for (Standing<? extends Event> standing : state.lines()) {
      // Where somebody looked is kept for coming back, and is no news in a ledger.
      if (!(standing.event() instanceof StepOpened)) {
        all.add(0, line(standing, verdicts));
      }
    }
    voids = state.lines().stream().filter(line -> line.voidCause().isPresent()).count();
    lines.set(List.copyOf(all));
    next.set(
        all.isEmpty()
            ? Next.say(Mark.READY, words.text("window.record.empty"))
            : Next.say(Mark.DONE, words.text("window.record.next"), writing())
                .withDetail(words.text("window.record.next-detail")));
  }

  /**
   * Asks whether the last entry that still counts should be struck through: it stays to be read.
   *
   * @param strike strikes the entry of that id
   */
  public boolean undo(InstrumentState state, Consumer<String> strike) {
    Optional<Standing<? extends Event>> last =
        state.lines().stream()
            .filter(line -> line.stands() && isUndoable(line.event()))
            .reduce((first, second) -> second);
    Next before = next.get();
    last.ifPresent(
        line -> {
          Act struck =
              new Act(
                  "record-strike",
                  words.text("window.record.strike"),
                  () -> strike.accept(line.entry()));
          Act leave =
              new Act("record-leave", words.text("window.record.leave"), () -> next.set(before));
          next.set(
              Next.say(
                      Mark.ATTENTION,
                      words.text(
                          "window.record.strike-ask", eventWords.say(line.step(), line.event())),
                      struck)
                  .withDetail(words.text("window.record.next-detail"))
                  .withOther(leave));
        });
    return last.isPresent();
  }

  private static boolean isUndoable(Event event) {
    return !(event instanceof StepOpened) && Strikes.isStrikable(event);
  }

  private Act writing() {
    return new Act("record-log", words.text("window.record.log"), () -> writeLog.accept(this));
  }

  /** Says what became of the build log, until the journal changes. */
  public void logWritten(Path target, Checked<Path> answer) {
    next.set(
        answer.isOk()
            ? Next.say(Mark.DONE, words.text("window.record.log-written", target))
                .withOther(writing())
            : Next.say(Mark.BLOCKED, words.text("window.record.log-refused"), writing())
                .withDetail(words.sentence(answer.problems().get(0))));
  }

  /** Says what kept the build log from being written. */
  public void logBroke(IOException broke) {
    next.set(
        Next.say(Mark.BLOCKED, words.text("window.record.log-refused"), writing())
            .withDetail(DiskWords.say(broke, words)));
  }

  private Line line(Standing<? extends Event> standing, RecordVerdicts verdicts) {
    String strike =
        standing
            .strike()
            .map(
                s ->
                    words.text(
                        s.cause().isPresent() ? "window.record.void" : "window.record.struck",
                        s.who(),
                        DateText.minute(words, s.at()),
                        s.reason(words)))
            .orElse(verdicts.isTakenAgain(standing) ? words.text("window.record.again") : "");
    String verdict =
        verdicts.of(standing).map(v -> " · " + words.text("window.verdict." + v.word())).orElse("");
    return new Line(
        DateText.day(words, standing.at()),
        DateText.clock(standing.at()),
        mark(standing, verdicts),
        eventWords.say(standing.step(), standing.event()) + verdict,
        standing
            .step()
            .map(
                step -> words.text("window.record.who-step", standing.who(), eventWords.step(step)))
            .orElse(standing.who()),
        !standing.stands(),
        strike);
  }

  private static Mark mark(Standing<? extends Event> standing, RecordVerdicts verdicts) {
    if (standing.voidCause().isPresent()) {
      return Mark.ATTENTION;
    }
    if (!standing.stands() || verdicts.isTakenAgain(standing)) {
      return Mark.CORRECTED;
    }
    Optional<ReadingVerdict> verdict = verdicts.of(standing);
    if (verdict.isPresent()) {
      return switch (verdict.get()) {
        case GOOD -> Mark.DONE;
        case DOUBTFUL -> Mark.ATTENTION;
        case STOP -> Mark.BLOCKED;
      };
    }
    return standing.event() instanceof Event.Waived ? Mark.ATTENTION : Mark.DONE;
  }
}
