package faintwind.calibration.response;

/**
 * What {@link PhysicsShaped} says, without its powers and logarithms: each is a function of one
 * number and taken from a {@link QuickCurve}. Agrees within 10⁻⁸ of the value, and the slope of
 * still air's loss within 10⁻⁷. For one thread.
 */
public final class QuickLoss implements BoundLoss {
  private final PhysicsShaped exact;
  private final double[] q;
  private final double mixing;
  private final double perReference3;

  /** Of the film's temperature: conduction with its multiplier. */
  private final QuickCurve conduction;

  /** Of the film's temperature: natural part at 1 K and a viscosity at 300 K of 1. */
  private final QuickCurve natural;

  /** Of the air's temperature: diameter over viscosity, which at 300 K is 1. */
  private final QuickCurve perViscosity;

  private final FilmCurve still;
  private final QuickCurve fourthRoot = new QuickCurve(x -> Math.sqrt(Math.sqrt(x)));

  /** Of a part of the mixed sum: its power, and back. */
  private final QuickCurve power;

  private final QuickCurve root;

  /** Of film over air temperature: what the power of the forced part is divided by. */
  private final QuickCurve warmth;

  private final QuickCurve cooling = new QuickCurve(x -> -Math.log(x));

  /** Of Re: power of the forced part, its slope, logarithm over the pivot; and Re of the power. */
  private final QuickCurve forced;

  private final QuickCurve slope;
  private final QuickCurve tilt = new QuickCurve(re -> Math.log(re / PhysicsShaped.RE_PIVOT));
  private final QuickCurve reynolds;

  /** Of the lesser share of two: Σ share · ln share. */
  private final QuickCurve shares =
      new QuickCurve(p -> p > 0 ? p * Math.log(p) + (1 - p) * Math.log1p(-p) : 0);

  /** For what the curves are not filled for. */
  private final ExactLoss beyond;

  private double stillSlope;

  /** What hangs on difference and air temperature alone: several questions are asked of a row. */
  private double knownDelta_K = Double.NaN;

  private double knownAir_K = Double.NaN;
  private double conducted;
  private double cube;
  private double freePerRoot;
  private double diameterPerNu;
  private double warm;
  private double warmPower;

  /**
   * The model with its parameters.
   *
   * @param q the loss parameters in order
   */
  public QuickLoss(PhysicsShaped exact, double[] q) {
    this.exact = exact;
    this.q = q.clone();
    beyond = new ExactLoss(exact, this.q);
    double m = q[PhysicsShaped.MIXING];
    mixing = m;
    double reference_K = exact.reference_K();
    perReference3 = 1 / (reference_K * reference_K * reference_K);
    conduction =
        new QuickCurve(film -> q[PhysicsShaped.CONDUCTION] * exact.conductivityRatio(film));
    natural =
        new QuickCurve(film -> q[PhysicsShaped.NATURAL] * exact.naturalPart(1, film, nu(film)));
    still =
        new FilmCurve(
            film -> exact.conductivityRatio(film) * q[PhysicsShaped.CONDUCTION] + fixed(film),
            film ->
                0.5
                    * q[PhysicsShaped.CONDUCTION]
                    * exact.conductivityRatio(film)
                    * q[PhysicsShaped.NATURAL]
                    * exact.naturalPart(1, film, nu(film)));
    perViscosity = new QuickCurve(air_K -> exact.diameter_m() / nu(air_K));
    power = new QuickCurve(x -> Math.pow(x, m));
    root = new QuickCurve(x -> Math.pow(x, 1 / m));
    warmth = new QuickCurve(x -> Math.pow(x, q[PhysicsShaped.WARMTH] * m));
    double lnForced = Math.log(q[PhysicsShaped.FORCED] * PhysicsShaped.PR_04);
    double tilted = q[PhysicsShaped.TILT];
    forced = new QuickCurve(re -> Math.exp(m * (lnForced + PhysicsShaped.logShape(re, tilted))));
    slope = new QuickCurve(re -> PhysicsShaped.slope(re) + tilted);
    reynolds =
        new QuickCurve(w -> w > 0 ? PhysicsShaped.reynolds(Math.log(w) / m - lnForced, tilted) : 0);
  }

  /** Viscosity at a temperature over that at 300 K. */
  private static double nu(double temperature_K) {
    return Math.exp(AirPoint.NU_EXPONENT * AirPoint.log(temperature_K));
  }

  /** Leads and radiation, 1/s. */
  private double fixed(double film_K) {
    double cubed = film_K * film_K * film_K * perReference3;
    return q[PhysicsShaped.LEADS] + q[PhysicsShaped.RADIATION] * cubed;
  }

