package faintwind.ui.turntable;

import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.profile.ImportProfile;
import faintwind.guide.CautionQuestions;
import faintwind.guide.Gate;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Step;
import faintwind.job.live.BenchSource;
import faintwind.job.live.LiveInput;
import faintwind.job.live.RehearsalPlan;
import faintwind.job.turntable.PlanText;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.InstrumentState;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.listen.SourceChoiceModel;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.CautionCard;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import faintwind.ui.work.DiskWords;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * Before the arm turns: the page of arm safety, which nothing gets past, then what is turned. A
 * rehearsal asks for the same cautions, as practice.
 */
public final class LiveStart {
  private static final String SAFETY = "arm-safety";
  private static final int SHOWN_REASONS = 3;

  private final Desk desk;
  private final OpenInstrument instrument;
  private final LiveTables tables;
  private final LiveTables.Answers answers;
  private final Runnable rehearse;
  private final Consumer<Next> offer;
  private final VBox box = Boxes.column("data-body");
  private final VBox parts = Boxes.column("data-body");
  private final VBox problems = new VBox();
  private int filledAt = -1;
  private boolean filledOpen;
  private final ChangeListener<OpenInstrument.Standpoint> changed = (p, was, now) -> fill();

  /**
   * Who is told of what.
   *
   * @param answers of the session
   * @param rehearse opens the folder for rehearsals
   * @param offer takes what to do now
   */
  public record Ways(LiveTables.Answers answers, Runnable rehearse, Consumer<Next> offer) {}

  /**
   * A start on an instrument.
   *
   * @param ways who is told of what
   */
  public LiveStart(Desk desk, OpenInstrument instrument, LiveTables tables, Ways ways) {
    this.desk = desk;
    this.instrument = instrument;
    this.tables = tables;
    this.answers = ways.answers();
    this.rehearse = ways.rehearse();
    this.offer = ways.offer();
    box.setId("live-start");
    instrument.now().addListener(changed);
    fill();
  }

  Node node() {
    return box;
  }

  /** Stops listening. */
  void left() {
    instrument.now().removeListener(changed);
  }

  /** Time alone changes nothing here, and must not take away what is being typed. */
  private void fill() {
    int entries = instrument.state().lines().size();
    boolean open = instrument.rehearsal() || gate().open();
    if (entries == filledAt && open == filledOpen) {
      return;
    }
    filledAt = entries;
    filledOpen = open;
    box.getChildren().clear();
    if (instrument.rehearsal()) {
      fillRehearsal();
    } else {
      fillMeasured();
    }
  }

  private Situation situation() {
    return instrument.now().get().situation();
  }

  private void fillRehearsal() {
    box.getChildren()
        .addAll(
            Words.label(desk.text("turntable.live.rehearse-title"), "tell", "semibold"),
            Words.label(desk.text("turntable.live.rehearse-how")));
    Optional<Step> safety = instrument.checklist().step(SAFETY);
    List<Caution> unread = safety.map(s -> Gate.unread(s, situation())).orElse(List.of());
    safety.ifPresent(step -> cautions(step, unread));
    if (!unread.isEmpty()) {
      offer.accept(Next.say(Mark.BLOCKED, desk.text("turntable.live.next.cautions")));
      return;
    }
    Act whole =
        new Act(
            "rehearse-whole",
            desk.text("turntable.live.rehearse-whole"),
            () -> begin(RehearsalPlan.Length.WHOLE));
    Act brief =
        new Act(
            "rehearse-short",
            desk.text("turntable.live.rehearse-short"),
            () -> begin(RehearsalPlan.Length.SHORT));
    offer.accept(
        Next.say(Mark.REHEARSAL, desk.text("turntable.live.next.rehearse"), brief)
            .withDetail(desk.text("turntable.live.next.rehearse-detail"))
            .withOther(whole));
  }

  /** One after the other: the next stands open, those read before it are folded to their names. */
  private void cautions(Step step, List<Caution> unread) {
    int read = step.cautions().size() - unread.size();
    if (unread.isEmpty()) {
      box.getChildren().add(Rows.soft(desk.text("turntable.live.safety-read", read)));
      return;
    }
    Caution first = unread.get(0);
    CautionCard.Caution card =
        new CautionCard.Caution(
            first.id(),
            desk.text("turntable.caution.kind"),
            first.text(),
            first.source(),
            "",
            false,
            CautionQuestions.of(
                first, instrument.checklist(), instrument.state(), instrument.who().get()));
    box.getChildren()
        .addAll(
            Rows.soft(desk.text("turntable.live.safety", read + 1, step.cautions().size())),
            new CautionCard(
                card,
                desk.words(),
                () -> instrument.enter(enter -> enter.acknowledge(step.id(), first.id()))));
  }

