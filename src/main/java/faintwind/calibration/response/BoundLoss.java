package faintwind.calibration.response;

/** The loss of a fitted formula, asked for over and over along a log. For one thread. */
public interface BoundLoss {

  /** As {@link ResponseModel#loss}. */
  void loss(double speed_m_s, double delta_K, AirPoint air, double[] out);

  /** As {@link ResponseModel#stillLoss}. */
  void stillLoss(double delta_K, AirPoint air, double[] out);

  /**
   * As {@link ResponseModel#speeds_m_s}.
   *
   * @param losses losses, 1/s; receives the speeds, m/s
   */
  void speeds_m_s(double[] losses, double delta_K, AirPoint air);
}
