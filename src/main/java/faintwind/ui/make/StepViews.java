package faintwind.ui.make;

import faintwind.guide.CautionQuestions;
import faintwind.guide.Gate;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.ReadingTrend;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.Waived;
import faintwind.record.Standing;
import faintwind.report.card.StageCard;
import faintwind.report.card.StepCard;
import faintwind.report.card.StepCards;
import faintwind.report.figure.ControlChartPlots;
import faintwind.report.paint.PlotFigure;
import faintwind.ui.instrument.ClockWords;
import faintwind.ui.instrument.StepMarks;
import faintwind.ui.make.StepView.Aside;
import faintwind.ui.make.StepView.Asked;
import faintwind.ui.make.StepView.Cover;
import faintwind.ui.make.StepView.Heading;
import faintwind.ui.make.StepView.Instruction;
import faintwind.ui.make.StepView.Outcome;
import faintwind.ui.make.StepView.Photos;
import faintwind.ui.part.CautionCard;
import faintwind.ui.part.GateList.Missing;
import faintwind.ui.part.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Puts a step, its checklist and what was entered into the words of a {@link StepView}. */
final class StepViews {
  private final Messages words;
  private final Checklist checklist;
  private final ClockWords clocks;
  private final TroubleWords troubles;
  private final Supplier<String> who;
  private final ReadingWords readings;
  private final MeterWords meters;

  /**
   * Words of an instrument.
   *
   * @param who is at the window
   */
  StepViews(Messages words, Checklist checklist, Supplier<String> who) {
    this.words = words;
    this.who = who;
    this.checklist = checklist;
    clocks = new ClockWords(words);
    troubles = new TroubleWords(words, checklist);
    readings = new ReadingWords(words);
    meters = new MeterWords(words);
  }

  /** The view of one step now. */
  StepView of(Step step, Situation situation, Progress progress) {
    StepProgress where = progress.step(step.id()).orElseThrow();
    Map<String, Double> values = situation.values(checklist);
    Cover cover = cover(step, situation, where);
    return new StepView(
        heading(step, situation, where),
        step.cautions().stream().map(c -> caution(step, c, situation)).toList(),
        instruction(step, situation, cover),
        step.asks().questions().stream().map(q -> asked(step, q, situation)).toList(),
        step.asks().readings().stream().map(r -> readings.of(step, r, situation, values)).toList(),
        aside(step, situation, progress),
        new Outcome(troubles.of(step, situation), missing(where, progress)));
  }

  /** Cautions come first; what stands behind a closed gate stays covered until it opens. */
  private static Cover cover(Step step, Situation situation, StepProgress where) {
    if (!Gate.unread(step, situation).isEmpty()) {
      return Cover.CAUTIONS;
    }
    return isLocked(where) ? Cover.GATE : Cover.NONE;
  }

  private static boolean isLocked(StepProgress where) {
    return where.reasons().stream().anyMatch(r -> r.id().startsWith("gate.closed."));
  }

  private Heading heading(Step step, Situation situation, StepProgress where) {
    Optional<Stage> stage = checklist.stageOf(step.id());
    int number = stage.map(s -> s.steps().indexOf(step) + 1).orElse(1);
    int count = stage.map(s -> s.steps().size()).orElse(1);
    Stream<String> doubts = where.doubts().stream().map(words::sentence);
    Stream<String> waivers =
        situation.state().standing(Waived.class, step.id()).stream().map(w -> waiver(step, w));
    return new Heading(
        stage.flatMap(Stage::banner).orElse(""),
        words.text("window.step.crumb", stage.map(Stage::title).orElse(""), number, count),
        step.title(),
        Stream.concat(doubts, waivers).toList());
  }

  private String waiver(Step step, Standing<Waived> line) {
    String what = step.reading(line.event().what()).map(Reading::label).orElse(line.event().what());
    return words.text(
        "window.step.waived",
        what,
        line.who(),
        DateText.minute(words, line.at()),
        line.event().reason());
  }

