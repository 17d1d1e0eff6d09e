package faintwind.calibration.compare;

import faintwind.calibration.Calibration;
import faintwind.calibration.EnScore;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Compares two calibrations by what they make of the same signal: at each speed the signal that the
 * earlier one expects at rest, in its own air and at each one's own supply, read by the later one.
 * The uncertainty of the difference is that of both, taken as independent (ISO/IEC 17043, see
 * {@link EnScore}); the arm that both share makes it rather too large.
 */
public final class CompareCalibrations {
  private static final OptionalDouble OWN_SUPPLY = OptionalDouble.empty();

  private final Calibration earlier;
  private final Calibration later;
  private final Formula before;
  private final Formula after;
  private final AirPoint air;

  private CompareCalibrations(Calibration earlier, Calibration later) {
    this.earlier = earlier;
    this.later = later;
    this.before = Formula.of(earlier);
    this.after = Formula.of(later);
    this.air = AirPoint.of(earlier.formula().referenceAir());
  }

  /** The comparison; refused where the two speak of other signals or share no speeds. */
  public static Checked<Comparison> of(Calibration earlier, Calibration later) {
    if (earlier.signal().unit() != later.signal().unit()) {
      return Checked.refused(
          Problem.error(
              "compare.units",
              Where.NOWHERE,
              earlier.signal().unit().column(),
              later.signal().unit().column()));
    }
    double lowest = Math.max(lowest_m_s(earlier), lowest_m_s(later));
    double highest = Math.min(earlier.coverage().highest_m_s(), later.coverage().highest_m_s());
    if (!(highest > lowest)) {
      return Checked.refused(Problem.error("compare.no-speeds", Where.NOWHERE, ""));
    }
    return Checked.ok(new CompareCalibrations(earlier, later).between(lowest, highest));
  }

  private static double lowest_m_s(Calibration c) {
    return Math.max(c.coverage().lowest_m_s(), c.performance().floor_m_s());
  }

  private Comparison between(double lowest_m_s, double highest_m_s) {
    List<Comparison.AtSpeed> speeds = new ArrayList<>();
    for (int i = 0; i < OwnChoices.SPEEDS; i++) {
      double share = (double) i / (OwnChoices.SPEEDS - 1);
      speeds.add(at(lowest_m_s * Math.pow(highest_m_s / lowest_m_s, share)));
    }
    Comparison alone = new Comparison(speeds, new Changes(earlier, later).list(), List.of());
    return alone.agrees()
        ? alone
        : new Comparison(speeds, alone.changes(), new LikelyCause(earlier, later).list());
  }

  private Comparison.AtSpeed at(double speed_m_s) {
    double delta_K = before.steadyDelta_K(speed_m_s, OWN_SUPPLY, air);
    double signal = before.signal(delta_K, air.air_K()) - before.path().offset();
    double read_m_s = after.steadySpeed_m_s(signal + after.path().offset(), OWN_SUPPLY, air);
    double u95_m_s = Math.hypot(u95_m_s(earlier, speed_m_s), u95_m_s(later, speed_m_s));
    return new Comparison.AtSpeed(
        speed_m_s, read_m_s, u95_m_s, EnScore.ofDifference(read_m_s - speed_m_s, u95_m_s));
  }

  /** Expanded uncertainty between the tabulated speeds: straight lines in logarithms. */
  public static double u95_m_s(Calibration calibration, double speed_m_s) {
    List<AtSpeed> table = calibration.performance().speeds();
    AtSpeed below = table.get(0);
    AtSpeed above = table.get(table.size() - 1);
    for (AtSpeed at : table) {
      if (at.speed_m_s() <= speed_m_s) {
        below = at;
      }
    }
    for (int i = table.size() - 1; i >= 0; i--) {
      if (table.get(i).speed_m_s() >= speed_m_s) {
        above = table.get(i);
      }
    }
    if (below.speed_m_s() >= above.speed_m_s()) {
      return above.u95_m_s() * speed_m_s / above.speed_m_s();
    }
    double share =
        Math.log(speed_m_s / below.speed_m_s()) / Math.log(above.speed_m_s() / below.speed_m_s());
    return below.u95_m_s() * Math.pow(above.u95_m_s() / below.u95_m_s(), share);
  }
}
