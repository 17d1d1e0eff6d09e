package faintwind.calibration.survey;

import faintwind.calibration.Coverage;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A tone that follows the air speed, so that eyes and hands are free to look for a draught: three
 * octaves over the calibrated speeds, equal ratios of speed to equal steps of pitch. Own choice, no
 * source.
 *
 * @param lowest_m_s speed of the lowest tone
 * @param highest_m_s speed of the highest tone
 */
public record SpeedTone(double lowest_m_s, double highest_m_s) {
  /** The lowest tone: the A below middle C. */
  public static final double LOWEST_HZ = 220;

  private static final Set<SpeedFlag> SILENT =
      Set.of(SpeedFlag.BAD, SpeedFlag.WARMUP, SpeedFlag.POWER, SpeedFlag.FLOOR);

  public SpeedTone {
    if (!(lowest_m_s > 0 && highest_m_s > lowest_m_s)) {
      throw new IllegalArgumentException(
          "lowest_m_s = " + lowest_m_s + ", highest_m_s = " + highest_m_s + ": rising, above 0");
    }
  }

  /** Over the speeds of a calibration; where it has one speed only, up to twice that. */
  public static SpeedTone over(Coverage coverage) {
    double lowest_m_s = Math.max(OwnChoices.LEAST_M_S, coverage.lowest_m_s());
    double highest_m_s = coverage.highest_m_s();
    return new SpeedTone(lowest_m_s, highest_m_s > lowest_m_s ? highest_m_s : 2 * lowest_m_s);
  }

  /**
   * The pitch of a speed, Hz; beyond the calibrated speeds that of the nearest. Empty, so that
   * nothing sounds, where the row has no speed that means anything, or one too faint to tell from
   * still air.
   */
  public OptionalDouble pitch_Hz(SpeedRow row) {
    if (row.speed_m_s().isEmpty() || row.flags().stream().anyMatch(SILENT::contains)) {
      return OptionalDouble.empty();
    }
    double speed_m_s = Math.max(lowest_m_s, Math.min(highest_m_s, row.speed_m_s().getAsDouble()));
    double share = Math.log(speed_m_s / lowest_m_s) / Math.log(highest_m_s / lowest_m_s);
    return OptionalDouble.of(LOWEST_HZ * Math.pow(2, OwnChoices.OCTAVES * share));
  }
}
