package faintwind.calibration.response;

import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.List;

/**
 * Loss by King's law and what grew from it:
 *
 * <p>loss = a (1 + r Δ) + [(b Uⁿ)ᵐ + (c Δ^¼)ᵐ]^(1/m), or simpler members of it: without c (King
 * 1914, Phil. Trans. R. Soc. A 214, 373, with n free or one half), without r.
 *
 * <p>Another air than the reference: a with the conductivity, b with k ν^(−n), c with k (1/(T
 * ν²))^¼. Valid within the calibrated speeds.
 */
public final class Empirical implements ResponseModel {
  private static final int A = 0;
  private static final int B = 1;
  private static final int N = 2;
  private static final int C = 3;
  private static final int M = 4;
  private static final int R = 5;
  private static final double LEAST_DELTA_K = 1e-3;

  private static final List<ParameterPrior> ALL =
      List.of(
          new ParameterPrior("a", "1/s", true, 1.5e-3, 1.0),
          new ParameterPrior("b", "1/s (m/s)^-n", true, 4e-3, 1.0),
          new ParameterPrior("n", "1", true, 0.5, 0.2),
          new ParameterPrior("c", "1/s K^-1/4", true, 5e-4, 1.0),
          new ParameterPrior("m", "1", true, 3, 0.25),
          new ParameterPrior("r", "1/K", false, 0.002, 0.003));

  /** Which members of the sum are there. */
  public enum Form {
    /** a + b U^½. */
    KING_HALF("king-half", 2),
    /** a + b Uⁿ. */
    KING("king", 3),
    /** Forced and natural part mixed. */
    MIXED("mixed", 5),
    /** The same with a linear in the difference. */
    MIXED_LINEAR("mixed-linear", 6);

    private final String id;
    private final int parameters;

    Form(String id, int parameters) {
      this.id = id;
      this.parameters = parameters;
    }

    /** Its id in the calibration file. */
    public String id() {
      return id;
    }

    /**
     * The form of that id.
     *
     * @throws IllegalArgumentException where there is none
     */
    public static Form of(String id) {
      for (Form form : values()) {
        if (form.id.equals(id)) {
          return form;
        }
      }
      throw new IllegalArgumentException("model = " + id + ", not known");
    }
  }

  private final Form form;
  private final AirPoint reference;

  /** The form with its parameters stated for this air. */
  public Empirical(Form form, AirState reference) {
    this.form = form;
    this.reference = AirPoint.of(reference);
  }

  @Override
  public String id() {
    return form.id;
  }

  @Override
  public List<ParameterPrior> quantities() {
    return new ArrayList<>(ALL.subList(0, form.parameters));
  }

  @Override
  public void loss(double[] q, double speed_m_s, double delta_K, AirPoint air, double[] out) {
    double k = conductivityRatio(air);
    double n = form == Form.KING_HALF ? 0.5 : q[N];
    boolean moves = speed_m_s > 0;
    double lnU = moves ? Math.log(speed_m_s / viscosityRatio(air)) : 0;
    double x = moves ? q[B] * k * Math.exp(n * lnU) : 0;
    double linear = form == Form.MIXED_LINEAR ? 1 + q[R] * delta_K : 1;
    double byLnX = x;
    double natural = 0;
    if (form.parameters > C) {
      double delta = Math.max(Math.abs(delta_K), LEAST_DELTA_K);
      double y = q[C] * naturalRatio(air, k) * Math.sqrt(Math.sqrt(delta));
      double m = q[M];
      double lnX = x > 0 ? Math.log(x) : 0;
      double lnY = Math.log(y);
      double xm = x > 0 ? Math.exp(m * lnX) : 0;
      double ym = Math.exp(m * lnY);
      double sum = xm + ym;
      double lnMixed = Math.log(sum) / m;
      double mixed = Math.exp(lnMixed);
      byLnX = mixed * xm / sum;
      natural = mixed * ym / sum;
      double logs = xm * lnX + ym * lnY;
      out[3 + C] = natural / q[C];
      out[3 + M] = mixed * (logs / sum - lnMixed) / m;
      out[0] = q[A] * k * linear + mixed;
      out[2] = 0.25 * natural / delta;
    } else {
      out[0] = q[A] * k * linear + x;
      out[2] = 0;
    }
    out[1] = moves ? n * byLnX / speed_m_s : 0;
    out[3 + A] = k * linear;
    out[3 + B] = byLnX / q[B];
    if (form != Form.KING_HALF) {
      out[3 + N] = byLnX * lnU;
    }
    if (form == Form.MIXED_LINEAR) {
      out[2] += q[A] * k * q[R];
      out[3 + R] = q[A] * k * delta_K;
    }
  }

  @Override
  public void stillLoss(double[] q, double delta_K, AirPoint air, double[] out) {
    double k = conductivityRatio(air);
    double linear = form == Form.MIXED_LINEAR ? 1 + q[R] * delta_K : 1;
    out[0] = q[A] * k * linear;
    out[2] = form == Form.MIXED_LINEAR ? q[A] * k * q[R] : 0;
    if (form.parameters > C) {
      double delta = Math.max(Math.abs(delta_K), LEAST_DELTA_K);
      double natural = q[C] * naturalRatio(air, k) * Math.sqrt(Math.sqrt(delta));
      out[0] += natural;
      out[2] += 0.25 * natural / delta;
    }
  }

  @Override
  public double speed_m_s(double[] q, double loss_1_s, double delta_K, AirPoint air) {
    double k = conductivityRatio(air);
    double n = form == Form.KING_HALF ? 0.5 : q[N];
    double linear = form == Form.MIXED_LINEAR ? 1 + q[R] * delta_K : 1;
    double x = loss_1_s - q[A] * k * linear;
    if (form.parameters > C) {
      double delta = Math.max(Math.abs(delta_K), LEAST_DELTA_K);
      double y = q[C] * naturalRatio(air, k) * Math.sqrt(Math.sqrt(delta));
      x = x > y ? Math.pow(Math.pow(x, q[M]) - Math.pow(y, q[M]), 1 / q[M]) : 0;
    }
    return x > 0 ? Math.pow(x / (q[B] * k), 1 / n) * viscosityRatio(air) : 0;
  }

  private double conductivityRatio(AirPoint air) {
    return air.ownConductivity() / reference.ownConductivity();
  }

  private double viscosityRatio(AirPoint air) {
    return air.ownViscosity() / reference.ownViscosity();
  }

  private double naturalRatio(AirPoint air, double k) {
    double nu = viscosityRatio(air);
    return k * Math.sqrt(Math.sqrt(reference.air_K() / air.air_K() / (nu * nu)));
  }
}
