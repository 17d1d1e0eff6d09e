package faintwind.calibration;

import faintwind.message.Field;

/** A number that both a fit and the build have something to say about. */
public enum BuildQuantity {
  /** Heating power over heat capacity. */
  HEATING("K/s"),
  /** Difference at which the heat balance rests in still air. */
  STILL("K"),
  /** Share of the leads in the loss of still air. */
  LEAD_SHARE("1"),
  /** Time in which the resistor warms the ball through its glue. */
  GLUE_TIME("s"),
  /** Time constant of the ball in still air: the difference over the heating rate. */
  TIME_CONSTANT("s"),
  /** Signal per kelvin that the warm-up and the build give together. */
  SIGNAL_PER_K("1");

  private final String unit;

  BuildQuantity(String unit) {
    this.unit = unit;
  }

  /** Unit symbol; of the signal per kelvin, that of the signal is to be put before. */
  public String unit() {
    return unit;
  }

  /** The word in files and bundle keys. */
  public String word() {
    return Field.word(this);
  }
}
