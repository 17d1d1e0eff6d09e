package faintwind.ui.turntable;

import faintwind.calibration.beat.BeatTimes;
import faintwind.calibration.beat.SpinTurns;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Direction;
import faintwind.guide.turntable.Advice;
import faintwind.guide.turntable.Advice.Action;
import faintwind.guide.turntable.Trouble;
import faintwind.job.live.LiveSession;
import faintwind.job.turntable.SpinDone;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.ui.part.Mark;
import faintwind.ui.part.TimeText;
import faintwind.ui.turntable.LiveTableView.Figure;
import faintwind.ui.turntable.LiveTableView.Said;
import faintwind.ui.turntable.LiveTableView.StepLine;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The words of the live turntable. */
final class LiveTableWords {
  private final Messages words;
  private final Plan plan;

  LiveTableWords(Messages words, Plan plan) {
    this.words = words;
    this.plan = plan;
  }

  /** What is turned, in a line. */
  String planned() {
    boolean separate = plan.form() == Plan.Form.SEPARATE;
    String key = separate ? "turntable.live.plan-separate" : "turntable.live.plan";
    return words.text(key, plan.spins().size());
  }

  /** Beat and direction of a spin. */
  static String spin(Messages words, PlannedSpin spin) {
    return words.text(
        "live-guide.spin-now.why",
        spin.beat().perMinute(),
        spin.beat().aTurn(),
        direction(words, spin));
  }

  private static String direction(Messages words, PlannedSpin spin) {
    return words.text(spin.direction() == Direction.CW ? "plot.cw" : "plot.ccw");
  }

  /**
   * Everything in words.
   *
   * @param countsIn beats still to come before the arm starts
   * @param ended what broke the recording off; empty where it runs
   */
  LiveTableView view(LiveSession session, Optional<Integer> countsIn, String ended) {
    LiveSession.Look look = session.look();
    Advice advice = look.advice();
    String action =
        countsIn.isPresent()
            ? words.text("turntable.live.counts-in", countsIn.get())
            : words.text(advice.action().key());
    return new LiveTableView(
        action,
        countsIn.isPresent() ? "" : more(advice),
        sentence(session, advice),
        figures(session, look),
        troubles(look, ended),
        steps(session, look),
        foot(look));
  }

  private String more(Advice advice) {
    if (advice.more_s().isEmpty()) {
      return "";
    }
    long more_s = Math.max(0, Math.round(advice.more_s().getAsDouble()));
    String time =
        more_s >= 60 && more_s < 600
            ? words.text("window.time.min", more_s / 60)
                + " "
                + words.text("window.time.s", more_s % 60)
            : TimeText.of(words, Duration.ofSeconds(more_s));
    return words.text("turntable.live.more", time);
  }

  private String sentence(LiveSession session, Advice advice) {
    Optional<PlannedSpin> spin = advice.step().flatMap(PlannedStep::spin);
    if (advice.action() == Action.KEEP_TURNING) {
      Optional<BeatTimes.Turning> turning = session.turning();
      return turning
          .map(
              t ->
                  words.text(
                      "turntable.live.steady",
                      number(Math.abs(session.behind_s()), 2),
                      session.behind_s() < 0 ? 0 : 1,
                      number(100 * t.steadiness().unsteadiness(), 1)))
          .orElseGet(() -> words.text("live-guide.keep-turning.why"));
    }
    if (advice.action() == Action.SPIN_NOW && spin.isPresent()) {
      return spin(words, spin.get());
    }
    if (advice.action() == Action.MOVE_BALLS) {
      return words.text("live-guide.move-balls.why", radiusOfNext(session));
    }
    return words.text(advice.action().key() + ".why");
  }

  private String radiusOfNext(LiveSession session) {
    return plan.steps().stream()
        .skip(session.look().at())
        .flatMap(s -> s.spin().stream())
        .findFirst()
        .map(s -> number(1000 * s.radius_m().value(), 0))
        .orElse("");
  }

  private List<Figure> figures(LiveSession session, LiveSession.Look look) {
    List<Figure> figures = new ArrayList<>();
    String unit = session.unit().symbol();
    Optional<LiveRow> row = look.row().filter(r -> r.signal().isPresent());
    figures.add(
        new Figure(
            words.text("turntable.live.signal"),
            row.map(r -> digits(r.signal().getAsDouble()) + " " + unit).orElse("–"),
            ""));
    look.advice()
        .step()
        .flatMap(PlannedStep::spin)
        .ifPresent(spin -> figures.add(speed(session, spin)));
    session
        .slope_1_s()
        .ifPresent(
            slope ->
                figures.add(
                    new Figure(
                        words.text(slope < 0 ? "turntable.live.falling" : "turntable.live.rising"),
                        digits(Math.abs(60 * slope)) + " " + unit,
                        words.text("turntable.live.a-minute"))));
    return figures;
  }

