package faintwind.calibration.fit.numerics;

/**
 * The air speed that a ball at the arm feels: that of its way through the carried air, and a
 * draught of the room. In each turn the arm meets the draught from every side; where it comes along
 * the way it adds as much as it takes half a turn later, and the mean of |way + draught|ⁿ over all
 * sides is wayⁿ (1 + n²/4 · draught²/way²), so that only n/2 of the draught's square counts (own
 * calculation, n about 0.54 for forced convection). At rest nothing turns and the loss goes nearly
 * with the square, as natural convection is mixed in: there all of it counts.
 */
final class SeenAir {
  /** Part of the draught's square that does not count far above it: 1 − n/2. */
  private static final double LOST = 0.73;

  /** Speed, m/s. */
  double speed_m_s;

  /** Its change with the way. */
  double byPast;

  /** Its change with the draught. */
  double byDraught;

  /** Computes all three for a way through the carried air and a draught, m/s. */
  void at(double past, double draught) {
    double way = past * past;
    double blown = draught * draught;
    double wide = way + OwnChoices.HALF_AT * OwnChoices.HALF_AT * blown;
    double part = wide > 0 ? way / wide : 0;
    double rest = 1 - part;
    speed_m_s = Math.max(1e-9, Math.sqrt(way + blown * (1 - LOST * part)));
    double slowness = 1 / speed_m_s;
    byPast = past * (1 - LOST / (OwnChoices.HALF_AT * OwnChoices.HALF_AT) * rest * rest) * slowness;
    byDraught = draught * (1 - LOST * part * part) * slowness;
  }

  /** The speed alone. */
  static double of(double past, double draught) {
    SeenAir seen = new SeenAir();
    seen.at(past, draught);
    return seen.speed_m_s;
  }
}
