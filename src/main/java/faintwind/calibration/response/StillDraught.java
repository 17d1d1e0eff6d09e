package faintwind.calibration.response;

import faintwind.calibration.Calibration;

/**
 * What the draught of the calibration's room leaves uncertain. Recordings of still runs tell a
 * draught from natural convection by the form of the formula alone. Had there been none of the
 * draught D that was found, air of speed V would read as the root of V² + D², and still air as D;
 * with more of it, less than V. So D counts whole, as an expanded uncertainty of that square (own
 * choice; docs/accuracy.md says what shows it right).
 */
public final class StillDraught {
  private StillDraught() {}

  /** The draught that a calibration's recordings showed, m/s; 0 where no arm was turned. */
  public static double of(Calibration calibration) {
    return calibration.coverage().arm().map(arm -> arm.draught_m_s().value()).orElse(0.0);
  }

  /** What it adds to the expanded uncertainty of a speed, in quadrature, m/s. */
  public static double u95_m_s(double speed_m_s, double draught_m_s) {
    double blown = draught_m_s * draught_m_s;
    double square = speed_m_s * speed_m_s;
    double up_m_s = Math.sqrt(square + blown) - speed_m_s;
    double down_m_s = speed_m_s - Math.sqrt(Math.max(0, square - blown));
    return Math.max(up_m_s, down_m_s);
  }
}
