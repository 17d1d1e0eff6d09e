package faintwind.calibration.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a session should bring, and what it may cost.
 *
 * @param least_m_s slowest speed wanted, m/s
 * @param most_m_s fastest speed wanted, m/s
 * @param beats the beats that a person can follow
 * @param directions whether the arm may turn both ways
 * @param time time there is
 */
public record PlanWish(
    double least_m_s, double most_m_s, Beats beats, Directions directions, Time time) {

  /** Which way the arm may turn. */
  public enum Directions {
    /** All clockwise. */
    ONE_WAY,
    /** Clockwise and counter-clockwise by turns. */
    BOTH_WAYS
  }

  /**
   * Beats that a person can follow.
   *
   * @param least slowest comfortable beat, a minute
   * @param most quickest comfortable beat, a minute
   * @param aTurn beats a turn to choose from: the marks round the circle, or fewer
   */
  public record Beats(int least, int most, List<Integer> aTurn) {
    public Beats {
      aTurn = aTurn.stream().sorted().distinct().toList();
      if (least < 1 || most < least || aTurn.isEmpty() || aTurn.get(0) < 1) {
        throw new IllegalArgumentException(
            "least = " + least + ", most = " + most + ", aTurn = " + aTurn);
      }
    }

    /** 40 to 120 a minute; 1 to 24 marks round the circle (common practice, no source). */
    public static Beats usual() {
      return new Beats(40, 120, List.of(1, 2, 4, 8, 12, 24));
    }
  }

  /**
   * Time there is.
   *
   * @param available_s in all, s; empty: as long as it needs
   * @param lesson where the session is split into lessons
   */
  public record Time(OptionalDouble available_s, Optional<Lesson> lesson) {
    /** No limit, not split. */
    public static Time free() {
      return new Time(OptionalDouble.empty(), Optional.empty());
    }
  }

  /**
   * One lesson: the heater is switched on beforehand, so that the difference is flat when it
   * begins.
   *
   * @param length_s its length, s
   * @param most how many there are at most
   */
  public record Lesson(double length_s, int most) {
    /** A school lesson of 45 minutes. */
    public static final double SCHOOL_S = 2700;
  }

  public PlanWish {
    if (!(least_m_s > 0) || !(most_m_s > least_m_s)) {
      throw new IllegalArgumentException(
          "least_m_s = " + least_m_s + ", most_m_s = " + most_m_s + "; allowed 0 < least < most");
    }
  }
}
