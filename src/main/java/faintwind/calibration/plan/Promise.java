package faintwind.calibration.plan;

import faintwind.calibration.Performance.BudgetShare;
import java.util.List;

/**
 * What a plan promises.
 *
 * @param mean mean relative standard uncertainty over those speeds of the wanted range that the arm
 *     can turn, evenly in the logarithm
 * @param speeds relative standard uncertainty against speed, rising, from the slowest that is
 *     turned to the fastest
 * @param budget where it comes from in the middle of the range, relative: {@code carried}, {@code
 *     radius}, {@code direction}, {@code form}, {@code recordings}
 */
public record Promise(double mean, List<AtSpeed> speeds, List<BudgetShare> budget) {
  public Promise {
    speeds = List.copyOf(speeds);
    budget = List.copyOf(budget);
  }

  /**
   * One speed.
   *
   * @param speed_m_s air speed, m/s
   * @param u relative standard uncertainty of the air speed that the calibration gives there
   */
  public record AtSpeed(double speed_m_s, double u) {}
}
