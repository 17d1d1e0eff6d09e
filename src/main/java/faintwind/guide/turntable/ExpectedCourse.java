package faintwind.guide.turntable;

import static faintwind.guide.turntable.OwnChoices.FACTOR;

import faintwind.calibration.plan.Response;

/**
 * How the signal should go: dθ/dt = p − g(U) θ with θ the signal less its offset and g = g0 + b ·
 * U^n (King 1914). Good enough to say what comes next; never a calibration. Learned from the
 * warm-up and from each spin as they come.
 *
 * @param offset of the signal
 * @param heating p, signal per second; its sign is that of the signal
 * @param still_1_s g0, 1/s
 * @param forced b, 1/s at 1 m/s
 */
public record ExpectedCourse(double offset, double heating, double still_1_s, double forced) {
  /** Exponent n, between that of a thin layer, 0.5, and what spheres show (common practice). */
  private static final double EXPONENT = 0.55;

  public ExpectedCourse {
    if (!(still_1_s > 0) || !(forced > 0) || heating == 0) {
      throw new IllegalArgumentException(
          "still_1_s = " + still_1_s + ", forced = " + forced + ", heating = " + heating);
    }
  }

  /**
   * From what is known before the session.
   *
   * @param perKelvin signal per kelvin, with its sign
   */
  public static ExpectedCourse before(Response response, double perKelvin) {
    double still_1_s = 1 / response.still_s().nominal();
    return new ExpectedCourse(
        0,
        perKelvin * response.still_K() * still_1_s,
        still_1_s,
        1 / response.breeze_s().nominal() - still_1_s);
  }

  /** Rate at which the signal settles at a speed, 1/s. */
  public double rate_1_s(double speed_m_s) {
    return still_1_s + forced * Math.pow(Math.max(0, speed_m_s), EXPONENT);
  }

  /** Signal once settled at a speed. */
  public double settled(double speed_m_s) {
    return offset + heating / rate_1_s(speed_m_s);
  }

  /** Signal a while later, heater on. */
  public double after(double signal, double speed_m_s, double while_s) {
    double end = settled(speed_m_s);
    return end + (signal - end) * Math.exp(-rate_1_s(speed_m_s) * while_s);
  }

  /** The same with moving air cooling so many times as well. */
  ExpectedCourse forcedBy(double factor) {
    return new ExpectedCourse(offset, heating, still_1_s, forced * factor);
  }

  /** The same with another offset. */
  ExpectedCourse from(double newOffset) {
    return new ExpectedCourse(newOffset, heating, still_1_s, forced);
  }

  /**
   * The same with heating and still air as the warm-up shows them; the forced part scales along.
   */
  ExpectedCourse warmedUp(double settled, double time_s) {
    double rate = clamp(1 / time_s, still_1_s);
    double theta = settled - offset;
    return theta == 0
        ? this
        : new ExpectedCourse(offset, theta * rate, rate, forced * rate / still_1_s);
  }

  /** The same with the forced part as a spin shows it, half way from before. */
  ExpectedCourse spun(double speed_m_s, double settled) {
    double theta = settled - offset;
    double rate = heating / theta;
    if (!(theta * heating > 0) || !(rate > still_1_s) || !(speed_m_s > 0)) {
      return this;
    }
    double seen = clamp((rate - still_1_s) / Math.pow(speed_m_s, EXPONENT), forced);
    return new ExpectedCourse(offset, heating, still_1_s, (forced + seen) / 2);
  }

  private static double clamp(double seen, double before) {
    return Math.max(before / FACTOR, Math.min(before * FACTOR, seen));
  }
}
