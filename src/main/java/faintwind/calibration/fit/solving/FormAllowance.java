package faintwind.calibration.fit.solving;

import faintwind.calibration.fit.setup.Setup;
import java.util.Map;

/**
 * What a fit cannot know of itself is added to its covariance: that the formula's form is not
 * exactly the ball's, and that the air carried round in a spin need not be quite what the recovery
 * after it shows. Sized on made-up builds that serve for nothing else (docs/decisions/0006, table
 * in docs/accuracy.md): common practice, no source.
 */
public final class FormAllowance {
  /** Relative standard uncertainty of a parameter that stands for the form. */
  private static final Map<String, Double> RELATIVE =
      Map.of(
          "forced", 0.0015, "natural", 0.003, "mixing", 0.0075, "b", 0.0015, "c", 0.003, "m",
          0.0075);

  /** The same for what is not positive by nature, absolute. */
  private static final Map<String, Double> ABSOLUTE = Map.of("tilt", 0.001);

  /** Of the share that is found, what it may be off while its recoveries look as they do. */
  private static final double SHARE_FORM = 0.25;

  private FormAllowance() {}

  static void add(Setup setup, double[] values, double[][] covariance) {
    for (int i = 0; i < setup.layout().losses(); i++) {
      covariance[i][i] += form(setup, values, i) + carried(setup, values, i);
    }
  }

  /** Variance of a loss parameter that stands for the form. */
  public static double form(Setup setup, double[] values, int i) {
    String name = setup.unknowns().get(i).name();
    double u = RELATIVE.getOrDefault(name, 0.0) * values[i] + ABSOLUTE.getOrDefault(name, 0.0);
    return u * u;
  }

  /**
   * Variance of a loss parameter from the carried air: a share that is wrong scales every speed
   * alike, forced ∝ speed^−n with n about the half that the published forms have near their middle.
   */
  public static double carried(Setup setup, double[] values, int i) {
    String name = setup.unknowns().get(i).name();
    if (!setup.turns() || setup.statedShare() || !(name.equals("forced") || name.equals("b"))) {
      return 0;
    }
    double share = SHARE_FORM * values[setup.layout().carriedShare()];
    double scale = share * 0.53 * values[i];
    return scale * scale;
  }
}