  private Figure speed(LiveSession session, PlannedSpin spin) {
    Optional<BeatTimes.Turning> turning = session.turning().filter(t -> t.turns() > 0);
    double radius_m = spin.radius_m().value();
    double speed_m_s =
        turning.map(t -> SpinTurns.marked(t).speed_m_s(radius_m)).orElse(spin.speed_m_s());
    String u =
        turning
            .map(t -> Math.hypot(SpinTurns.marked(t).relative_u(), relativeRadius(spin)))
            .map(share -> "± " + number(2 * share * speed_m_s, 3))
            .orElse(words.text("turntable.live.planned"));
    return new Figure(
        words.text("turntable.live.speed", spin.beat().aTurn()), number(speed_m_s, 3) + " m/s", u);
  }

  private static double relativeRadius(PlannedSpin spin) {
    return spin.radius_m().u().orElse(0) / spin.radius_m().value();
  }

  private List<Said> troubles(LiveSession.Look look, String ended) {
    List<Said> said = new ArrayList<>();
    if (!ended.isEmpty()) {
      said.add(new Said(ended, ""));
    }
    look.news().ifPresent(news -> said.add(new Said(words.line(news), "")));
    for (Trouble trouble : look.advice().troubles()) {
      Object[] amounts = trouble.amounts().stream().map(LiveTableWords::digits).toArray();
      String key = trouble.kind().key();
      said.add(new Said(words.text(key, amounts), words.text(key + ".todo", amounts)));
    }
    return said;
  }

  private List<StepLine> steps(LiveSession session, LiveSession.Look look) {
    List<StepLine> lines = new ArrayList<>();
    List<SpinDone> spins = session.spins();
    int spin = 0;
    for (int i = 0; i < plan.steps().size(); i++) {
      PlannedStep step = plan.steps().get(i);
      Mark mark = i < look.at() ? Mark.DONE : i == look.at() ? Mark.DOING : Mark.READY;
      String under = "";
      OptionalInt turned = OptionalInt.empty();
      if (step.kind() == PlannedStep.Kind.SPIN && i < look.at() && spin < spins.size()) {
        SpinDone done = spins.get(spin);
        mark = done.doubts().isEmpty() ? Mark.DONE : Mark.ATTENTION;
        under = turned(done);
        turned = OptionalInt.of(spin);
        spin++;
      }
      if (step.kind() != PlannedStep.Kind.REST) {
        boolean rests = i + 1 == look.at() && isRest(look.at());
        lines.add(
            new StepLine(mark, name(step), detail(step), under, turned, i == look.at() || rests));
      }
    }
    return lines;
  }

  private boolean isRest(int step) {
    return step < plan.steps().size() && plan.steps().get(step).kind() == PlannedStep.Kind.REST;
  }

  private String turned(SpinDone done) {
    String key =
        done.turns().how() == SpinTurns.How.BY_BEAT
            ? "turntable.live.by-beat"
            : "turntable.live.turned";
    return words.text(
        key, done.turns().turns(), number(done.turns().time_s().value(), 1), done.doubts().size());
  }

  private String name(PlannedStep step) {
    return switch (step.kind()) {
      case ZERO -> words.text("turntable.run.zero");
      case WARM_UP -> words.text("turntable.run.still");
      case SPIN ->
          words.text("turntable.run.speed", number(step.spin().orElseThrow().speed_m_s(), 2));
      case REST -> words.text("live-guide.stand-back");
      case MOVE -> words.text("live-guide.move-balls");
      case STILL -> words.text("live-guide.still-check");
    };
  }

  private String detail(PlannedStep step) {
    return step.spin()
        .map(s -> direction(words, s))
        .orElseGet(() -> TimeText.of(words, step.duration_s()));
  }

  private String foot(LiveSession.Look look) {
    double ahead_s = look.advice().more_s().orElse(0);
    for (int i = look.at() + 1; i < plan.steps().size(); i++) {
      ahead_s += plan.steps().get(i).duration_s();
    }
    return words.text(
        "turntable.live.foot", Math.round(look.time_s() / 60), Math.round(ahead_s / 60));
  }

  /** Three figures that matter. */
  private static String digits(double value) {
    double size = Math.abs(value);
    return number(value, size >= 100 ? 0 : size >= 1 ? 1 : 2);
  }

  private static String number(double value, int decimals) {
    return Numerals.places(value, decimals).replace('-', '−');
  }
}
