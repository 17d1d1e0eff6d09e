package faintwind.calibration.response;

import faintwind.calibration.FormulaFit;
import faintwind.physics.AirState;
import java.util.List;

/**
 * Loss in the shape that published ball correlations give it, with free multipliers:
 *
 * <p>loss = conduction · k(Tf)/k(Tref) · (1 + M/2) + leads + radiation · (Tf/Tref)³, M = (Xᵐ +
 * Yᵐ)^(1/m),<br>
 * X = forced · (0.4 Re^½ + 0.06 Re^⅔) Pr^0.4 · (Re/300)^tilt · (Tair/Tf)^warmth,<br>
 * Y = natural · 0.589 Ra^¼ / (1 + (0.469/Pr)^(9/16))^(4/9).
 *
 * <p>Conduction limit Nu = 2; forced part by Whitaker (1972), AIChE J. 18, 361, Re with the air's
 * own viscosity; natural part by Churchill (1983); the parts above the limit are mixed by a power
 * rule (Churchill and Usagi 1972, from memory; exponent usually 3). Conduction and natural part at
 * the film temperature Tf = Tair + Δ/2. How the forced part falls with the ball's own warmth is not
 * agreed: Whitaker's properties of the free stream with (µ/µs)^¼ give a warmth of 1.24, the usual
 * ones at the film temperature 0.96; at 20 K that is a per cent, so it is fitted between them. The
 * correlations are good to ±12 %, so the multipliers are fitted, and the small tilt takes up what
 * the exponents of the published forms differ by. Valid for Re 3.5 to 7.6e4 (Whitaker); below it
 * the forced part is small against the natural.
 */
public final class PhysicsShaped implements ResponseModel {
  public static final String ID = "physics-shaped";

  static final double PRANDTL = 0.706;
  static final double PR_04 = Math.pow(PRANDTL, 0.4);
  private static final double CHURCHILL =
      0.589 * Math.pow(PRANDTL, 0.25) / Math.pow(1 + Math.pow(0.469 / PRANDTL, 9.0 / 16), 4.0 / 9);
  static final double RE_PIVOT = 300;
  static final double GRAVITY = 9.80665;
  static final double LEAST_DELTA_K = 1e-3;

  private static final double LN_PIVOT = Math.log(RE_PIVOT);

  /** A miss of the logarithm that one more step of Newton's makes smaller than the last digit. */
  private static final double NEAR_ENOUGH = 1e-7;

  static final int CONDUCTION = 0;
  static final int FORCED = 1;
  static final int NATURAL = 2;
  static final int LEADS = 3;
  static final int RADIATION = 4;
  static final int TILT = 5;
  static final int MIXING = 6;
  static final int WARMTH = 7;

  private static final List<ParameterPrior> QUANTITIES =
      List.of(
          new ParameterPrior("conduction", "1/s", true, 6.5e-4, 0.45),
          new ParameterPrior("forced", "1", true, 1, 0.12),
          new ParameterPrior("natural", "1", true, 1, 0.12),
          new ParameterPrior("leads", "1/s", true, 5e-4, 0.8),
          new ParameterPrior("radiation", "1/s", true, 7e-5, 0.9),
          new ParameterPrior("tilt", "1", false, 0, 0.03),
          new ParameterPrior("mixing", "1", true, 3, 0.2),
          new ParameterPrior("warmth", "1", false, 1.1, 0.15));

  private final double diameter_m;
  private final double reference_K;
  private final double referenceConductivity;

  /** The model for a ball of the usual size. */
  public PhysicsShaped(AirState reference) {
    this(reference, FormulaFit.USUAL_BALL_M);
  }

