package faintwind.calibration.speed;

import faintwind.calibration.Calibration;

/** A made-up calibration for tests of other packages. */
public final class TestCalibration {
  private TestCalibration() {}

  /** That of an instrument that obeys the formula exactly; delta in kelvin, supply 5 V. */
  public static Calibration ofModel() {
    return new ModelInstrument(0.02).calibration();
  }
}
