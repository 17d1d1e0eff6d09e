package faintwind.job.step;

import faintwind.files.Sha256;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.LookAtBench;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;

/** Entries of a step that are made of more than one act. */
public final class EnterInStep {
  private final InstrumentView view;
  private final Enter enter;
  private final Messages words;

  /**
   * Prepares.
   *
   * @param words of what is noted beside an entry
   */
  public EnterInStep(InstrumentView view, Enter enter, Messages words) {
    this.view = view;
    this.enter = enter;
    this.words = words;
  }

  /** Answers a question; another answer than before strikes the first one. */
  public Checked<JournalEntry> answer(String step, String question, String choice)
      throws IOException {
    Optional<Standing<QuestionAnswered>> before = view.state().answer(step, question);
    boolean known =
        view.checklist().step(step).stream()
            .flatMap(s -> s.asks().questions().stream())
            .anyMatch(q -> q.id().equals(question) && q.choice(choice).isPresent());
    return known && before.isPresent()
        ? enter.correct(
            before.get().entry(),
            words.text("window.step.answer-changed"),
            Optional.of(new QuestionAnswered(question, choice)))
        : enter.answer(step, question, choice);
  }

  /**
   * Takes a reading from a recording of the logger, and notes which.
   *
   * @param now when: the sheet in force then says the gain where no chain is on record
   * @throws IOException where the disk or a permission fails
   */
  public Checked<JournalEntry> reading(
      String step, String readingId, Path recording, OffsetDateTime now) throws IOException {
    Optional<Step> at = view.checklist().step(step);
    Optional<Reading> reading =
        at.flatMap(s -> s.reading(readingId)).filter(r -> r.recorded().isPresent());
    if (reading.isEmpty()) {
      return Checked.refused(
          at.isEmpty()
              ? Problem.error("enter.unknown-step", Where.NOWHERE, step)
              : Problem.error("reading.not-recorded", Where.step(step), readingId));
    }
    Checked<LookAtBench.Looked> looked =
        new LookAtBench(view.situation(now).sheetValues()).look(recording, reading.get());
    if (!(looked instanceof Checked.Ok<LookAtBench.Looked> ok)) {
      return Checked.refused(looked.problems());
    }
    Checked<JournalEntry> entered = enter.reading(step, readingId, ok.value().typed());
    if (entered.isOk()) {
      String name = String.valueOf(recording.getFileName());
      Event note =
          new NoteWritten(
              words.text("reading.from-recording", ok.value().typed(), name, Sha256.of(recording)));
      enter.plain(Optional.of(step), note);
    }
    return entered;
  }
}
