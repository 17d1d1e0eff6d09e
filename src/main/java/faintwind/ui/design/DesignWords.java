package faintwind.ui.design;

import faintwind.job.design.Sized;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.design.CoursePoint;
import faintwind.physics.design.CurvePoint;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.report.figure.BallDrawing;
import faintwind.report.figure.CurvePlots;
import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotPoints;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Note;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Says and draws what follows from a design. */
final class DesignWords {
  private static final List<OutcomeId> FIRST =
      List.of(
          OutcomeId.SMALLEST_SPEED,
          OutcomeId.STILL_DELTA,
          OutcomeId.DELTA_AT_1,
          OutcomeId.TIME_CONSTANT_STILL,
          OutcomeId.TIME_CONSTANT_AT_1,
          OutcomeId.WARM_UP_TIME,
          OutcomeId.LEAD_LOSS_SHARE,
          OutcomeId.HEATER_POWER,
          OutcomeId.HEATED_BALL_TEMPERATURE,
          OutcomeId.BATTERY_TIME,
          OutcomeId.BIOT,
          OutcomeId.BORE_CLEARANCE,
          OutcomeId.RANGE_SHARE);
  private static final double PLOT_TO_M_S = 3;

  private final Messages words;

  DesignWords(Messages words) {
    this.words = words;
  }

  /** A part's name without what stands in brackets after it. */
  static String plain(String name) {
    int bracket = name.indexOf(" (");
    return bracket < 0 ? name : name.substring(0, bracket);
  }

  /**
   * One outcome.
   *
   * @param id stable id
   * @param name in words
   * @param plain what the name means, for somebody new; empty where it says it itself
   * @param value with its unit
   * @param range such as "29 to 35"; empty where it has none
   * @param judged what to make of it
   */
  record OutcomeLine(
      String id, String name, String plain, String value, String range, Judged judged) {}

  /**
   * A verdict.
   *
   * @param mark its mark
   * @param word in a word; empty where there is nothing to judge
   * @param reason why it is not good, and the nearest thing that works; empty where it is good, or
   *     where the same stands above already
   */
  record Judged(Mark mark, String word, String reason) {}

  /** The outcomes that decide, and every other that is not good. */
  List<OutcomeLine> first(Sized worked) {
    List<Outcome> chosen = new ArrayList<>();
    for (OutcomeId id : FIRST) {
      worked.sheet().quantity(id).ifPresent(chosen::add);
    }
    worked.sheet().quantities().stream()
        .filter(q -> !FIRST.contains(q.id()))
        .filter(q -> q.verdict() == DesignVerdict.IMPROVE || q.verdict() == DesignVerdict.STOP)
        .forEach(chosen::add);
    // what has to be put right comes first, else it may be out of sight
    chosen.sort(Comparator.comparing(q -> -urgency(q.verdict())));
    return outcomes(chosen);
  }

  private static int urgency(DesignVerdict verdict) {
    return switch (verdict) {
      case STOP -> 2;
      case IMPROVE -> 1;
      case GOOD, PLAIN -> 0;
    };
  }

  /** All others. */
  List<OutcomeLine> rest(Sized worked) {
    return outcomes(
        worked.sheet().quantities().stream()
            .filter(q -> !FIRST.contains(q.id()))
            .filter(q -> q.verdict() == DesignVerdict.GOOD || q.verdict() == DesignVerdict.PLAIN)
            .toList());
  }

  /** A range that many leave alike is told in full once, and marked at each. */
  private List<OutcomeLine> outcomes(List<Outcome> quantities) {
    List<OutcomeLine> all = new ArrayList<>();
    List<String> told = new ArrayList<>();
    for (Outcome q : quantities) {
      String reason = q.reason().map(words::sentence).orElse("");
      all.add(outcome(q, told.contains(reason) ? "" : reason));
      told.add(reason);
    }
    return all;
  }

  private OutcomeLine outcome(Outcome q, String reason) {
    Interval v = q.value();
    boolean exact = Numerals.digits(v.low()).equals(Numerals.digits(v.high()));
    boolean outside =
        q.reason().isPresent()
            && (q.verdict() == DesignVerdict.GOOD || q.verdict() == DesignVerdict.PLAIN);
    String verdict = q.verdict().name().toLowerCase(Locale.ROOT);
    return new OutcomeLine(
        q.id().id().toLowerCase(Locale.ROOT).replace('_', '-'),
        words.text("quantity." + q.id().id()),
        FIRST.contains(q.id()) ? words.text("quantity." + q.id().id() + ".plain") : "",
        (Numerals.digits(v.nominal()) + " " + q.id().unit()).strip(),
        exact
            ? ""
            : words.text("design.range", Numerals.digits(v.low()), Numerals.digits(v.high())),
        new Judged(
            outside ? Mark.ATTENTION : mark(q.verdict()),
            words.text(outside ? "design-verdict.outside" : "design-verdict." + verdict),
            reason));
  }

