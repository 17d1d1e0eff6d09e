package faintwind.calibration.pool;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * A normal population of instruments, learned from what the recordings of each say: its mean, and
 * its spread by expectation and maximisation (Dempster, Laird and Rubin 1977). An instrument that
 * is far off in an unknown gets the lesser weight of Student's t with four degrees of freedom
 * there, so that it neither moves the mean nor widens the spread. The usual spread counts as two
 * instruments.
 */
final class Population {
  private static final int ROUNDS = 40;

  private final RealVector before;
  private final RealMatrix beforeInformation;
  private final double[] usual;
  private final double[] variances;
  private RealVector mean;
  private RealMatrix uncertainty;

  private Population(SessionShown like, double[] usual) {
    int n = usual.length;
    this.usual = usual.clone();
    variances = Arrays.stream(usual).map(u -> u * u).toArray();
    beforeInformation = new Array2DRowRealMatrix(n, n);
    double[] centre = new double[n];
    for (int i = 0; i < n; i++) {
      beforeInformation.setEntry(i, i, 1 / like.believed().at(i, i));
      centre[i] = like.before().get(i);
    }
    before = new ArrayRealVector(centre, false);
    mean = before;
    uncertainty = Inverse.of(beforeInformation);
  }

  /**
   * The population of these.
   *
   * @param like of whose unknowns, with what was known of them before any session
   * @param sessions what the recordings of each say
   * @param usual spread of each unknown where nothing is learned
   */
  static Population of(SessionShown like, List<Information> sessions, double[] usual) {
    Population population = new Population(like, usual);
    double[][] weights = new double[sessions.size()][usual.length];
    for (double[] each : weights) {
      Arrays.fill(each, 1);
    }
    for (int round = 0; round < ROUNDS; round++) {
      population.centre(sessions, weights);
      population.widen(sessions, weights);
    }
    return population;
  }

  /** Mean and its uncertainty at the spread found so far. */
  private void centre(List<Information> sessions, double[][] weights) {
    RealMatrix information = beforeInformation.copy();
    RealVector right = beforeInformation.operate(before);
    for (int i = 0; i < weights.length; i++) {
      Information.Pull pull = sessions.get(i).through(spread(weights[i]));
      information = information.add(pull.information());
      right = right.add(pull.right());
    }
    uncertainty = Inverse.of(information);
    mean = uncertainty.operate(right);
  }

  /** The spread, and the weights, by how far each instrument is expected to lie off the mean. */
  private void widen(List<Information> sessions, double[][] weights) {
    double[] squares = new double[usual.length];
    for (int i = 0; i < weights.length; i++) {
      double[] off = sessions.get(i).expectedSquares(mean, uncertainty, spread(weights[i]));
      for (int k = 0; k < squares.length; k++) {
        weights[i][k] =
            Math.min(1, (OwnChoices.FREEDOM + 1) / (OwnChoices.FREEDOM + off[k] / variances[k]));
        squares[k] += weights[i][k] * off[k];
      }
    }
    for (int k = 0; k < squares.length; k++) {
      variances[k] =
          (OwnChoices.WORTH * usual[k] * usual[k] + squares[k])
              / (OwnChoices.WORTH + weights.length);
    }
  }

  private RealMatrix spread(double[] weights) {
    double[] wide = variances.clone();
    for (int k = 0; k < wide.length; k++) {
      wide[k] /= weights[k];
    }
    return MatrixUtils.createRealDiagonalMatrix(wide);
  }

  RealMatrix uncertainty() {
    return uncertainty;
  }

  RealVector mean() {
    return mean;
  }

  /** Standard deviation between the instruments. */
  List<Double> between() {
    List<Double> between = new ArrayList<>();
    for (double variance : variances) {
      between.add(Math.sqrt(variance));
    }
    return between;
  }

  /** Covariance of what one more instrument is expected to be. */
  RealMatrix ofAnother() {
    return uncertainty.add(MatrixUtils.createRealDiagonalMatrix(variances));
  }
}
