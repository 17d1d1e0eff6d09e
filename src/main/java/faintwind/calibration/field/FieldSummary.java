package faintwind.calibration.field;

import java.util.List;
import java.util.Optional;

/**
 * What a log says of the air.
 *
 * @param cover how much of the time the figures rest on
 * @param mean mean speed
 * @param percentiles speeds below which the air was for a share of the time
 * @param limits time above given limits
 * @param calm time below the speed that counts as calm; its {@code above} is the rest
 * @param hours hour by hour
 * @param gusts strongest first
 */
public record FieldSummary(
    Cover cover,
    StretchMean mean,
    List<Percentile> percentiles,
    List<AboveLimit> limits,
    AboveLimit calm,
    List<Hour> hours,
    List<Gust> gusts) {
  public FieldSummary {
    percentiles = List.copyOf(percentiles);
    limits = List.copyOf(limits);
    hours = List.copyOf(hours);
    gusts = List.copyOf(gusts);
  }

  /**
   * What is asked for.
   *
   * @param limits_m_s speeds whose time above and below is told
   * @param calm_m_s below this the air counts as calm
   * @param midnight_s time of the log at which a day of its clock began, so that hours are those of
   *     the clock; 0 for hours since the log's own zero
   * @param how how scatter and shared part are found
   */
  public record Wanted(
      List<Double> limits_m_s, double calm_m_s, double midnight_s, StretchMean.How how) {
    /** Natural convection in a room is of this size; own choice. */
    public static final double CALM_M_S = 0.05;

    public Wanted {
      limits_m_s = List.copyOf(limits_m_s);
    }
  }

  /**
   * How much of the time counts.
   *
   * @param from_s first row on the log's clock
   * @param to_s end of the last row
   * @param used_s time that the figures rest on
   * @param leftOut_s time of rows that warm up, have no power or could not be read
   * @param faintShare share of the time used that is too faint to tell from still air
   * @param beyondShare share of it beyond the calibrated speeds
   */
  public record Cover(
      double from_s,
      double to_s,
      double used_s,
      double leftOut_s,
      double faintShare,
      double beyondShare) {}

  /**
   * A speed below which the air was for a share of the time.
   *
   * @param percent of the time used
   * @param speed_m_s the speed
   * @param u95_m_s its expanded uncertainty: that of the row it belongs to
   */
  public record Percentile(double percent, double speed_m_s, double u95_m_s) {}

  /**
   * Share of the time above a limit.
   *
   * @param limit_m_s the limit
   * @param above share of the time used
   * @param least share in which the whole band lies above: all speeds too high together
   * @param most share in which any of the band lies above
   */
  public record AboveLimit(double limit_m_s, double above, double least, double most) {
    /** Share of the time below. */
    public double below() {
      return 1 - above;
    }
  }

  /**
   * One hour.
   *
   * @param from_s its beginning on the log's clock
   * @param mean over the time used in it; empty where there is none
   * @param highest_m_s highest speed of a row; 0 where there is none
   */
  public record Hour(double from_s, Optional<StretchMean> mean, double highest_m_s) {
    /** How long an hour is, s. */
    public static final double LENGTH_S = 3600;
  }

  /**
   * A gust.
   *
   * @param from_s when it began
   * @param to_s when it had passed
   * @param peak_m_s highest speed of a row
   * @param u95_m_s its expanded uncertainty
   * @param peak_s when that was
   */
  public record Gust(double from_s, double to_s, double peak_m_s, double u95_m_s, double peak_s) {}

  /** Way of the air past the instrument in the time used, m. */
  public double run_m() {
    return mean.speed_m_s() * cover.used_s();
  }

  /** Its expanded uncertainty, m. */
  public double u95Run_m() {
    return mean.u95_m_s() * cover.used_s();
  }
}
