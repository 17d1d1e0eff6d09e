package faintwind.calibration;

import java.util.List;

/**
 * What the calibrated instrument can do in use.
 *
 * @param floor_m_s smallest speed that can be told from still air
 * @param stillSignal signal in still air in the reference air state, offset taken off
 * @param noise standard deviation of a single row, signal unit
 * @param rowStep_s usual step of the calibration's rows
 * @param runScatter standard deviation between runs beyond their stated speed uncertainty, relative
 * @param speeds uncertainty and response against speed, rising speeds
 */
public record Performance(
    double floor_m_s,
    double stillSignal,
    double noise,
    double rowStep_s,
    double runScatter,
    List<AtSpeed> speeds) {
  public Performance {
    speeds = List.copyOf(speeds);
  }

  /**
   * One line of the table.
   *
   * @param speed_m_s air speed
   * @param u95_m_s expanded uncertainty, 95 % coverage, of the calibration alone in its own air
   *     state
   * @param rise_s time from 10 to 90 % of a small change of the signal, no averaging
   * @param budget shares of the variance, largest first
   */
  public record AtSpeed(double speed_m_s, double u95_m_s, double rise_s, List<BudgetShare> budget) {
    public AtSpeed {
      budget = List.copyOf(budget);
    }
  }

  /**
   * One source of uncertainty.
   *
   * @param source bundle key, such as {@code budget.radius}
   * @param u_m_s standard uncertainty it brings
   */
  public record BudgetShare(String source, double u_m_s) {}
}
