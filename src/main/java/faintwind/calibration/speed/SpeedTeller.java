package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.FieldFormula;
import java.util.OptionalDouble;

/**
 * Makes a {@link SpeedRow} of a speed that was found: its uncertainty, and the flags that depend on
 * both. For one log and one thread.
 */
final class SpeedTeller {
  private final double floor_m_s;
  private final double top_m_s;
  private final SpeedUncertainty uncertainty;
  private final ErrorMemory memory;

  SpeedTeller(Calibration calibration, FieldFormula formula, ErrorMemory memory) {
    this.memory = memory;
    floor_m_s = calibration.performance().floor_m_s();
    top_m_s = calibration.coverage().highest_m_s();
    uncertainty = new SpeedUncertainty(formula);
  }

  /**
   * A speed with its band and its flags, those of the row among them.
   *
   * @param row the row at its middle
   * @param found what was found there
   */
  SpeedRow told(EstimatedRow row, WeightedSums.Mean found) {
    double speed_m_s = found.speed_m_s();
    SpeedUncertainty.Band band = uncertainty.band(row, found);
    int flags = row.flags();
    if (speed_m_s < floor_m_s || !band.aboveStill()) {
      flags |= SpeedFlag.FLOOR.bit();
    }
    if (isAbove(speed_m_s)) {
      flags |= SpeedFlag.ABOVE.bit();
    }
    return new SpeedRow(
        OptionalDouble.of(speed_m_s), OptionalDouble.of(band.u95_m_s()), SpeedFlag.of(flags));
  }

  /** Sums of an average of what this tells. */
  WeightedSums sums() {
    return new WeightedSums(memory);
  }

  /** Whether a speed lies beyond the calibrated ones. */
  boolean isAbove(double speed_m_s) {
    return speed_m_s > top_m_s;
  }
}
