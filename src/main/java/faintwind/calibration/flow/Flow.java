package faintwind.calibration.flow;

import java.util.List;

/**
 * Flow through an opening.
 *
 * @param flow_m3_s volume per time, at the state of the air that was measured
 * @param mean_m_s mean speed over the section
 * @param parts where the uncertainty comes from, largest first
 * @param faintPoints points whose speed cannot be told from still air
 * @param points points in all
 */
public record Flow(
    double flow_m3_s, double mean_m_s, List<Part> parts, int faintPoints, int points) {
  private static final double FACTOR = 2;

  public Flow {
    parts = List.copyOf(parts);
  }

  /** A source of uncertainty. */
  public enum Source {
    /** What all points share: the calibration of the instrument. */
    INSTRUMENT,
    /** Scatter of each point while it was measured. */
    UNSTEADY,
    /** What two ways through the same section differ by. */
    LINES,
    /** Where the points really lay. */
    POSITION,
    /** Area of the opening. */
    AREA,
    /** Few points stand for a whole section. */
    RULE,
    /** The profile across a slot, which one row of points does not see. */
    ACROSS,
    /** The instrument itself fills part of the opening. */
    IN_THE_WAY
  }

  /**
   * What a source brings.
   *
   * @param source which
   * @param u relative standard uncertainty of the flow
   */
  public record Part(Source source, double u) {}

  /** Volume per hour. */
  public double flow_m3_h() {
    return 3600 * flow_m3_s;
  }

  /** Relative standard uncertainty. */
  public double u() {
    return Math.sqrt(parts.stream().mapToDouble(p -> p.u() * p.u()).sum());
  }

  /** Expanded uncertainty, 95 % coverage with a factor of 2. */
  public double u95_m3_h() {
    return FACTOR * u() * flow_m3_h();
  }

  /** Whether no flow lies within the uncertainty, or half of the points are too faint. */
  public boolean tooFaint() {
    return !(flow_m3_s > 0) || FACTOR * u() >= 1 || 2 * faintPoints > points;
  }
}
