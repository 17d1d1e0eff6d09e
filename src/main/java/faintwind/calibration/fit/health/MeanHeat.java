package faintwind.calibration.fit.health;

import java.util.List;
import java.util.Optional;

/**
 * A mean of heat taken over heat expected.
 *
 * @param ratio the mean
 * @param u its standard uncertainty
 */
record MeanHeat(double ratio, double u) {
  /**
   * The weighted mean of several, its uncertainty widened where they scatter more than they should
   * (Birge 1932); empty where there is none.
   */
  static Optional<MeanHeat> of(List<MeanHeat> all) {
    double weights = all.stream().mapToDouble(MeanHeat::weight).sum();
    if (weights == 0) {
      return Optional.empty();
    }
    double mean = all.stream().mapToDouble(each -> each.weight() * each.ratio).sum() / weights;
    double squares =
        all.stream().mapToDouble(each -> each.weight() * Math.pow(each.ratio - mean, 2)).sum();
    double widened = Math.max(1, squares / Math.max(1, all.size() - 1));
    return Optional.of(new MeanHeat(mean, Math.sqrt(widened / weights)));
  }

  private double weight() {
    return 1 / (u * u);
  }
}
