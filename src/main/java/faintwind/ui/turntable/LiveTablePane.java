package faintwind.ui.turntable;

import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Series;
import faintwind.guide.turntable.DoneStep;
import faintwind.job.live.LiveSession;
import faintwind.message.Numerals;
import faintwind.ui.fold.Prose;
import faintwind.ui.fold.ProseLink;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The live turntable: words to be read from two metres, arm, beat and trace; the plan at its left.
 */
final class LiveTablePane {
  private static final long WORDS_NS = 250_000_000L;
  private static final int POINTS = 600;
  private static final double[] PACES = {1, 10, 30, 100};

  private final Desk desk;
  private final LiveTableModel model;
  private final VBox sheet = Boxes.column("live-table");
  private final VBox path = Boxes.column("live-path");
  private final Label words = label("live-words", "live");
  private final Label more = label("live-more", "live", "live-more");
  private final Label sentence = label("live-sentence", "tell");
  private final VBox troubles = new VBox();
  private final VBox correction = new VBox();
  private final HBox figures = Boxes.row("live-figures");
  private final VBox steps = new VBox();
  private final Label foot = label("live-foot", "semibold");
  private final LiveArm arm;
  private final LiveBeatLine beat;
  private final LiveTrace trace;
  private final AnimationTimer timer;
  private LiveTableView shown = new LiveTableView("", "", "", List.of(), List.of(), List.of(), "");

  LiveTablePane(Desk desk, LiveTableModel model) {
    this.desk = desk;
    this.model = model;
    arm = new LiveArm(desk.text("turntable.live.arm-shows"));
    beat = new LiveBeatLine(desk.text("turntable.live.beat-shows"), model::tap);
    trace =
        new LiveTrace(desk.text("turntable.live.minutes"), desk.text("turntable.live.expected"));
    buildSheet();
    buildPath();
    timer =
        new AnimationTimer() {
          private long lastWords;

          @Override
          public void handle(long now) {
            sweep();
            if (now - lastWords >= WORDS_NS) {
              lastWords = now;
              pulse();
            }
          }
        };
    pulse();
    timer.start();
  }

  VBox sheet() {
    return sheet;
  }

  VBox path() {
    return path;
  }

  /** A tap while the arm turns; tells whether it does. */
  boolean tap() {
    boolean turns = model.sweep_turns().isPresent();
    if (turns) {
      model.tap();
    }
    return turns;
  }

  /** Stops drawing; the session goes on or ends by its model. */
  void stop() {
    timer.stop();
  }

  private void buildSheet() {
    sheet.setId("live-table");
    troubles.setId("live-troubles");
    HBox head = Boxes.row("live-head", words, grow(), more);
    Label beats = Words.label(desk.text("turntable.live.beat"), "fine", "bold");
    Label space = Words.label(desk.text("turntable.live.space"), "fine", "soft");
    HBox beatHead = Boxes.row("live-head", beats, grow(), space);
    Label key = Words.label(desk.text("turntable.live.beat-key"), "fine", "soft");
    VBox right = Boxes.column("live-right", head, sentence, figures, beatHead, beat, key);
    HBox.setHgrow(right, Priority.ALWAYS);
    Label keepOut = Words.label(desk.text("turntable.live.keep-out"), "fine", "soft");
    VBox left = Boxes.column("live-left", arm, keepOut);
    HBox upper = Boxes.row("live-upper", left, right);
    Label title =
        Words.label(desk.text("turntable.live.trace", model.session().unit().symbol()), "semibold");
    VBox.setVgrow(trace, Priority.ALWAYS);
    sheet.getChildren().setAll(upper, troubles, correction, title, trace);
    model.meter().ifPresent(meter -> sheet.getChildren().add(1, new TypedMeterBox(desk, meter)));
    VBox.setVgrow(sheet, Priority.ALWAYS);
  }

  private void buildPath() {
    path.setId("live-path");
    Label head = Words.label(model.planned(), "tell", "semibold");
    path.getChildren().add(head);
    if (model.rehearsal()) {
      Label pencilled = Words.label(desk.text("turntable.live.rehearsal"), "fine", "pencil");
      pencilled.setWrapText(true);
      path.getChildren().addAll(pencilled, paces());
    }
    Hyperlink wrong =
        Words.link("live-wrong", desk.text("turntable.wrong"), this::somethingWentWrong);
    path.getChildren().addAll(steps, foot, wrong);
  }

  private HBox paces() {
    HBox row = Boxes.row("live-paces");
    for (double pace : PACES) {
      Hyperlink link = new ProseLink(Numerals.places(pace, 0) + "×");
      link.setId("live-pace-" + Numerals.places(pace, 0));
      link.setAccessibleText(desk.text("turntable.live.pace", Math.round(pace)));
      link.setOnAction(
          event -> {
            model.pace(pace);
            row.getChildren().forEach(n -> n.getStyleClass().remove("here"));
            link.getStyleClass().add("here");
          });
      if (model.pace() == pace) {
        link.getStyleClass().add("here");
      }
      row.getChildren().add(link);
    }
    return row;
  }

  private static Region grow() {
    Region gap = Boxes.gap();
    return gap;
  }

