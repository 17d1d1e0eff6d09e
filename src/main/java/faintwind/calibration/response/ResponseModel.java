package faintwind.calibration.response;

import faintwind.physics.AirState;
import java.util.List;

/**
 * How fast the heated ball loses its heat: loss = G/C in 1/s as a function of air speed, difference
 * and air state. A family of formulas; each is a pure function of its parameters.
 */
public sealed interface ResponseModel permits PhysicsShaped, Empirical {

  /** Its id in the calibration file. */
  String id();

  /** Bundle key of the equation in words. */
  default String equationKey() {
    return "model." + id() + ".equation";
  }

  /** The loss parameters, in order, with their weak priors. */
  List<ParameterPrior> quantities();

  /**
   * The loss and its partial derivatives.
   *
   * @param q the loss parameters in order, natural values
   * @param speed_m_s air speed, not negative
   * @param delta_K difference, K
   * @param air the air
   * @param out receives loss (1/s), ∂/∂speed, ∂/∂delta, then ∂/∂q in order; at least 3 + q.length
   *     long
   */
  void loss(double[] q, double speed_m_s, double delta_K, AirPoint air, double[] out);

  /**
   * The loss of still air and its change with the difference, the same as {@link #loss} tells of
   * speed 0.
   *
   * @param out receives loss (1/s) at 0 and ∂/∂delta at 2
   */
  default void stillLoss(double[] q, double delta_K, AirPoint air, double[] out) {
    loss(q, 0, delta_K, air, out);
  }

  /**
   * The air speed at which the loss has this value; 0 where the loss is at or below that of still
   * air.
   *
   * @param q the loss parameters in order
   * @param loss_1_s loss, 1/s
   * @param delta_K difference, K
   * @param air the air
   */
  double speed_m_s(double[] q, double loss_1_s, double delta_K, AirPoint air);

  /**
   * The same for several losses at once.
   *
   * @param losses losses, 1/s; receives the speeds, m/s
   */
  default void speeds_m_s(double[] q, double[] losses, double delta_K, AirPoint air) {
    for (int i = 0; i < losses.length; i++) {
      losses[i] = speed_m_s(q, losses[i], delta_K, air);
    }
  }

  /** The model of that id for a ball of that diameter, m. */
  static ResponseModel of(String id, AirState reference, double diameter_m) {
    if (id.equals(PhysicsShaped.ID)) {
      return new PhysicsShaped(reference, diameter_m);
    }
    return new Empirical(Empirical.Form.of(id), reference);
  }
}
