package faintwind.calibration.pool;

import faintwind.calibration.Covariance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Sessions drawn from a normal population, without a fit. */
public final class MadeSessions {
  /** Unknowns of a session: what is shared, and what each keeps for itself. */
  public static final List<String> NAMES = names();

  static final double SPREAD = 0.5;

  private MadeSessions() {}

  private static List<String> names() {
    List<String> names = new ArrayList<>(Shared.unknowns());
    names.addAll(List.of("conduction", "heating", "leads"));
    return names;
  }

  /** The deviations of a session that lies off in one unknown only. */
  public static double[] off(String name, double by) {
    double[] off = new double[NAMES.size()];
    off[NAMES.indexOf(name)] = by;
    return off;
  }

  /**
   * A session whose recordings alone would say {@code truth + off} ± {@code u} of every unknown,
   * after what was believed before: 0 ± {@link #SPREAD}.
   */
  public static SessionShown session(double truth, double[] off, double u) {
    double keep = SPREAD * SPREAD / (SPREAD * SPREAD + u * u);
    List<Double> estimates = new ArrayList<>();
    double[][] covariance = new double[NAMES.size()][NAMES.size()];
    double[][] believed = new double[NAMES.size()][NAMES.size()];
    for (int i = 0; i < NAMES.size(); i++) {
      estimates.add(keep * (truth + off[i]));
      covariance[i][i] = keep * u * u;
      believed[i][i] = SPREAD * SPREAD;
    }
    List<Double> before = NAMES.stream().map(name -> 0.0).toList();
    return new SessionShown(
        NAMES, estimates, Covariance.of(covariance), before, Covariance.of(believed));
  }

  /** A class that differs by no more than {@code u} explains. */
  public static List<SessionShown> sound(int count, double truth, double u) {
    Random random = new Random(5);
    List<SessionShown> sessions = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double[] off = random.doubles(NAMES.size()).map(each -> 1.7 * u * (2 * each - 1)).toArray();
      sessions.add(session(truth, off, u));
    }
    return sessions;
  }
}
