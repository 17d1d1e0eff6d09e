package faintwind.calibration.fit.track;

import faintwind.calibration.run.Series;
import java.util.Optional;
import java.util.stream.IntStream;

/** Mean of (supply/nominal)² between two times, exact for straight lines between the rows. */
public final class SupplyAlong {
  private final Optional<Series> supply_V;
  private final double nominal_V;

  public SupplyAlong(Optional<Series> supply_V, double nominal_V) {
    this.supply_V = supply_V;
    this.nominal_V = nominal_V;
  }

  /** 1 where no supply is recorded. */
  double meanSquare(double from_s, double to_s) {
    return supply_V.map(series -> LineMean.of(series, from_s, to_s, 1, nominal_V)).orElse(1.0);
  }

  /**
   * When the supply is first on, at half its nominal or more; the first time where it always is.
   */
  public double firstOn_s(double first_s) {
    return supply_V.stream()
        .flatMapToDouble(
            series ->
                IntStream.range(0, series.size())
                    .filter(i -> series.value(i) > 0.5 * nominal_V)
                    .mapToDouble(series::time_s))
        .findFirst()
        .orElse(first_s);
  }
}
