package faintwind.calibration.build;

/**
 * One thing that what the build says depends on. Where no uncertainty is on record, the one here
 * counts: common practice, no source, except where another is named.
 */
public enum BuildPart {
  SUPPLY(0.02),
  RESISTOR(0.01),
  MASS(0.01),
  SPECIFIC_HEAT(0.02),
  /** What glue, coat and resistor add to the heat capacity of the metal. */
  FILLING(0.03),
  DIAMETER(0.005),
  EMISSIVITY(0.5),
  LEADS(0.5),
  /**
   * Convection of a ball in still air: published results lie up to 12 % apart (edges of a
   * rectangular distribution, as in the design sheet), so u = 12 %/√3.
   */
  CONVECTION(0.12 / Math.sqrt(3)),
  /** Kelvin as the chain states them against kelvin. */
  SCALE(0.03),
  /** Time in which the resistor warms through its glue. */
  GLUE(0.8);

  private final double usual;

  BuildPart(double usual) {
    this.usual = usual;
  }

  /** Standard uncertainty of its logarithm where none is on record. */
  public double usual() {
    return usual;
  }
}
