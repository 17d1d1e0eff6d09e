package faintwind.ui;

import faintwind.job.DesignWork;
import faintwind.message.Messages;
import faintwind.physics.design.CurvePoint;
import faintwind.physics.design.Design;
import faintwind.physics.design.Interval;
import faintwind.physics.design.Quantity;
import faintwind.physics.design.QuantityId;
import faintwind.physics.design.Verdict;
import faintwind.report.plot.BallDrawing;
import faintwind.report.plot.CurvePlots;
import faintwind.report.plot.PlotFigure;
import faintwind.report.plot.PlotPoints;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Note;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Says and draws what follows from a design. */
final class DesignWords {
  private static final List<QuantityId> FIRST =
      List.of(
          QuantityId.STILL_DELTA,
          QuantityId.DELTA_AT_1,
          QuantityId.SMALLEST_SPEED,
          QuantityId.TIME_CONSTANT_STILL,
          QuantityId.WARM_UP_TIME,
          QuantityId.LEAD_LOSS_SHARE,
          QuantityId.HEATER_POWER,
          QuantityId.HEATED_BALL_TEMPERATURE,
          QuantityId.BATTERY_TIME,
          QuantityId.BIOT,
          QuantityId.BORE_CLEARANCE,
          QuantityId.RANGE_SHARE);
  private static final double PLOT_TO_M_S = 3;

  private final Messages words;

  DesignWords(Messages words) {
    this.words = words;
  }

