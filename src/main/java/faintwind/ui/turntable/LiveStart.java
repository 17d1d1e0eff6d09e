package faintwind.ui.turntable;

import faintwind.calibration.plan.PlannedSession;
import faintwind.guide.CautionQuestions;
import faintwind.guide.Gate;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Step;
import faintwind.job.live.RehearsalPlan;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Problem;
import faintwind.record.InstrumentState;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.CautionCard;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
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
  private final Consumer<Optional<PlannedSession>> rehearse;
  private final Consumer<Next> offer;
  private final VBox box = Boxes.column("data-body");
  private final VBox parts = Boxes.column("data-body");
  private final VBox problems = new VBox();
  private Optional<Filled> filled = Optional.empty();
  private final ChangeListener<OpenInstrument.Standpoint> changed = (p, was, now) -> fill();

  /** What it was filled for: how many lines of the journal, and whether the gate is open. */
  private record Filled(int entries, boolean open) {}

  /**
   * Who is told of what.
   *
   * @param answers of the session
   * @param rehearse opens the folder for rehearsals, with a plan to be rehearsed there
   * @param offer takes what to do now
   */
  public record Ways(
      LiveTables.Answers answers,
      Consumer<Optional<PlannedSession>> rehearse,
      Consumer<Next> offer) {}

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
    boolean open = instrument.rehearsal() || gate().open();
    Optional<Filled> now = Optional.of(new Filled(instrument.state().lines().size(), open));
    if (now.equals(filled)) {
      return;
    }
    filled = now;
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
    offer.accept(
        Next.say(
                Mark.REHEARSAL,
                desk.text("turntable.live.next.rehearse"),
                made("rehearse-short", RehearsalPlan.Length.SHORT))
            .withDetail(desk.text("turntable.live.next.rehearse-detail"))
            .withOther(made("rehearse-whole", RehearsalPlan.Length.WHOLE)));
    box.getChildren().add(parts);
    lookForPlan(this::fillOwn);
  }

  /** One after the other: the next stands open, those read before it are folded to their names. */
  private void cautions(Step step, List<Caution> unread) {
    int read = step.cautions().size() - unread.size();
    if (unread.isEmpty()) {
      box.getChildren().add(Rows.soft(desk.text("turntable.live.safety-read", read)));
      return;
    }
    Caution first = unread.get(0);
    String kind = desk.text("turntable.caution.kind");
    int others = instrument.state().unread(step.id(), first.id());
    boolean begun = others < instrument.state().members();
    CautionCard.Content card =
        new CautionCard.Content(
            first.id(),
            begun ? desk.text("caution.other-of-pair", kind, others) : kind,
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

  private void begin(RehearsalPlan.Own own, int lesson) {
    box.setDisable(true);
    tables.rehearse(
        instrument.folder(),
        own,
        lesson,
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
      lookForPlan(this::fillParts);
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
      box.getChildren().add(parts);
      lookForPlan(kept -> parts.getChildren().setAll(rehearsePlan(kept)));
    }
    box.getChildren()
        .add(
            Words.link(
                "turntable-rehearse",
                desk.text("window.home.rehearse"),
                () -> rehearse.accept(Optional.empty())));
  }

  /** The plan kept last; without one there is nothing to follow. */
  private void lookForPlan(Consumer<Optional<PlannedSession>> found) {
    InstrumentState state = instrument.state();
    desk.background()
        .entry(
            watch -> PlanTurntable.kept(instrument.folder(), state),
            kept ->
                kept.fold(
                    (plan, notes) -> {
                      found.accept(plan);
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
    LiveBench bench = new LiveBench(desk, instrument.folder(), tables, answers, kept.get());
    Act begin = new Act("live-begin-session", desk.text("turntable.live.begin"), bench::begin);
    offer.accept(Next.say(Mark.READY, desk.text("turntable.live.next.begin"), begin));
    parts.getChildren().add(bench);
    parts.getChildren().addAll(rehearsePlan(kept));
  }

  /** A plan can be rehearsed before the arm may turn. */
  private List<Hyperlink> rehearsePlan(Optional<PlannedSession> kept) {
    return kept.isEmpty()
        ? List.of()
        : List.of(
            Words.link(
                "rehearse-plan",
                desk.text("turntable.live.rehearse-plan"),
                () -> rehearse.accept(kept)));
  }

  /** The builder's own plan, where one was brought here to be rehearsed. */
  private void fillOwn(Optional<PlannedSession> kept) {
    parts.getChildren().clear();
    if (kept.isEmpty()) {
      return;
    }
    PlannedSession planned = kept.get();
    PlanPart part = new PlanPart(desk, planned);
    parts.getChildren().addAll(Words.label(desk.text("turntable.live.own"), "semibold"), part);
    Act own =
        new Act(
            "rehearse-own",
            desk.text("turntable.live.rehearse-own"),
            () ->
                begin(RehearsalPlan.of(part.plan(), planned.request().response()), part.lesson()));
    offer.accept(
        Next.say(Mark.REHEARSAL, desk.text("turntable.live.next.rehearse"), own)
            .withDetail(desk.text("turntable.live.next.rehearse-own-detail"))
            .withOther(made("rehearse-short", RehearsalPlan.Length.SHORT)));
  }

  private Act made(String id, RehearsalPlan.Length length) {
    String word = "turntable.live." + id;
    return new Act(
        id,
        desk.text(word),
        () ->
            begin(
                new RehearsalPlan.Own(RehearsalPlan.build(), RehearsalPlan.preparation(length)),
                1));
  }

  private void say(List<Problem> all) {
    problems
        .getChildren()
        .setAll(Rows.problems(all.stream().map(desk.words()::line).toList(), true, desk.words()));
  }
}