  /** How a verdict is marked. */
  static Mark mark(DesignVerdict verdict) {
    return switch (verdict) {
      case GOOD -> Mark.DONE;
      case IMPROVE -> Mark.ATTENTION;
      case STOP -> Mark.BLOCKED;
      case PLAIN -> Mark.READY;
    };
  }

  /** The equation, this instrument's numbers, the source. */
  Note why(String outcomeId, Sized worked) {
    Outcome q =
        worked.sheet().quantities().stream()
            .filter(
                each -> each.id().id().toLowerCase(Locale.ROOT).replace('_', '-').equals(outcomeId))
            .findFirst()
            .orElseThrow();
    String name = words.text("quantity." + q.id().id());
    List<String> equations = new ArrayList<>();
    new DesignNumbers(worked, words).line(q.id()).ifPresent(equations::add);
    Interval v = q.value();
    String result =
        words.text(
            "design.why.result",
            Numerals.digits(v.nominal()),
            q.id().unit(),
            Numerals.digits(v.low()),
            Numerals.digits(v.high()));
    return new Note(
        name, words.text("quantity." + q.id().id() + ".why"), equations, result, budget(worked, q));
  }

  /** What the band comes from: the three parts that move delta most. */
  private String budget(Sized worked, Outcome q) {
    if (q.id() != OutcomeId.STILL_DELTA && q.id() != OutcomeId.DELTA_AT_1) {
      return "";
    }
    List<String> parts =
        worked.sheet().budget().stream()
            .limit(3)
            .map(
                line ->
                    words.text(
                        "design.why.part",
                        words.text("part." + line.part().name().toLowerCase(Locale.ROOT)),
                        Numerals.digits(Math.max(line.down(), line.up()))))
            .toList();
    return words.text("design.why.budget", String.join(", ", parts));
  }

  /** Delta against speed with the band of the tolerances. */
  PlotFigure delta(Sized worked) {
    return new CurvePlots(words)
        .againstSpeed(
            words.text("design.plot.delta"),
            words.text("design.plot.band"),
            List.of(new CurvePlots.Curve("", points(worked, CurvePoint::delta_K))));
  }

  private static PlotPoints points(Sized worked, Function<CurvePoint, Interval> value) {
    List<CurvePoint> curve =
        worked.sheet().curve().stream().filter(p -> p.speed_m_s() <= PLOT_TO_M_S).toList();
    return PlotPoints.withBand(
        curve.stream().mapToDouble(CurvePoint::speed_m_s).toArray(),
        curve.stream().mapToDouble(p -> value.apply(p).nominal()).toArray(),
        curve.stream().mapToDouble(p -> value.apply(p).low()).toArray(),
        curve.stream().mapToDouble(p -> value.apply(p).high()).toArray());
  }

  /** Warm-up and cool-down in still air. */
  PlotFigure course(Sized worked) {
    List<CoursePoint> course = worked.sheet().course();
    double[] minutes = course.stream().mapToDouble(p -> p.time_s() / 60).toArray();
    double[] up = course.stream().mapToDouble(CoursePoint::warming_K).toArray();
    double[] down = course.stream().mapToDouble(CoursePoint::cooling_K).toArray();
    return new CurvePlots(words)
        .against(
            words.text("design.plot.minutes"),
            words.text("design.plot.course"),
            List.of(
                new CurvePlots.Curve(words.text("design.plot.up"), PlotPoints.of(minutes, up)),
                new CurvePlots.Curve(
                    words.text("design.plot.down"), PlotPoints.of(minutes, down))));
  }

  /** The heated ball with its bore and the resistor in it. */
  BallDrawing ball(Sized worked) {
    Design d = worked.design();
    return BallDrawing.of(
        new BallDrawing.Ball(
            1e3 * d.ball().diameter_m().nominal(),
            1e3 * d.ball().bore().diameter_m(),
            1e3 * d.ball().length_m(d.ball().bore().heatedDepth_m()),
            1e3 * d.heater().style().body().diameter_m().nominal(),
            1e3 * d.heater().style().body().length_m()),
        words);
  }
}