  private CautionCard.Content caution(Step step, Caution caution, Situation situation) {
    Optional<Standing<CautionAcknowledged>> read =
        situation
            .state()
            .acknowledged(step.id(), caution.id())
            .filter(line -> !line.who().isBlank());
    int unread = situation.state().unread(step.id(), caution.id());
    String kind = words.text("caution." + caution.level().word());
    return new CautionCard.Content(
        caution.id(),
        read.isPresent() && unread > 0 ? words.text("caution.other-of-pair", kind, unread) : kind,
        situation.fill(caution.text(), words),
        caution.source(),
        read.filter(r -> unread == 0)
            .map(r -> words.text("window.step.read", r.who(), DateText.minute(words, r.at())))
            .orElse(""),
        false,
        CautionQuestions.of(caution, checklist, situation.state(), who.get()));
  }

  private Instruction instruction(Step step, Situation situation, Cover cover) {
    List<String> kit = new ArrayList<>(step.kit().tools());
    kit.addAll(step.kit().parts());
    return new Instruction(
        cover,
        step.text().how().stream().map(line -> situation.fill(line, words)).toList(),
        kit.isEmpty() ? "" : words.text("window.step.kit", String.join(", ", kit)));
  }

  private Asked asked(Step step, Question question, Situation situation) {
    Optional<Question.Choice> chosen =
        situation
            .state()
            .answer(step.id(), question.id())
            .map(Standing::event)
            .map(QuestionAnswered::choice)
            .flatMap(question::choice);
    return new Asked(
        question.id(),
        question.text(),
        question.choices().stream().map(c -> new Asked.Option(c.id(), c.text())).toList(),
        chosen.map(Question.Choice::id).orElse(""),
        chosen.flatMap(choice -> choice.stop(situation.values(checklist))).orElse(""));
  }

  private Aside aside(Step step, Situation situation, Progress progress) {
    StepProgress where = progress.step(step.id()).orElseThrow();
    List<String> photos =
        situation.state().standing(PhotoAdded.class, step.id()).stream()
            .map(line -> line.event().file())
            .toList();
    return new Aside(
        // a drawing shows how, too
        step.text().picture().filter(picture -> !isLocked(where)),
        new StepView.Reasons(
            situation.fill(step.text().why(), words),
            situation.fill(step.text().good(), words),
            step.text().wrong().stream().map(line -> situation.fill(line, words)).toList()),
        where.clock().flatMap(clock -> clocks.face(step, clock, situation)),
        Optional.of(new Photos(step.asks().photo().orElse(""), photos)),
        cards(step, situation, progress),
        meters.of(step, situation),
        trends(step, situation));
  }

  private List<StepCard> cards(Step step, Situation situation, Progress progress) {
    Optional<StepCard> atStart =
        checklist
            .stageOf(step.id())
            .filter(stage -> stage.steps().get(0).equals(step))
            .map(stage -> StageCard.of(stage, progress, situation, words));
    Optional<StepCard> own =
        step.text().card().flatMap(card -> new StepCards(words).of(card, situation));
    return Stream.concat(atStart.stream(), own.stream()).toList();
  }

  private List<PlotFigure> trends(Step step, Situation situation) {
    ControlChartPlots plots = new ControlChartPlots(words);
    List<PlotFigure> all = new ArrayList<>();
    for (Reading reading : step.asks().readings()) {
      ReadingTrend.of(step.id(), reading, situation.state())
          .map(trend -> plots.figure(trend.chart(), reading.label(), reading.unit()))
          .ifPresent(all::add);
    }
    return all;
  }

  private List<Missing> missing(StepProgress where, Progress progress) {
    List<Missing> all = new ArrayList<>();
    for (Problem reason : where.reasons()) {
      if (reason.id().equals("gate.step-needed")) {
        String id = reason.details().get(0);
        Mark mark = progress.step(id).map(StepMarks::of).orElse(Mark.READY);
        all.add(new Missing(id, reason.found(), mark));
      } else if (reason.id().startsWith("gate.closed.")) {
        String first =
            checklist.stepsOfGate(reason.found()).stream()
                .filter(s -> progress.step(s.id()).filter(p -> !p.state().settled()).isPresent())
                .findFirst()
                .map(Step::id)
                .orElse("");
        all.add(new Missing(first, words.sentence(reason), Mark.BLOCKED));
      }
    }
    return all;
  }
}
