package faintwind.calibration.speed;

import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Air speed of one row of a log.
 *
 * @param speed_m_s averaged speed of undisturbed air; empty for a row that could not be read
 * @param u95_m_s expanded uncertainty, 95 % coverage; empty with the speed
 * @param flags none where the value can be used
 */
public record SpeedRow(OptionalDouble speed_m_s, OptionalDouble u95_m_s, Set<SpeedFlag> flags) {
  /** A row that could not be read. */
  public static final SpeedRow BAD =
      new SpeedRow(OptionalDouble.empty(), OptionalDouble.empty(), EnumSet.of(SpeedFlag.BAD));

  public SpeedRow {
    flags = SpeedFlag.kept(flags);
    if (speed_m_s.isPresent() != u95_m_s.isPresent()) {
      throw new IllegalArgumentException("speed_m_s and u95_m_s: allowed both or neither");
    }
  }

  /** Whether the value can be used as it stands. */
  public boolean usable() {
    return flags.isEmpty();
  }
}