  /** Three significant digits. */
  static String figures(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
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
   * @param value with its unit
   * @param range such as "29 to 35"; empty where it has none
   * @param mark of the verdict
   * @param verdict in a word; empty where there is nothing to judge
   * @param reason why it is not good, and the nearest thing that works; empty where it is good
   */
  record Outcome(
      String id,
      String name,
      String value,
      String range,
      Mark mark,
      String verdict,
      String reason) {}

  /** The outcomes that decide, and every other that is not good. */
  List<Outcome> first(DesignWork.Worked worked) {
    List<Outcome> outcomes = new ArrayList<>();
    for (QuantityId id : FIRST) {
      worked.sheet().quantity(id).ifPresent(q -> outcomes.add(outcome(q)));
    }
    worked.sheet().quantities().stream()
        .filter(q -> !FIRST.contains(q.id()))
        .filter(q -> q.verdict() == Verdict.IMPROVE || q.verdict() == Verdict.STOP)
        .forEach(q -> outcomes.add(outcome(q)));
    return outcomes;
  }

  /** All others. */
  List<Outcome> rest(DesignWork.Worked worked) {
    return worked.sheet().quantities().stream()
        .filter(q -> !FIRST.contains(q.id()))
        .filter(q -> q.verdict() == Verdict.GOOD || q.verdict() == Verdict.PLAIN)
        .map(this::outcome)
        .toList();
  }

  private Outcome outcome(Quantity q) {
    Interval v = q.value();
    boolean exact = figures(v.low()).equals(figures(v.high()));
    return new Outcome(
        q.id().id().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
        words.text("quantity." + q.id().id()),
        (figures(v.nominal()) + " " + q.id().unit()).strip(),
        exact ? "" : words.text("design.range", figures(v.low()), figures(v.high())),
        mark(q.verdict()),
        words.text("design-verdict." + q.verdict().name().toLowerCase(java.util.Locale.ROOT)),
        q.reason().map(words::sentence).orElse(""));
  }

  private static Mark mark(Verdict verdict) {
    return switch (verdict) {
      case GOOD -> Mark.DONE;
      case IMPROVE -> Mark.ATTENTION;
      case STOP -> Mark.BLOCKED;
      case PLAIN -> Mark.READY;
    };
  }

  /** The equation, this instrument's numbers, the source. */
  Note why(String outcomeId, DesignWork.Worked worked) {
    Quantity q =
        worked.sheet().quantities().stream()
            .filter(
                each ->
                    each.id()
                        .id()
                        .toLowerCase(java.util.Locale.ROOT)
                        .replace('_', '-')
                        .equals(outcomeId))
            .findFirst()
            .orElseThrow();
    String name = words.text("quantity." + q.id().id());
    List<String> equations = new ArrayList<>();
    numbers(q.id(), worked).ifPresent(equations::add);
    Interval v = q.value();
    String result =
        words.text(
            "design.why.result",
            figures(v.nominal()),
            q.id().unit(),
            figures(v.low()),
            figures(v.high()));
    return new Note(
        name, words.text("quantity." + q.id().id() + ".why"), equations, result, budget(worked, q));
  }

  /** What the band comes from: the three parts that move delta most. */
  private String budget(DesignWork.Worked worked, Quantity q) {
    if (q.id() != QuantityId.STILL_DELTA && q.id() != QuantityId.DELTA_AT_1) {
      return "";
    }
    List<String> parts =
        worked.sheet().budget().stream()
            .limit(3)
            .map(
                line ->
                    words.text(
                        "design.why.part",
                        words.text("part." + line.part().name().toLowerCase(java.util.Locale.ROOT)),
                        figures(Math.max(line.down(), line.up()))))
            .toList();
    return words.text("design.why.budget", String.join(", ", parts));
  }

  private Optional<String> numbers(QuantityId id, DesignWork.Worked worked) {
    Design d = worked.design();
    return switch (id) {
      case HEATER_POWER ->
          Optional.of(
              words.text(
                  "design.why.power",
                  value(worked, QuantityId.HEATER_VOLTAGE),
                  figures(d.heater().resistance_ohm().nominal()),
                  value(worked, QuantityId.HEATER_POWER)));
      case STILL_DELTA, DELTA_AT_1 ->
          Optional.of(
              words.text(
                  "design.why.delta",
                  value(worked, QuantityId.HEATER_POWER),
                  figures(1e3 * nominal(worked, QuantityId.HEATER_POWER) / nominal(worked, id)),
                  value(worked, id)));
      case TIME_CONSTANT_STILL ->
          Optional.of(
              words.text(
                  "design.why.time",
                  value(worked, QuantityId.BALL_HEAT_CAPACITY),
                  figures(
                      1e3
                          * nominal(worked, QuantityId.HEATER_POWER)
                          / nominal(worked, QuantityId.STILL_DELTA)),
                  value(worked, id)));
      case LEAD_LOSS_SHARE ->
          Optional.of(
              words.text(
                  "design.why.leads",
                  value(worked, QuantityId.LEAD_LOSS),
                  value(worked, QuantityId.STILL_DELTA),
                  value(worked, QuantityId.HEATER_POWER),
                  value(worked, id)));
      default -> Optional.empty();
    };
  }

  private static double nominal(DesignWork.Worked worked, QuantityId id) {
    return worked.sheet().quantity(id).map(q -> q.value().nominal()).orElse(0.0);
  }

  private static String value(DesignWork.Worked worked, QuantityId id) {
    return figures(nominal(worked, id));
  }

  /** Delta against speed with the band of the tolerances. */
  PlotFigure delta(DesignWork.Worked worked) {
    return new CurvePlots(words)
        .againstSpeed(
            words.text("design.plot.delta"),
            words.text("design.plot.band"),
            List.of(new CurvePlots.Curve("", points(worked, CurvePoint::delta_K))));
  }

  /** Time constants of the compared designs. */
  PlotFigure timeConstants(List<DesignModel.Compared> compared) {
    return new CurvePlots(words)
        .againstSpeed(
            words.text("design.plot.time"),
            "",
            compared.stream()
                .map(
                    c ->
                        new CurvePlots.Curve(
                            c.name(), middle(points(c.worked(), CurvePoint::timeConstant_s))))
                .toList());
  }

  private static PlotPoints points(DesignWork.Worked worked, Function<CurvePoint, Interval> value) {
    List<CurvePoint> curve =
        worked.sheet().curve().stream().filter(p -> p.speed_m_s() <= PLOT_TO_M_S).toList();
    return PlotPoints.withBand(
        curve.stream().mapToDouble(CurvePoint::speed_m_s).toArray(),
        curve.stream().mapToDouble(p -> value.apply(p).nominal()).toArray(),
        curve.stream().mapToDouble(p -> value.apply(p).low()).toArray(),
        curve.stream().mapToDouble(p -> value.apply(p).high()).toArray());
  }

  private static PlotPoints middle(PlotPoints points) {
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = points.x(i);
      y[i] = points.y(i);
    }
    return PlotPoints.of(x, y);
  }

  /** The heated ball with its bore and the resistor in it. */
  BallDrawing ball(DesignWork.Worked worked) {
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

  /** Rows of the comparison: what, and its value for each design. */
  List<List<String>> sideBySide(List<DesignModel.Compared> compared) {
    List<List<String>> rows = new ArrayList<>();
    for (QuantityId id :
        List.of(
            QuantityId.TIME_CONSTANT_STILL,
            QuantityId.DELTA_AT_1,
            QuantityId.SMALLEST_SPEED,
            QuantityId.HEATED_BALL_TEMPERATURE,
            QuantityId.LEAD_LOSS_SHARE,
            QuantityId.SUN_SHARE)) {
      List<String> row = new ArrayList<>();
      String name = words.text("design.side." + id.name().toLowerCase(java.util.Locale.ROOT));
      row.add(name + ", " + id.unit());
      for (DesignModel.Compared c : compared) {
        row.add(c.worked().sheet().quantity(id).map(q -> figures(q.value().nominal())).orElse("–"));
      }
      rows.add(row);
    }
    return rows;
  }
}