  private static Label label(String id, String... styles) {
    Label label = new Prose();
    label.setId(id);
    label.setWrapText(true);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** The arm and the beat move at every pulse. */
  private void sweep() {
    LiveSession.Look look = model.session().look();
    Optional<PlannedSpin> spin = look.advice().step().flatMap(PlannedStep::spin);
    if (spin.isEmpty()) {
      arm.show(0, Direction.CW, 4);
      beat.show(0, 0, List.of());
      return;
    }
    int aTurn = spin.get().beat().aTurn();
    double turns = model.sweep_turns().orElse(-1.0 / aTurn);
    double seen = desk.look().lessMotion().get() ? Math.floor(turns * aTurn + 1e-6) / aTurn : turns;
    arm.show(seen, spin.get().direction(), aTurn);
    double period_s = spin.get().beat().period_s();
    double since_s = turns * aTurn * period_s;
    double shift_s = look.time_s() - since_s;
    beat.show(
        since_s,
        model.sweep_turns().isPresent() ? period_s : 0,
        look.marks().stream()
            .skip(Math.max(0, look.marks().size() - 30))
            .map(t -> t - shift_s)
            .toList());
  }

  private void pulse() {
    model.pulse();
    LiveTableView view = model.view().get();
    words.setText(view.words());
    more.setText(view.more());
    sentence.setText(view.sentence());
    if (!view.figures().equals(shown.figures())) {
      figures.getChildren().setAll(view.figures().stream().map(LiveTablePane::figure).toList());
    }
    if (!view.troubles().equals(shown.troubles())) {
      troubles.getChildren().setAll(view.troubles().stream().map(LiveTablePane::trouble).toList());
    }
    if (!view.steps().equals(shown.steps())) {
      steps.getChildren().setAll(view.steps().stream().map(this::step).toList());
    }
    foot.setText(view.foot());
    shown = view;
    LiveSession session = model.session();
    session.trace(POINTS).ifPresent(seen -> trace.show(seen, session.path(), bands(seen)));
  }

  private List<LiveTrace.Band> bands(Series seen) {
    LiveSession session = model.session();
    List<LiveTrace.Band> bands = new ArrayList<>();
    for (DoneStep done : session.done()) {
      done.step().spin().ifPresent(s -> bands.add(band(s, done.from_s(), done.to_s(), false)));
    }
    LiveSession.Look look = session.look();
    List<PlannedStep> plan = model.plan().steps();
    double time_s = seen.last_s();
    for (int i = look.at(); i < plan.size(); i++) {
      boolean here = i == look.at();
      double from_s = here ? look.since_s() : time_s;
      double lasts_s = here ? look.advice().more_s().orElse(0) : plan.get(i).duration_s();
      double to_s = time_s + Math.max(here ? 1 : 0, lasts_s);
      plan.get(i).spin().ifPresent(s -> bands.add(band(s, from_s, to_s, here)));
      time_s = to_s;
    }
    return bands;
  }

  private static LiveTrace.Band band(PlannedSpin spin, double from_s, double to_s, boolean here) {
    String speed = Numerals.places(spin.speed_m_s(), 2);
    return new LiveTrace.Band(from_s, to_s, speed, here);
  }

  private static VBox figure(LiveTableView.Figure figure) {
    Label name = Words.label(figure.name(), "fine", "soft");
    Label value = Words.whole(figure.value(), "title");
    Label note = Words.label(figure.note(), "soft");
    HBox line = Boxes.row("live-figure-line", value, note);
    return Boxes.column("live-figure", name, line);
  }

  private static VBox trouble(LiveTableView.Said said) {
    VBox box = new VBox(Words.label(said.found(), "tell", "semibold"));
    if (!said.todo().isEmpty()) {
      box.getChildren().add(Words.label(said.todo()));
    }
    box.getStyleClass().addAll("trouble", "care");
    return box;
  }

  private VBox step(LiveTableView.StepLine line) {
    Label name = Words.label(line.name(), line.here() ? "bold" : "plain");
    Label detail = Words.label(line.detail(), "fine", "soft");
    Boxes.grow(name);
    HBox row =
        Boxes.row(
            "run-line", new MarkShape(line.mark(), desk.text(line.mark().key())), name, detail);
    VBox box = new VBox(row);
    if (!line.under().isEmpty()) {
      Label under = Words.label(line.under(), "fine", "soft", "live-under");
      under.setMaxWidth(Double.MAX_VALUE);
      HBox.setHgrow(under, Priority.ALWAYS);
      HBox turned = Boxes.row("live-turned", under);
      line.spin().ifPresent(spin -> turned.getChildren().add(correct(spin)));
      box.getChildren().add(turned);
    }
    if (line.here()) {
      box.getStyleClass().add("live-here");
    }
    return box;
  }

  private Node correct(int spin) {
    Hyperlink link =
        Words.link(
            "live-correct-" + (spin + 1), desk.text("turntable.live.correct"), () -> open(spin));
    link.getStyleClass().add("fine");
    return link;
  }

  private void somethingWentWrong() {
    correction
        .getChildren()
        .setAll(new WentWrong(desk, model::note, () -> correction.getChildren().clear()));
  }

  private void open(int spin) {
    correction
        .getChildren()
        .setAll(
            new SpinCorrection(desk, model.session(), spin, () -> correction.getChildren().clear())
                .node());
  }
}
