package faintwind.calibration.response;

/** A model with its parameters, which does what the model does. */
public final class ExactLoss implements BoundLoss {
  private final ResponseModel model;
  private final double[] q;
  private final double[] still;
  private final double[] moving;

  /**
   * A model at its parameters.
   *
   * @param q its loss parameters in order; not changed
   */
  public ExactLoss(ResponseModel model, double[] q) {
    this.model = model;
    this.q = q;
    still = new double[3 + q.length];
    moving = new double[3 + q.length];
  }

  @Override
  public void loss(double speed_m_s, double delta_K, AirPoint air, double[] out) {
    model.loss(q, speed_m_s, delta_K, air, out);
  }

  @Override
  public double loss_1_s(double speed_m_s, double delta_K, AirPoint air) {
    model.loss(q, speed_m_s, delta_K, air, moving);
    return moving[0];
  }

  @Override
  public double stillLoss_1_s(double delta_K, AirPoint air) {
    model.stillLoss(q, delta_K, air, still);
    return still[0];
  }

  @Override
  public double stillSlope() {
    return still[2];
  }

  @Override
  public void speeds_m_s(double[] losses, double delta_K, AirPoint air) {
    model.speeds_m_s(q, losses, delta_K, air);
  }
}