  private void begin(RehearsalPlan.Length length) {
    box.setDisable(true);
    tables.rehearse(
        instrument.folder(),
        length,
        new LiveTables.Answers(
            session -> {
              box.setDisable(false);
              answers.began().accept(session);
            },
            answers.over(),
            broke -> {
              box.setDisable(false);
              answers.failed().accept(broke);
            }));
  }

  private Gate.Answer gate() {
    return Gate.check(instrument.checklist(), Gate.FIRST_SPIN, situation());
  }

  private void fillMeasured() {
    Gate.Answer gate = gate();
    if (gate.open()) {
      box.getChildren().add(parts);
      lookForPlan();
    } else {
      box.getChildren().add(Words.label(desk.text("turntable.live.locked"), "tell", "semibold"));
      List<String> reasons =
          gate.reasons().stream().limit(SHOWN_REASONS).map(desk.words()::sentence).toList();
      box.getChildren().addAll(Rows.problems(reasons, true, desk.words()));
      if (gate.reasons().size() > SHOWN_REASONS) {
        int more = gate.reasons().size() - SHOWN_REASONS;
        box.getChildren().add(Rows.soft(desk.text("turntable.live.locked-more", more)));
      }
      box.getChildren()
          .add(
              Words.button(
                  "live-to-safety",
                  desk.text("turntable.live.to-safety"),
                  () -> desk.go().accept(Place.MAKE)));
    }
    box.getChildren()
        .add(Words.link("turntable-rehearse", desk.text("window.home.rehearse"), rehearse));
  }

  /** The plan kept last; without one there is nothing to follow. */
  private void lookForPlan() {
    InstrumentState state = instrument.state();
    desk.background()
        .entry(
            watch -> PlanTurntable.kept(instrument.folder(), state),
            kept ->
                kept.fold(
                    (plan, notes) -> {
                      fillParts(plan);
                      return true;
                    },
                    problems -> {
                      say(problems);
                      return false;
                    }),
            answers.failed());
  }

  private void fillParts(Optional<PlannedSession> kept) {
    parts.getChildren().clear();
    if (kept.isEmpty()) {
      parts.getChildren().add(Words.label(desk.text("turntable.live.no-plan"), "tell"));
      return;
    }
    PlannedSession plan = kept.get();
    LoggerWays ways =
        new LoggerWays(desk, instrument.folder(), tables.recording(instrument.folder()));
    SourceChoiceModel source = ways.source(SourceChoiceModel.Kind.OF_LINES);
    parts
        .getChildren()
        .addAll(
            Words.label(new PlanText(desk.words()).sum(plan.choice().staircase()), "tell"),
            ways.shown(source),
            Words.button(
                "live-begin", desk.text("turntable.live.begin"), () -> record(plan, source)),
            problems);
  }

  private void record(PlannedSession plan, SourceChoiceModel source) {
    parts.setDisable(true);
    String from = source.text();
    Optional<ImportProfile> lines = source.profile().get();
    desk.background()
        .run(
            watch -> BenchSource.open(from, lines),
            opened -> {
              parts.setDisable(false);
              begin(plan, opened);
            },
            broke -> {
              parts.setDisable(false);
              problems
                  .getChildren()
                  .setAll(
                      Rows.problems(
                          List.of(DiskWords.say(broke, desk.words())), true, desk.words()));
            });
  }

  private void begin(PlannedSession plan, Checked<LiveInput> opened) {
    if (opened instanceof Checked.Ok<LiveInput> ok) {
      LiveInput input = ok.value();
      tables.record(
          instrument.folder(), input, BenchSource.prepare(plan, input.head().unit()), answers);
    } else {
      say(opened.problems());
    }
  }

  private void say(List<Problem> all) {
    problems
        .getChildren()
        .setAll(Rows.problems(all.stream().map(desk.words()::line).toList(), true, desk.words()));
  }
}
