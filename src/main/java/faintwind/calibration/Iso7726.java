package faintwind.calibration;

import faintwind.calibration.Performance.AtSpeed;
import java.util.List;

/**
 * What ISO 7726:1998, Table 2, asks of an instrument for air velocity, and how a calibration
 * compares. The figures are from memory of that table; it was not read for this.
 *
 * <p>Required accuracy ±(base + 0.05 v), required response 0.5 s for 90 % of a step. A ball that
 * takes minutes never meets the response: the comparison says so rather than leaving it out.
 */
public enum Iso7726 {
  /** Class C, comfort: 0.05 to 1 m/s, ±(0.05 + 0.05 v) m/s. */
  COMFORT(0.05, 1, 0.05),
  /** Class S, stress: 0.2 to 20 m/s, ±(0.1 + 0.05 v) m/s. */
  STRESS(0.2, 20, 0.1);

  /** Required time to 90 % of a step, s. */
  public static final double RESPONSE_S = 0.5;

  private static final double SHARE = 0.05;

  private final double lowest_m_s;
  private final double highest_m_s;
  private final double base_m_s;

  Iso7726(double lowest_m_s, double highest_m_s, double base_m_s) {
    this.lowest_m_s = lowest_m_s;
    this.highest_m_s = highest_m_s;
    this.base_m_s = base_m_s;
  }

  /** Required accuracy at a speed, m/s. */
  public double required_m_s(double speed_m_s) {
    return base_m_s + SHARE * speed_m_s;
  }

  /** The rows of a table that lie in the class's range of speeds. */
  public List<AtSpeed> inRange(List<AtSpeed> table) {
    return table.stream()
        .filter(at -> at.speed_m_s() >= lowest_m_s && at.speed_m_s() <= highest_m_s)
        .toList();
  }

  /** Those of them whose expanded uncertainty is within the required accuracy. */
  public List<AtSpeed> within(List<AtSpeed> table) {
    return inRange(table).stream()
        .filter(at -> at.u95_m_s() <= required_m_s(at.speed_m_s()))
        .toList();
  }
}
