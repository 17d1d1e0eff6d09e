package faintwind.job.field;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Counts the rows of one conversion. For one log and one thread. */
final class ConversionCount {
  private final Map<SpeedFlag, Long> flagged = new EnumMap<>(SpeedFlag.class);
  private long rows;
  private long usable;
  private double lowest_m_s = Double.MAX_VALUE;
  private double highest_m_s;
  private double sum_m_s;

  void add(SpeedRow row) {
    rows++;
    if (!row.usable()) {
      for (SpeedFlag flag : row.flags()) {
        flagged.merge(flag, 1L, Long::sum);
      }
    } else if (row.speed_m_s().isPresent()) {
      double speed_m_s = row.speed_m_s().getAsDouble();
      usable++;
      sum_m_s += speed_m_s;
      lowest_m_s = Math.min(lowest_m_s, speed_m_s);
      highest_m_s = Math.max(highest_m_s, speed_m_s);
    }
  }

  long rows() {
    return rows;
  }

  /** Whether no row at all could be read. */
  boolean allBad() {
    return rows > 0 && flagged.getOrDefault(SpeedFlag.BAD, 0L) == rows;
  }

  ConversionSummary summary(String log, String calibration, SpeedSettings settings) {
    Optional<ConversionSummary.Range> range =
        usable == 0
            ? Optional.empty()
            : Optional.of(new ConversionSummary.Range(lowest_m_s, sum_m_s / usable, highest_m_s));
    return new ConversionSummary(log, calibration, settings, rows, usable, flagged, range);
  }
}
