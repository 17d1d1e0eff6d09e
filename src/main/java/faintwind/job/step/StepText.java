package faintwind.job.step;

import faintwind.guide.Gate;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.Situation;
import faintwind.guide.Verdicts;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One step in lines: its cautions first, its instruction once they are read and no gate before it
 * is shut, what it asks by id, what was entered and what is missing.
 */
public final class StepText {
  private final Clock clock;
  private final Messages words;

  public StepText(Clock clock, Messages words) {
    this.clock = clock;
    this.words = words;
  }

  /**
   * The lines of a step.
   *
   * @return refused where the folder has no journal, its checklist cannot be read or has no such
   *     step
   * @throws IOException where something that is there cannot be read
   */
  public Checked<List<String>> lines(Path folder, String stepId) throws IOException {
    return InstrumentView.begun(folder, words.locale()).then(view -> lines(view, stepId));
  }

  private Checked<List<String>> lines(InstrumentView view, String stepId) {
    OffsetDateTime now = OffsetDateTime.now(clock);
    Optional<StepProgress> found = view.progress(now).step(stepId);
    if (found.isEmpty()) {
      return Checked.refused(Problem.error("enter.unknown-step", Where.NOWHERE, stepId));
    }
    StepProgress at = found.get();
    Situation situation = view.situation(now);
    List<String> lines = new ArrayList<>();
    String state = words.text("step-state." + at.state().word());
    lines.add(words.text("step-text.head", at.step().title(), stepId, state));
    at.step().cautions().forEach(caution -> lines.addAll(caution(at.step(), caution, situation)));
    lines.addAll(instruction(at, situation));
    at.step().asks().questions().forEach(q -> lines.addAll(question(at.step(), q, situation)));
    for (Reading reading : at.step().asks().readings()) {
      lines.addAll(reading(view, at.step(), reading, situation));
    }
    lines.addAll(waiting(at, situation));
    lines.addAll(missing(at));
    return Checked.ok(lines);
  }

  private List<String> caution(Step step, Caution caution, Situation situation) {
    List<String> read = situation.state().readers(step.id(), caution.id());
    String readers = String.join(", ", read);
    String said =
        situation
            .state()
            .acknowledged(step.id(), caution.id())
            .filter(line -> situation.state().unread(step.id(), caution.id()) == 0)
            .map(line -> words.text("step-text.read", readers, DateText.zoned(words, line.at())))
            .orElseGet(
                () ->
                    read.isEmpty()
                        ? words.text("step-text.unread", caution.id())
                        : words.text(
                            "step-text.read-by-some",
                            readers,
                            read.size(),
                            situation.state().members(),
                            caution.id()));
    return List.of(
        words.text(
            "step-text.caution",
            words.text("caution." + caution.level().word()),
            situation.fill(caution.text(), words),
            caution.source()),
        said);
  }

  /** What is behind a caution or a gate stays covered, as in the window. */
  private List<String> instruction(StepProgress at, Situation situation) {
    boolean shut = at.reasons().stream().anyMatch(r -> r.id().startsWith("gate.closed."));
    if (shut || !Gate.unread(at.step(), situation).isEmpty()) {
      return List.of(words.text("step-text.covered"));
    }
    return at.step().text().how().stream()
        .map(line -> words.text("step-text.how", situation.fill(line, words)))
        .toList();
  }

  private List<String> question(Step step, Question question, Situation situation) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("step-text.question", question.id(), question.text()));
    Optional<String> chosen =
        situation.state().answer(step.id(), question.id()).map(line -> line.event().choice());
    for (Question.Choice choice : question.choices()) {
      boolean is = chosen.filter(choice.id()::equals).isPresent();
      String key = is ? "step-text.choice-taken" : "step-text.choice";
      lines.add(words.text(key, choice.id(), choice.text()));
    }
    return lines;
  }

  private List<String> reading(
      InstrumentView view, Step step, Reading reading, Situation situation) {
    List<String> lines = new ArrayList<>();
    lines.add(
        words.text(
            "step-text.reading",
            reading.id(),
            situation.fill(reading.label(), words),
            situation.fill(reading.expected(), words)));
    for (Standing<ReadingEntered> line : situation.state().history(step.id(), reading.id())) {
      String typed = line.event().typed();
      String at = DateText.zoned(words, line.at());
      lines.add(
          line.strike()
              .map(
                  strike ->
                      words.text("step-text.struck", typed, line.who(), at, strike.reason(words)))
              .orElseGet(
                  () ->
                      words.text(
                          "step-text.entered",
                          typed,
                          line.who(),
                          at,
                          verdict(view, reading, line, situation))));
    }
    return lines;
  }

  private String verdict(
      InstrumentView view, Reading reading, Standing<ReadingEntered> line, Situation situation) {
    return words.text(
        Verdicts.of(reading, line, situation, situation.values(view.checklist()))
            .map(judged -> "verdict." + judged.verdict().word())
            .orElse("reading.not-judged"));
  }

  private List<String> waiting(StepProgress at, Situation situation) {
    List<String> lines = new ArrayList<>();
    Optional<Step.ClockSpec> clock =
        at.step().asks().clock().filter(spec -> spec.runs(situation.sheetValues()));
    clock.ifPresent(
        asked ->
            lines.add(
                words.text(
                    "step-text.clock",
                    asked.id(),
                    situation.fill(asked.label(), words),
                    at.clock()
                        .map(StepClock::end)
                        .map(end -> words.text("step-text.ends", DateText.zoned(words, end)))
                        .orElseGet(() -> words.text("step-text.not-started")))));
    clock
        .flatMap(Step.ClockSpec::own)
        .ifPresent(
            own ->
                lines.add(
                    words.text(
                        "step-text.own-time",
                        own.label(),
                        Numerals.digits(own.least_h(), 3),
                        Numerals.digits(own.most_h(), 3))));
    at.step().asks().photo().ifPresent(of -> lines.add(words.text("step-text.photo", of)));
    return lines;
  }

  private List<String> missing(StepProgress at) {
    List<String> lines = new ArrayList<>();
    at.reasons().forEach(why -> lines.add(words.text("step-text.missing", words.sentence(why))));
    at.doubts().forEach(why -> lines.add(words.text("step-text.missing", words.sentence(why))));
    return lines;
  }
}
