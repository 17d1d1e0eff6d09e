package faintwind.physics.arm;

import faintwind.physics.Constants;

/**
 * How far a weight on a thread swings out on a turning arm (conical pendulum whose upper end goes
 * round as well): tan φ = ω²·(r + L·sin φ)/g, the balance of gravity, thread and m·ω²·r (any
 * textbook of mechanics). This is why a pair on the arm hangs on no thread.
 */
public final class ThreadSwing {
  private static final int HALVINGS = 60;

  private ThreadSwing() {}

  /**
   * By how much the radius grows, m.
   *
   * @param upper where the thread is tied, and how fast that point goes
   * @param thread_m its length, m
   */
  public static double growth_m(Turning upper, double thread_m) {
    double omega2 = upper.omega_rad_s() * upper.omega_rad_s();
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double phi = (low + high) / 2;
      double pulled =
          omega2 * (upper.radius_m() + thread_m * Math.sin(phi)) / Constants.GRAVITY_M_S2;
      if (Math.tan(phi) < pulled) {
        low = phi;
      } else {
        high = phi;
      }
    }
    return thread_m * Math.sin((low + high) / 2);
  }
}
