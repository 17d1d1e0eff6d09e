package faintwind.calibration.pool;

import faintwind.calibration.Parameter;
import java.util.Arrays;
import java.util.List;

/**
 * What instruments of one design on one arm share, and by how much it may differ from one to the
 * next all the same: the standard deviation expected, of the logarithm for what is positive by
 * nature (own choices, no source; the spread is learned from the class on top of them).
 */
public enum Shared {
  FORCED("forced", "1", Form.LOGARITHM, 0.03),
  NATURAL("natural", "1", Form.LOGARITHM, 0.03),
  TILT("tilt", "1", Form.PLAIN, 0.003),
  MIXING("mixing", "1", Form.LOGARITHM, 0.03),
  WARMTH("warmth", "1", Form.PLAIN, 0.03),
  CARRIED_SHARE("carried_share", "1", Form.PLAIN, 0.001),
  CARRIED_RISE("carried_rise", "s", Form.LOGARITHM, 0.06),
  CARRIED_DECAY("carried_decay", "s", Form.LOGARITHM, 0.06),
  CARRIED_SLOWING("carried_slowing", "1", Form.PLAIN, 0.015),
  CARRIED_BY_TURN("carried_by_turn", "1", Form.PLAIN, 0.03),
  ASYMMETRY("asymmetry", "1", Form.PLAIN, 0.001),
  RUN_UP("run_up", "s", Form.LOGARITHM, 0.2),
  RUN_DOWN("run_down", "s", Form.LOGARITHM, 0.2);

  private final String unknown;
  private final String unit;
  private final Form form;
  private final double between;

  private enum Form {
    PLAIN,
    LOGARITHM
  }

  Shared(String unknown, String unit, Form form, double between) {
    this.unknown = unknown;
    this.unit = unit;
    this.form = form;
    this.between = between;
  }

  /** Name of the unknown of the fit. */
  public String unknown() {
    return unknown;
  }

  /** The quantity itself, from what is normal and its standard uncertainty. */
  public Parameter parameter(double normal, double u) {
    double value = form == Form.LOGARITHM ? Math.exp(normal) : normal;
    return new Parameter(unknown, value, form == Form.LOGARITHM ? u * value : u, unit);
  }

  double between() {
    return between;
  }

  /** The names of all. */
  static List<String> unknowns() {
    return Arrays.stream(values()).map(Shared::unknown).toList();
  }
}
