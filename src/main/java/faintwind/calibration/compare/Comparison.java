package faintwind.calibration.compare;

import faintwind.calibration.EnScore;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A later calibration of an instrument against an earlier one.
 *
 * @param speeds what the later one reads where the earlier one read a speed, rising speeds
 * @param changes numbers of the formula by both, the most changed first
 * @param causes what may have changed, the likeliest first; empty where the two agree
 */
public record Comparison(List<AtSpeed> speeds, List<Change> changes, List<Cause> causes) {
  public Comparison {
    speeds = List.copyOf(speeds);
    changes = List.copyOf(changes);
    causes = List.copyOf(causes);
  }

  /** Where the two lie farthest apart for their uncertainty. */
  public AtSpeed worst() {
    return speeds.stream()
        .max(Comparator.comparingDouble(s -> Math.abs(s.en().value())))
        .orElseThrow();
  }

  /** Whether they agree at every speed. */
  public boolean agrees() {
    return worst().en().isSatisfactory();
  }

  /** The likeliest cause. */
  public Optional<Cause> likeliest() {
    return causes.stream().findFirst();
  }

  /**
   * One speed.
   *
   * @param speed_m_s by the earlier calibration
   * @param later_m_s what the later one makes of the same signal
   * @param u95_m_s expanded uncertainty of the difference
   * @param en the difference over it
   */
  public record AtSpeed(double speed_m_s, double later_m_s, double u95_m_s, EnScore en) {
    /** Later less earlier, m/s. */
    public double difference_m_s() {
      return later_m_s - speed_m_s;
    }
  }

  /**
   * A number by both.
   *
   * @param name its key, see {@code change.}
   * @param unit its unit
   * @param earlier by the earlier calibration
   * @param later by the later one
   * @param en their difference over its expanded uncertainty
   */
  public record Change(String name, String unit, double earlier, double later, EnScore en) {}

  /**
   * What may have changed.
   *
   * @param kind what
   * @param by how much it would have to be other, relative
   * @param weight share of its likelihood, 0 to 1
   */
  public record Cause(Kind kind, double by, double weight) {}

  /** What may change between two calibrations. */
  public enum Kind {
    SUPPLY("cause.supply"),
    LOGGER("cause.logger"),
    DIRT("cause.dirt"),
    LEAD("cause.lead"),
    ARM("cause.arm");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /** Bundle key of its words. */
    public String key() {
      return key;
    }
  }
}
