package faintwind.calibration.pool;

import faintwind.calibration.Covariance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the fit of one session says of its unknowns, in the form in which their priors are normal:
 * the logarithm of what is positive by nature.
 *
 * @param names of the unknowns
 * @param estimates what the fit found
 * @param covariance of the estimates
 * @param before what was expected before any run
 * @param believed covariance of that
 */
public record SessionShown(
    List<String> names,
    List<Double> estimates,
    Covariance covariance,
    List<Double> before,
    Covariance believed) {
  public SessionShown {
    names = List.copyOf(names);
    estimates = List.copyOf(estimates);
    before = List.copyOf(before);
  }

  /** The same of some unknowns, in this order. */
  SessionShown of(List<String> wanted) {
    List<Map<String, Double>> sums = new ArrayList<>();
    wanted.forEach(name -> sums.add(Map.of(name, 1.0)));
    return sums(wanted, sums);
  }

  /** The same of weighted sums of unknowns, each by the weights of those that are in it. */
  SessionShown sums(List<String> called, List<Map<String, Double>> weights) {
    List<double[]> gradients = weights.stream().map(this::gradient).toList();
    double[][] both = new double[gradients.size()][gradients.size()];
    List<Double> found = new ArrayList<>();
    List<Double> expected = new ArrayList<>();
    double[][] unsure = new double[both.length][both.length];
    for (int i = 0; i < both.length; i++) {
      double[] along = gradients.get(i);
      for (int j = 0; j < both.length; j++) {
        both[i][j] = product(covariance, along, gradients.get(j));
        unsure[i][j] = product(believed, along, gradients.get(j));
      }
      found.add(sum(along, estimates));
      expected.add(sum(along, before));
    }
    return new SessionShown(called, found, Covariance.of(both), expected, Covariance.of(unsure));
  }

  private double[] gradient(Map<String, Double> weights) {
    double[] gradient = new double[names.size()];
    new TreeMap<>(weights).forEach((name, weight) -> gradient[names.indexOf(name)] = weight);
    return gradient;
  }

  private static double product(Covariance covariance, double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      for (int j = 0; j < other.length && one[i] != 0; j++) {
        sum += one[i] * other[j] * covariance.at(i, j);
      }
    }
    return sum;
  }

  private static double sum(double[] weights, List<Double> values) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * values.get(i);
    }
    return sum;
  }
}