  /**
   * The model with its parameters stated for this air.
   *
   * @param diameter_m at which the dimensionless groups are formed, m, above 0
   */
  public PhysicsShaped(AirState reference, double diameter_m) {
    if (!(diameter_m > 0)) {
      throw new IllegalArgumentException("diameter_m = " + diameter_m + ", allowed above 0");
    }
    this.diameter_m = diameter_m;
    reference_K = reference.temperature_K();
    referenceConductivity = AirPoint.of(reference).conductivity(reference_K);
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public List<ParameterPrior> quantities() {
    return QUANTITIES;
  }

  @Override
  public void loss(double[] q, double speed_m_s, double delta_K, AirPoint air, double[] out) {
    double delta = Math.max(Math.abs(delta_K), LEAST_DELTA_K);
    double film = air.air_K() + 0.5 * delta_K;
    double lnFilm = AirPoint.log(film);
    double half = 0.5 / film;
    double k = AirPoint.conductivityOfLog(lnFilm) / referenceConductivity;
    double dLnK = AirPoint.K_EXPONENT * half;
    double dLnNu = AirPoint.NU_EXPONENT * half;
    double lnY = Math.log(q[NATURAL] * naturalPart(delta, film, air.viscosityOfLog(lnFilm)));
    double dLnY = 0.25 * (1 / delta - half - 2 * dLnNu);
    double re = speed_m_s * diameter_m / air.ownViscosity();
    boolean moves = re > 0;
    double lnRe = moves ? Math.log(re) : LN_PIVOT;
    double root = 0.4 * Math.sqrt(re);
    double cube2 = moves ? 0.06 * Math.exp(lnRe * 2 / 3) : 0;
    double lnCool = air.ownLog() - lnFilm;
    double lnTilt = lnRe - LN_PIVOT;
    double lnX =
        moves
            ? Math.log(q[FORCED] * PR_04 * (root + cube2)) + q[TILT] * lnTilt + q[WARMTH] * lnCool
            : 0;
    double slope = moves ? (0.5 * root + 2.0 / 3 * cube2) / (root + cube2) : 0.5;
    double dLnXdLnRe = slope + q[TILT];
    double m = q[MIXING];
    double xm = moves ? Math.exp(m * lnX) : 0;
    double ym = Math.exp(m * lnY);
    double sum = xm + ym;
    double lnMixed = Math.log(sum) / m;
    double mixed = Math.exp(lnMixed);
    double byLnX = mixed * xm / sum;
    double byLnY = mixed * ym / sum;
    double conduction = q[CONDUCTION] * k;
    double radiation = film / reference_K * (film / reference_K) * (film / reference_K);
    double core = conduction * (1 + 0.5 * mixed);
    out[0] = core + q[LEADS] + q[RADIATION] * radiation;
    out[1] = speed_m_s > 0 ? 0.5 * conduction * byLnX * dLnXdLnRe / speed_m_s : 0;
    out[2] =
        core * dLnK
            + 0.5 * conduction * (byLnX * -q[WARMTH] * half + byLnY * dLnY)
            + q[RADIATION] * radiation * 3 * half;
    out[3 + CONDUCTION] = core / q[CONDUCTION];
    out[3 + FORCED] = 0.5 * conduction * byLnX / q[FORCED];
    out[3 + NATURAL] = 0.5 * conduction * byLnY / q[NATURAL];
    out[3 + LEADS] = 1;
    out[3 + RADIATION] = radiation;
    out[3 + TILT] = 0.5 * conduction * byLnX * lnTilt;
    out[3 + WARMTH] = 0.5 * conduction * byLnX * lnCool;
    double logs = xm * lnX + ym * lnY;
    out[3 + MIXING] = 0.5 * conduction * mixed * (logs / sum - lnMixed) / m;
  }

  @Override
  public void stillLoss(double[] q, double delta_K, AirPoint air, double[] out) {
    double delta = Math.max(Math.abs(delta_K), LEAST_DELTA_K);
    double film = air.air_K() + 0.5 * delta_K;
    double half = 0.5 / film;
    double y = q[NATURAL] * naturalPart(delta, film, air.viscosity(film));
    double conduction = q[CONDUCTION] * air.conductivity(film) / referenceConductivity;
    double core = conduction * (1 + 0.5 * y);
    double ratio = film / reference_K;
    double radiation = q[RADIATION] * ratio * ratio * ratio;
    double dLnY = 0.25 * (1 / delta - half - 2 * AirPoint.NU_EXPONENT * half);
    out[0] = core + q[LEADS] + radiation;
    out[2] = core * AirPoint.K_EXPONENT * half + 0.5 * conduction * y * dLnY + radiation * 3 * half;
  }

  /**
   * Conduction, leads, radiation, mixing, the natural part at a difference of 1 K with the film at
   * the air's temperature, twice that temperature, warmth.
   */
  List<Double> typedNumbers(double[] q, AirPoint air) {
    return List.of(
        q[CONDUCTION],
        q[LEADS],
        q[RADIATION],
        q[MIXING],
        q[NATURAL] * naturalPart(1, air.air_K(), air.ownViscosity()),
        2 * air.air_K(),
        q[WARMTH]);
  }

  double diameter_m() {
    return diameter_m;
  }

  double reference_K() {
    return reference_K;
  }

  /** Conductivity at a film temperature over that at the reference. */
  double conductivityRatio(double film_K) {
    return AirPoint.conductivityOfLog(AirPoint.log(film_K)) / referenceConductivity;
  }

  /** Forced part X at a speed, of a ball hardly warmer than the air. */
  double forcedPart(double[] q, double speed_m_s, AirPoint air) {
    double re = speed_m_s * diameter_m / air.ownViscosity();
    double cube = Math.cbrt(re);
    double shape = 0.4 * Math.sqrt(re) + 0.06 * cube * cube;
    return q[FORCED] * shape * PR_04 * Math.exp(q[TILT] * Math.log(re / RE_PIVOT));
  }

  /** Nu − 2 of a still ball in air. Source: Churchill (1983), without the turbulent factor. */
  double naturalPart(double delta_K, double film_K, double nu) {
    double d3 = diameter_m * diameter_m * diameter_m;
    double grashof = GRAVITY * delta_K * d3 / (film_K * nu * nu);
    return CHURCHILL * Math.sqrt(Math.sqrt(grashof));
  }

  @Override
  public double speed_m_s(double[] q, double loss_1_s, double delta_K, AirPoint air) {
    double[] one = {loss_1_s};
    speeds_m_s(q, one, delta_K, air);
    return one[0];
  }

  @Override
  public void speeds_m_s(double[] q, double[] losses, double delta_K, AirPoint air) {
    double delta = Math.max(Math.abs(delta_K), LEAST_DELTA_K);
    double film = air.air_K() + 0.5 * delta_K;
    double ratio = film / reference_K;
    double unmoved = q[LEADS] + q[RADIATION] * ratio * ratio * ratio;
    double conduction = q[CONDUCTION] * air.conductivity(film) / referenceConductivity;
    double y = q[NATURAL] * naturalPart(delta, film, air.viscosity(film));
    double m = q[MIXING];
    double ym = Math.pow(y, m);
    double perRe_m_s = air.ownViscosity() / diameter_m;
    double logRest = q[WARMTH] * Math.log(film / air.air_K()) - Math.log(q[FORCED] * PR_04);
    for (int i = 0; i < losses.length; i++) {
      double mixed = 2 * ((losses[i] - unmoved) / conduction - 1);
      double moved = mixed > y ? Math.pow(mixed, m) - ym : 0;
      losses[i] = moved > 0 ? reynolds(Math.log(moved) / m + logRest, q[TILT]) * perRe_m_s : 0;
    }
  }

  /** ln((0.4 Re^½ + 0.06 Re^⅔)(Re/300)^tilt). */
  static double logShape(double re, double tilt) {
    double lnRe = Math.log(re);
    double sixth = Math.exp(lnRe / 6);
    return Math.log(0.4 + 0.06 * sixth) + 0.5 * lnRe + tilt * (lnRe - LN_PIVOT);
  }

  /** Slope of {@link #logShape} against ln Re without its tilt. */
  static double slope(double re) {
    double sixth = Math.exp(Math.log(re) / 6);
    return (0.2 + 0.04 * sixth) / (0.4 + 0.06 * sixth);
  }

  /**
   * Solves (0.4 Re^½ + 0.06 Re^⅔)(Re/300)^tilt = target, given its logarithm, by Newton's method on
   * the logarithms, which doubles the right digits each time; the first guess is right within a
   * fifth where balls are used.
   */
  static double reynolds(double logTarget, double tilt) {
    double logRe = (logTarget + 1.1) / 0.6;
    for (int i = 0; i < 60; i++) {
      double sixth = Math.exp(logRe / 6);
      double cube = sixth * sixth * sixth;
      double value = 0.4 + 0.06 * sixth;
      double slope = (0.2 + 0.04 * sixth) / value + tilt;
      double miss = Math.log(value * cube) + tilt * (logRe - LN_PIVOT) - logTarget;
      logRe -= miss / slope;
      if (Math.abs(miss) < NEAR_ENOUGH) {
        break;
      }
    }
    return Math.exp(logRe);
  }
}
