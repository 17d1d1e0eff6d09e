package faintwind.calibration.response;

/** The loss of a fitted formula, asked for over and over along a log. For one thread. */
public interface BoundLoss {

  /** As {@link ResponseModel#loss}. */
  void loss(double speed_m_s, double delta_K, AirPoint air, double[] out);

  /** The loss alone, 1/s. */
  double loss_1_s(double speed_m_s, double delta_K, AirPoint air);

  /** Loss of still air, 1/s; {@link #stillSlope} then tells its change with the difference. */
  double stillLoss_1_s(double delta_K, AirPoint air);

  /** Change of the still air's loss that was asked for last with the difference, 1/(s K). */
  double stillSlope();

  /**
   * As {@link ResponseModel#speeds_m_s}.
   *
   * @param losses losses, 1/s; receives the speeds, m/s
   */
  void speeds_m_s(double[] losses, double delta_K, AirPoint air);
}
