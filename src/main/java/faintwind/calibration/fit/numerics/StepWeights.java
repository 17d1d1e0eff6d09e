package faintwind.calibration.fit.numerics;

/**
 * What one step of Runge and Kutta's fourth-order method makes of the sensitivities. They obey a
 * linear equation, S' = A S + b at each of the four stages, with the same A for every unknown: so
 * the step is S → Φ S + Σ Wᵢ bᵢ, and Φ and the Wᵢ are formed once, from the last stage back, for
 * all unknowns (own calculation).
 *
 * <p>The states are carried air, difference and resistor. Aᵢ has the rows (air, 0, 0), (past,
 * −loss, s) and, for the resistor, −(f/τ) times the second less 1/τ, s = 1/(1 − f); what comes into
 * the second row comes −f/τ times into the third.
 */
final class StepWeights {
  static final int STAGES = 4;

  /** Set before {@link #form}, by stage: the entries of A. */
  final double[] air = new double[STAGES];

  final double[] past = new double[STAGES];
  final double[] loss = new double[STAGES];

  /** By stage: what b's first, second and third part add to the carried air's sensitivity. */
  final double[] airByAir = new double[STAGES];

  /** The same to the difference's. */
  final double[] byAir = new double[STAGES];

  final double[] byDifference = new double[STAGES];
  final double[] byResistor = new double[STAGES];

  /** The same to the resistor's. */
  final double[] resistorByAir = new double[STAGES];

  final double[] resistorByDifference = new double[STAGES];
  final double[] resistorByResistor = new double[STAGES];

  /** Φ, row by row, without what is always nothing. */
  double airKept;

  final double[] difference = new double[3];
  final double[] resistor = new double[3];

  /**
   * Forms the weights of a step.
   *
   * @param h its length, s
   * @param feed f/τ, 1/s
   * @param slow 1/τ, 1/s
   * @param s 1/(1 − f)
   */
  void form(double h, double feed, double slow, double s) {
    airKept = 1;
    difference[0] = 0;
    difference[1] = 1;
    difference[2] = 0;
    resistor[0] = 0;
    resistor[1] = 0;
    resistor[2] = 1;
    double air0 = 0;
    double[] zero = {0, 0, 0};
    double[] one = {0, 0, 0};
    for (int i = STAGES - 1; i >= 0; i--) {
      double own = i == 0 || i == STAGES - 1 ? h / 6 : h / 3;
      double through = i == STAGES - 1 ? 0 : i == STAGES - 2 ? h : h / 2;
      airByAir[i] = own + through * air0;
      air0 = airByAir[i] * air[i];
      airKept += air0;
      byAir[i] = through * zero[0];
      byResistor[i] = through * zero[2];
      byDifference[i] = own + through * zero[1] - feed * byResistor[i];
      times(i, byAir[i], byDifference[i], byResistor[i], slow, s, zero);
      add(zero, difference);
      resistorByAir[i] = through * one[0];
      resistorByResistor[i] = own + through * one[2];
      resistorByDifference[i] = through * one[1] - feed * resistorByResistor[i];
      times(i, resistorByAir[i], resistorByDifference[i], resistorByResistor[i], slow, s, one);
      add(one, resistor);
    }
  }

  /** A row of weights times A. */
  private void times(int i, double v, double d, double q, double slow, double s, double[] product) {
    product[0] = v * air[i] + d * past[i];
    product[1] = -d * loss[i];
    product[2] = d * s - q * slow;
  }

  private static void add(double[] row, double[] sum) {
    sum[0] += row[0];
    sum[1] += row[1];
    sum[2] += row[2];
  }
}
