package faintwind.calibration.plan;

import faintwind.calibration.run.Direction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The order in which speeds are turned, and which way. Radius by radius, so that the balls move
 * seldom; at each radius every other speed going up and the rest coming down, so that a slow drift
 * of room or supply tilts nothing (common practice, no source).
 */
final class Order {
  private Order() {}

  /** The order. */
  static List<Candidate> of(List<Candidate> chosen) {
    List<Candidate> ordered = new ArrayList<>();
    List<Double> radii =
        chosen.stream().map(c -> c.radius_m().value()).distinct().sorted().toList();
    for (double radius : radii) {
      List<Candidate> own =
          chosen.stream()
              .filter(c -> c.radius_m().value() == radius)
              .sorted(Comparator.comparingDouble(Candidate::speed_m_s))
              .toList();
      for (int i = 0; i < own.size(); i += 2) {
        ordered.add(own.get(i));
      }
      for (int i = own.size() % 2 == 0 ? own.size() - 1 : own.size() - 2; i > 0; i -= 2) {
        ordered.add(own.get(i));
      }
    }
    return ordered;
  }

  /**
   * Which way each is turned: by turns where both are wanted; a cable is always turned so that it
   * untwists, which keeps it within its budget as long as each spin is.
   */
  static List<Direction> directions(List<Candidate> ordered, PlanRequest request) {
    List<Direction> directions = new ArrayList<>();
    boolean cable = request.arm().way().kind() == DataWay.Kind.CABLE;
    boolean both = request.wish().directions() == PlanWish.Directions.BOTH_WAYS;
    double twist = 0;
    for (int i = 0; i < ordered.size(); i++) {
      boolean clockwise = cable ? twist <= 0 : !both || i % 2 == 0;
      directions.add(clockwise ? Direction.CW : Direction.CCW);
      twist += (clockwise ? 1 : -1) * ordered.get(i).turns();
    }
    return directions;
  }
}
