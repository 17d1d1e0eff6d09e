package faintwind.calibration.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * The points of an opening: two diameters at right angles, a net of lines, or one row along a slot.
 *
 * @param opening where
 * @param rule how the points are laid
 * @param count points a radius, lines each way, or points along a slot
 */
public record Traverse(Opening opening, PointRule rule, int count) {
  public Traverse {
    int fewest = rule.fewest(opening.shape());
    int most = rule.most(opening.shape());
    if (count < fewest || count > most) {
      throw new IllegalArgumentException(
          "count = " + count + ", allowed " + fewest + " to " + most);
    }
  }

  /** The places to go to, line by line. */
  public List<FlowPoint> points() {
    return switch (opening.shape()) {
      case ROUND -> diameters();
      case RECTANGLE -> net();
      case GAP, HIVE -> row();
    };
  }

  /** Positions along each line, as shares of it. */
  double[] shares() {
    return opening.shape() == Opening.Shape.ROUND
        ? rule.acrossDiameter(count)
        : rule.acrossSide(count);
  }

  private List<FlowPoint> diameters() {
    List<FlowPoint> points = new ArrayList<>();
    double[] shares = shares();
    for (int line = 0; line < 2; line++) {
      for (int i = 0; i < shares.length; i++) {
        double depth_m = shares[i] * opening.width_m();
        double wall_m = Math.min(depth_m, opening.width_m() - depth_m);
        points.add(new FlowPoint(name(line, i), line, depth_m, depth_m, wall_m));
      }
    }
    return points;
  }

  private List<FlowPoint> net() {
    List<FlowPoint> points = new ArrayList<>();
    double[] shares = shares();
    for (int line = 0; line < shares.length; line++) {
      double up_m = shares[line] * opening.height_m();
      double below_m = Math.min(up_m, opening.height_m() - up_m);
      for (int i = 0; i < shares.length; i++) {
        double depth_m = shares[i] * opening.width_m();
        double beside_m = Math.min(depth_m, opening.width_m() - depth_m);
        points.add(new FlowPoint(name(line, i), line, depth_m, up_m, Math.min(beside_m, below_m)));
      }
    }
    return points;
  }

  private List<FlowPoint> row() {
    List<FlowPoint> points = new ArrayList<>();
    double[] shares = shares();
    for (int i = 0; i < shares.length; i++) {
      double depth_m = shares[i] * opening.width_m();
      double up_m = opening.height_m() / 2;
      double wall_m = Math.min(up_m, Math.min(depth_m, opening.width_m() - depth_m));
      points.add(new FlowPoint(name(0, i), 0, depth_m, up_m, wall_m));
    }
    return points;
  }

  private static String name(int line, int number) {
    return (char) ('A' + line) + String.valueOf(number + 1);
  }
}
