package faintwind.calibration.fit.setup;

/**
 * How the air that the arm carries round comes to be known.
 *
 * @param spread standard deviation of the share as the fit takes it, before any recording
 * @param allowed relative standard uncertainty of every speed that stays, whatever the recordings
 *     show
 */
public record CarriedKnown(double spread, double allowed) {

  /** Measured, and stated with the runs. */
  public static CarriedKnown stated(double u) {
    return new CarriedKnown(u, 0);
  }

  /** Left to the recordings. */
  public static CarriedKnown byRecordings() {
    return new CarriedKnown(OwnChoices.CARRIED_SPREAD, OwnChoices.CARRIED_FORM);
  }
}
