package faintwind.calibration.beat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;

/**
 * How steadily an arm was turned, from the marks of its turns. A parabola through the marks gives
 * the pace and its drift; what is left is scatter, of hand or ear and of the arm together.
 *
 * @param period_s mean time from mark to mark, s
 * @param scatter_s standard deviation of a mark about the parabola, s
 * @param drift relative change of the speed from the first mark to the last; positive: quicker
 * @param unsteadiness relative standard deviation of the time of single turns, drift taken off
 */
public record Steadiness(double period_s, double scatter_s, double drift, double unsteadiness) {

  /** From marks that count, at least three. */
  static Steadiness of(List<TurnMark> sure, int marksPerTurn) {
    WeightedObservedPoints points = new WeightedObservedPoints();
    double first_s = sure.get(0).time_s();
    int zero = sure.get(0).number();
    sure.forEach(m -> points.add(m.number() - zero, m.time_s() - first_s));
    int degree = sure.size() > 5 ? 2 : 1;
    double[] c = PolynomialCurveFitter.create(degree).fit(points.toList());
    double bend = degree == 2 ? c[2] : 0;
    double span = sure.get(sure.size() - 1).number() - zero;
    double mean_s = c[1] + bend * span;
    double squares = 0;
    List<Double> left = new ArrayList<>();
    for (TurnMark mark : sure) {
      double n = mark.number() - zero;
      double residual = mark.time_s() - first_s - (c[0] + c[1] * n + bend * n * n);
      left.add(residual);
      squares += residual * residual;
    }
    double scatter_s = Math.sqrt(squares / Math.max(1, sure.size() - degree - 1));
    return new Steadiness(
        mean_s,
        scatter_s,
        beyondChance(-2 * bend * span / mean_s, scatter_s / mean_s, sure.size()),
        turnSpread(sure, left, marksPerTurn) / (mean_s * marksPerTurn));
  }

  /**
   * A drift less what scatter alone shows as one: the bend of a parabola through n points with
   * scatter s has the standard deviation s √180 / n^2.5 (least squares, evenly spaced).
   */
  private static double beyondChance(double drift, double scatter, int count) {
    double chance = 2 * Math.sqrt(180) * scatter / Math.pow(count, 1.5);
    return Math.copySign(Math.sqrt(Math.max(0, drift * drift - chance * chance)), drift);
  }

  /** Standard deviation of the times of single turns about the parabola, s. */
  private static double turnSpread(List<TurnMark> sure, List<Double> left, int marksPerTurn) {
    double squares = 0;
    int count = 0;
    for (int i = 0; i < sure.size(); i++) {
      for (int j = i + 1; j < sure.size(); j++) {
        int between = sure.get(j).number() - sure.get(i).number();
        if (between == marksPerTurn) {
          double change = left.get(j) - left.get(i);
          squares += change * change;
          count++;
        }
        if (between >= marksPerTurn) {
          break;
        }
      }
    }
    return count == 0 ? 0 : Math.sqrt(squares / count);
  }

  /**
   * Standard uncertainty of the time between two marks so that the speed from it stands for the
   * speed the balls felt: both marks' scatter, the drift, and the unsteadiness (own choice, no
   * source). A drift d spreads the speed evenly over d, a standard deviation d/√12 (JCGM 100:2008,
   * 4.3.7), since the balls remember the end of a spin better than its start. Loss goes about as
   * the root of the speed, so a speed that wanders by s is felt as a quarter of s² too slow.
   *
   * @param lasted_s time between the marks, s
   */
  public double u_s(double lasted_s) {
    double marks = Math.sqrt(2) * scatter_s;
    double drifting = Math.abs(drift) / Math.sqrt(12) * lasted_s;
    double wandering = unsteadiness * unsteadiness / 4 * lasted_s;
    return Math.sqrt(marks * marks + drifting * drifting + wandering * wandering);
  }
}