  private void know(double delta_K, double air_K) {
    if (delta_K == knownDelta_K && air_K == knownAir_K) {
      return;
    }
    knownDelta_K = delta_K;
    knownAir_K = air_K;
    double film = air_K + 0.5 * delta_K;
    conducted = conduction.at(film);
    cube = film * film * film * perReference3;
    freePerRoot = natural.at(film) * fourthRoot.at(shown(delta_K));
    diameterPerNu = perViscosity.at(air_K);
    warm = film / air_K;
    warmPower = warmth.at(warm);
  }

  private static double shown(double delta_K) {
    double delta = Math.abs(delta_K);
    return delta < PhysicsShaped.LEAST_DELTA_K ? PhysicsShaped.LEAST_DELTA_K : delta;
  }

  @Override
  public double stillLoss_1_s(double delta_K, AirPoint air) {
    double delta = shown(delta_K);
    if (!still.at(air.air_K() + 0.5 * delta_K)) {
      double loss_1_s = beyond.stillLoss_1_s(delta_K, air);
      stillSlope = beyond.stillSlope();
      return loss_1_s;
    }
    double root = fourthRoot.at(delta) * air.perRootNu_300();
    double free_1_s = root * still.free;
    stillSlope = 0.5 * (still.constantSlope + root * still.freeSlope) + 0.25 * free_1_s / delta;
    return still.constant + free_1_s;
  }

  @Override
  public double stillSlope() {
    return stillSlope;
  }

  @Override
  public void speeds_m_s(double[] losses, double delta_K, AirPoint air) {
    know(delta_K, air.air_K());
    double free = freePerRoot * air.perRootNu_300();
    double freePower = power.at(free);
    double perRe_m_s = air.nu_300() / diameterPerNu;
    double twice = 2 / conducted;
    double rest = q[PhysicsShaped.LEADS] + q[PhysicsShaped.RADIATION] * cube;
    for (int i = 0; i < losses.length; i++) {
      double mixed = (losses[i] - rest) * twice - 2;
      double moved = mixed > free ? power.at(mixed) - freePower : 0;
      losses[i] = moved > 0 ? reynolds.at(moved * warmPower) * perRe_m_s : 0;
    }
  }

  @Override
  public double loss_1_s(double speed_m_s, double delta_K, AirPoint air) {
    know(delta_K, air.air_K());
    double re = speed_m_s * diameterPerNu / air.nu_300();
    if (!(re > 0)) {
      return beyond.loss_1_s(speed_m_s, delta_K, air);
    }
    double sum = forced.at(re) / warmPower + power.at(freePerRoot * air.perRootNu_300());
    double core = conducted + 0.5 * conducted * root.at(sum);
    return core + q[PhysicsShaped.LEADS] + q[PhysicsShaped.RADIATION] * cube;
  }

  @Override
  public void loss(double speed_m_s, double delta_K, AirPoint air, double[] out) {
    know(delta_K, air.air_K());
    double re = speed_m_s * diameterPerNu / air.nu_300();
    if (!(re > 0)) {
      exact.loss(q, speed_m_s, delta_K, air, out);
      return;
    }
    double half = 0.5 / (air.air_K() + 0.5 * delta_K);
    double radiated = q[PhysicsShaped.RADIATION] * cube;
    double x = forced.at(re) / warmPower;
    double y = power.at(freePerRoot * air.perRootNu_300());
    double sum = x + y;
    double byX = x / sum;
    double mixed = root.at(sum);
    double share = 0.5 * conducted * mixed;
    double byLnX = share * byX;
    double byLnY = share - byLnX;
    double core = conducted + share;
    double dLnY = 0.25 * (1 / shown(delta_K) - (1 + 2 * AirPoint.NU_EXPONENT) * half);
    out[0] = core + q[PhysicsShaped.LEADS] + radiated;
    out[1] = byLnX * slope.at(re) / speed_m_s;
    out[2] =
        half * (core * AirPoint.K_EXPONENT + 3 * radiated - byLnX * q[PhysicsShaped.WARMTH])
            + byLnY * dLnY;
    out[3 + PhysicsShaped.CONDUCTION] = core / q[PhysicsShaped.CONDUCTION];
    out[3 + PhysicsShaped.FORCED] = byLnX / q[PhysicsShaped.FORCED];
    out[3 + PhysicsShaped.NATURAL] = byLnY / q[PhysicsShaped.NATURAL];
    out[3 + PhysicsShaped.LEADS] = 1;
    out[3 + PhysicsShaped.RADIATION] = cube;
    out[3 + PhysicsShaped.TILT] = byLnX * tilt.at(re);
    out[3 + PhysicsShaped.WARMTH] = byLnX * cooling.at(warm);
    // ∂ ln M/∂m = (Σ xᵢᵐ ln xᵢ / Σ xᵢᵐ − ln M)/m, and with the shares pᵢ = xᵢᵐ/Σ it is Σ pᵢ ln
    // pᵢ/m²
    out[3 + PhysicsShaped.MIXING] = share * shares.at(Math.min(byX, 1 - byX)) / (mixing * mixing);
  }
}
