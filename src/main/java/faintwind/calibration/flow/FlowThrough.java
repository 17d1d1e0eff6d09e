package faintwind.calibration.flow;

import faintwind.calibration.field.StretchMean;
import faintwind.calibration.flow.Flow.Part;
import faintwind.calibration.flow.Flow.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The integral of the speeds over an opening: their mean, as the rule of the points asks for, times
 * the area. Each source of uncertainty is relative to the mean; they are combined as independent
 * (JCGM 100:2008, equation 10).
 */
public final class FlowThrough {
  private static final double FACTOR = 2;
  private static final double EVEN = Math.sqrt(3);

  /**
   * Mean of a profile across a slot against the speed in its middle: from 2/3 (laminar between
   * plates, plane Poiseuille flow) to 1 (flat), taken as equally likely.
   */
  static final double ACROSS = 5.0 / 6;

  static final double U_ACROSS = (1.0 / 6) / Math.sqrt(3) / ACROSS;

  private final Traverse traverse;
  private final InTheWay instrument;
  private final double u_position_m;
  private final List<FlowPoint> points;

  /**
   * Prepares.
   *
   * @param u_position_m standard uncertainty of a point's distance from the wall
   */
  public FlowThrough(Traverse traverse, InTheWay instrument, double u_position_m) {
    this.traverse = traverse;
    this.instrument = instrument;
    this.u_position_m = u_position_m;
    this.points = traverse.points();
  }

  /** The flow from the speeds at the points, in the order of the traverse. */
  public Flow of(List<StretchMean> speeds) {
    if (speeds.size() != points.size()) {
      throw new IllegalArgumentException(
          speeds.size() + " speeds for " + points.size() + " points: one each");
    }
    double[] v = speeds.stream().mapToDouble(StretchMean::speed_m_s).toArray();
    double mean = IntStream.range(0, v.length).mapToDouble(i -> v[i]).average().orElseThrow();
    int faint = (int) speeds.stream().filter(s -> s.faintShare() > 0.5).count();
    Opening opening = traverse.opening();
    double across = opening.shape().isSlot() ? ACROSS : 1;
    double section_m_s = mean * across * instrument.factor(opening);
    List<Part> parts = mean > 0 ? parts(speeds, v, mean) : List.of();
    return new Flow(section_m_s * opening.area_m2(), section_m_s, parts, faint, v.length);
  }

  private List<Part> parts(List<StretchMean> speeds, double[] v, double mean) {
    double shared = speeds.stream().mapToDouble(StretchMean::shared_m_s).average().orElseThrow();
    double own2 = speeds.stream().mapToDouble(s -> s.own_m_s() * s.own_m_s()).sum();
    Opening opening = traverse.opening();
    List<Part> parts = new ArrayList<>();
    parts.add(new Part(Source.INSTRUMENT, shared / FACTOR / mean));
    parts.add(new Part(Source.UNSTEADY, Math.sqrt(own2) / FACTOR / v.length / mean));
    parts.add(new Part(Source.POSITION, position(v) / mean));
    parts.add(new Part(Source.AREA, opening.u_area()));
    double integrated = Math.abs(secondWay(v) / mean - 1);
    parts.add(new Part(Source.RULE, Math.max(WallLaw.worst(traverse), integrated) / EVEN));
    if (opening.shape() == Opening.Shape.ROUND) {
      parts.add(new Part(Source.LINES, lines(v) / mean));
    }
    if (opening.shape().isSlot()) {
      parts.add(new Part(Source.ACROSS, U_ACROSS));
    }
    parts.add(new Part(Source.IN_THE_WAY, instrument.u_factor(opening)));
    parts.sort(Comparator.comparingDouble(Part::u).reversed());
    return parts;
  }

  /**
   * What wrong places do to the mean: near a wall the speed goes as the distance to the power 1/7.
   * Where the ball does not fit between point and wall, it lies farther out by what is missing.
   */
  private double position(double[] v) {
    double squares = 0;
    double bias = 0;
    double radius_m = instrument.ball_m() / 2;
    for (int i = 0; i < v.length; i++) {
      double wall_m = points.get(i).fromWall_m();
      double slope_1_s = v[i] / WallLaw.USUAL / Math.max(wall_m, radius_m);
      squares += Math.pow(slope_1_s * u_position_m, 2);
      bias += slope_1_s * Math.max(0, radius_m - wall_m);
    }
    return Math.hypot(Math.sqrt(squares), bias / EVEN) / v.length;
  }

  /** Points that the ball cannot reach, since the wall is nearer than half its diameter. */
  public List<FlowPoint> unreached() {
    return points.stream().filter(p -> p.fromWall_m() < instrument.ball_m() / 2).toList();
  }

  private double lines(double[] v) {
    int half = v.length / 2;
    double one = IntStream.range(0, half).mapToDouble(i -> v[i]).average().orElseThrow();
    double other = IntStream.range(half, v.length).mapToDouble(i -> v[i]).average().orElseThrow();
    // standard deviation of the mean of two: half their difference
    return Math.abs(one - other) / 2;
  }

  /** The mean over the section by another way through the same speeds. */
  private double secondWay(double[] v) {
    double[] shares = traverse.shares();
    boolean round = traverse.opening().shape() == Opening.Shape.ROUND;
    double[] along = round ? WallLaw.circleWeights(shares) : WallLaw.sideWeights(shares);
    double sum = 0;
    for (int i = 0; i < v.length; i++) {
      double w = along[i % shares.length];
      sum +=
          switch (traverse.opening().shape()) {
            case ROUND -> w * v[i] / 2;
            case RECTANGLE -> w * along[i / shares.length] * v[i];
            case GAP, HIVE -> w * v[i];
          };
    }
    return sum;
  }
}
