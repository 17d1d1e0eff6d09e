package faintwind.calibration.fit.track;

import faintwind.calibration.run.Series;
import java.util.Optional;

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
}
