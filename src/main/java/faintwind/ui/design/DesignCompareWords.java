package faintwind.ui.design;

import faintwind.job.design.PartsList;
import faintwind.job.design.Sized;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.advice.PartsNeeded;
import faintwind.physics.advice.Prices;
import faintwind.physics.design.CurvePoint;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.report.figure.CurvePlots;
import faintwind.report.paint.PlotFigure;
import faintwind.report.plot.PlotPoints;
import faintwind.ui.design.DesignSideModel.Compared;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Says and draws how designs differ. */
final class DesignCompareWords {
  private static final double PLOT_TO_M_S = 3;

  /** What the margin has room for. */
  static final List<OutcomeId> FEW =
      List.of(
          OutcomeId.SMALLEST_SPEED,
          OutcomeId.TIME_CONSTANT_AT_1,
          OutcomeId.SIGNAL_STILL,
          OutcomeId.HEATED_BALL_TEMPERATURE);

  /** Response, signal, smallest speed, sun error and what else decides. */
  static final List<OutcomeId> ALL =
      List.of(
          OutcomeId.SMALLEST_SPEED,
          OutcomeId.TIME_CONSTANT_AT_1,
          OutcomeId.TIME_CONSTANT_STILL,
          OutcomeId.WARM_UP_TIME,
          OutcomeId.STILL_DELTA,
          OutcomeId.DELTA_AT_1,
          OutcomeId.SIGNAL_STILL,
          OutcomeId.SUN_SHARE,
          OutcomeId.SUN_ONE_SHADED,
          OutcomeId.HEATED_BALL_TEMPERATURE,
          OutcomeId.LEAD_LOSS_SHARE,
          OutcomeId.HEATER_RESISTANCE,
          OutcomeId.HEATER_POWER,
          OutcomeId.BATTERY_TIME);

  private final Messages words;

  DesignCompareWords(Messages words) {
    this.words = words;
  }

  /** Names of the designs. */
  static List<String> heads(List<Compared> compared) {
    return compared.stream().map(Compared::name).toList();
  }

  /** Rows of a comparison: what, and its value for each design; an en dash where it has none. */
  List<List<String>> rows(List<Compared> compared, List<OutcomeId> ids) {
    List<List<String>> rows = new ArrayList<>();
    for (OutcomeId id : ids) {
      if (compared.stream().anyMatch(c -> c.worked().sheet().quantity(id).isPresent())) {
        String name = words.text("quantity." + id.id());
        rows.add(
            row(
                id.unit().isEmpty() ? name : name + ", " + id.unit(),
                compared,
                c ->
                    c.worked()
                        .sheet()
                        .quantity(id)
                        .map(q -> Numerals.digits(q.value().nominal()))
                        .orElse("–")));
      }
    }
    return rows;
  }

  /** What the parts of one instrument cost, and whether something is to be put right. */
  List<List<String>> lastRows(List<Compared> compared) {
    String currency = compared.get(0).worked().prices().currency();
    String cost = words.text("design.side.cost");
    return List.of(
        row(currency.isEmpty() ? cost : cost + ", " + currency, compared, c -> cost(c.worked())),
        row(words.text("design.side.verdict"), compared, this::verdict));
  }

  private static List<String> row(
      String name, List<Compared> compared, Function<Compared, String> value) {
    List<String> row = new ArrayList<>();
    row.add(name);
    compared.forEach(c -> row.add(value.apply(c)));
    return row;
  }

  private String cost(Sized worked) {
    var parts = PartsNeeded.of(worked.design(), 1);
    Prices.Cost cost = worked.prices().of(parts);
    if (cost.without() == parts.size()) {
      return "–";
    }
    String sum = PartsList.money(cost.sum());
    return cost.without() == 0 ? sum : words.text("design.side.cost-part", sum, cost.without());
  }

  private String verdict(Compared c) {
    return verdict(worst(c.worked().sheet()));
  }

  /** A verdict in a word. */
  String verdict(DesignVerdict verdict) {
    return words.text("design-verdict." + verdict.name().toLowerCase(Locale.ROOT));
  }

  /** What the worst of a design's outcomes says. */
  static DesignVerdict worst(DesignSheet sheet) {
    List<DesignVerdict> verdicts = sheet.quantities().stream().map(Outcome::verdict).toList();
    return verdicts.contains(DesignVerdict.STOP)
        ? DesignVerdict.STOP
        : verdicts.contains(DesignVerdict.IMPROVE) ? DesignVerdict.IMPROVE : DesignVerdict.GOOD;
  }

  /** Delta of each design against speed. */
  PlotFigure deltas(List<Compared> compared) {
    return plot("design.plot.delta", compared, CurvePoint::delta_K);
  }

  /** Time constant of each design against speed. */
  PlotFigure timeConstants(List<Compared> compared) {
    return plot("design.plot.time", compared, CurvePoint::timeConstant_s);
  }

  private PlotFigure plot(
      String title, List<Compared> compared, Function<CurvePoint, Interval> value) {
    return new CurvePlots(words)
        .againstSpeed(
            words.text(title),
            "",
            compared.stream()
                .map(c -> new CurvePlots.Curve(c.name(), points(c.worked(), value)))
                .toList());
  }

  private static PlotPoints points(Sized worked, Function<CurvePoint, Interval> value) {
    List<CurvePoint> curve =
        worked.sheet().curve().stream().filter(p -> p.speed_m_s() <= PLOT_TO_M_S).toList();
    return PlotPoints.of(
        curve.stream().mapToDouble(CurvePoint::speed_m_s).toArray(),
        curve.stream().mapToDouble(p -> value.apply(p).nominal()).toArray());
  }
}
