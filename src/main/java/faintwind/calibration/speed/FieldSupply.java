package faintwind.calibration.speed;

import faintwind.calibration.run.SignalPath;
import faintwind.calibration.speed.state.Decay;
import faintwind.calibration.speed.state.PreparedRow.Supply;
import java.util.OptionalDouble;

/**
 * Heating rate along a log from its supply column: p · (supply / calibration's supply)², the supply
 * smoothed over the past seconds, since a voltmeter's noise is no change of the power. Tolerated:
 * five per cent (common practice, no source); beyond it the speed is corrected all the same but
 * flagged. For one log and one thread.
 */
final class FieldSupply {
  private final double heating_K_s;
  private final OptionalDouble nominal_V;
  private final Decay decay = new Decay(OwnChoices.SUPPLY_SMOOTHING_S);
  private double smooth_V;
  private Supply supply = Supply.NOT_RECORDED;

  FieldSupply(double heating_K_s, SignalPath signal) {
    this.heating_K_s = heating_K_s;
    this.nominal_V = signal.supply_V();
  }

  /** Takes a row's supply and tells the heating rate, K/s. */
  double next(LogSample row, double step_s) {
    if (!row.knows(LogSample.SUPPLY)) {
      supply = supply == Supply.OFF ? Supply.OFF : Supply.NOT_RECORDED;
      return supply == Supply.OFF ? 0 : heating_K_s * ratio2();
    }
    double volts = row.supply;
    double off_V =
        nominal_V.isPresent()
            ? OwnChoices.SUPPLY_OFF_SHARE * nominal_V.getAsDouble()
            : OwnChoices.SUPPLY_OFF_V;
    boolean off = Math.abs(volts) < off_V;
    boolean jump = Math.abs(volts - smooth_V) > OwnChoices.SUPPLY_JUMP_SHARE * Math.abs(smooth_V);
    smooth_V = jump || off ? volts : smooth_V + (volts - smooth_V) * decay.share(step_s);
    if (off) {
      supply = Supply.OFF;
      return nominal_V.isPresent() ? heating_K_s * ratio2() : 0;
    }
    double ratio = nominal_V.isPresent() ? smooth_V / nominal_V.getAsDouble() : 1;
    supply = Math.abs(Math.abs(ratio) - 1) > OwnChoices.SUPPLY_TOLERANCE ? Supply.OUT : Supply.GOOD;
    return heating_K_s * ratio2();
  }

  /** What the last row's supply says. */
  Supply supply() {
    return supply;
  }

  private double ratio2() {
    if (nominal_V.isEmpty() || (smooth_V == 0 && supply == Supply.NOT_RECORDED)) {
      return 1;
    }
    double ratio = smooth_V / nominal_V.getAsDouble();
    return ratio * ratio;
  }
}
