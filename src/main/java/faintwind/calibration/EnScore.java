package faintwind.calibration;

/**
 * How two results of one quantity agree: Eₙ = (x − X) / √(U² + U_ref²), with both uncertainties
 * expanded to 95 % coverage (ISO/IEC 17043, annex B, from memory; formula as in ISO 13528:2015, 9.7
 * and a statistics manual of NIST).
 *
 * <p>That guide calls |Eₙ| ≤ 1 satisfactory, which asks for nothing, and |Eₙ| above 1
 * unsatisfactory, which asks for action. The root takes the two results as independent. Where they
 * share a cause (the same arm, the same radius), that share belongs in neither uncertainty: leave
 * it out of both, or form the uncertainty of the difference first and use {@link #ofDifference}.
 *
 * @param value the score; its sign is that of x − X
 */
public record EnScore(double value) {
  /** The largest |Eₙ| that counts as agreement. */
  public static final double LIMIT = 1;

  /** Refuses a score that is no number. */
  public EnScore {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value " + value + ", expected a finite number");
    }
  }

  /**
   * The score of a result against its reference.
   *
   * @param x the result, in any unit
   * @param u95 its expanded uncertainty, in the same unit
   * @param reference the value it is held against, in the same unit
   * @param u95_reference the expanded uncertainty of that, in the same unit
   */
  public static EnScore of(double x, double u95, double reference, double u95_reference) {
    return ofDifference(x - reference, Math.hypot(u95, u95_reference));
  }

  /**
   * The score of a difference whose own uncertainty is known.
   *
   * @param difference result minus reference, in any unit
   * @param u95 the expanded uncertainty of that difference, in the same unit, above zero
   */
  public static EnScore ofDifference(double difference, double u95) {
    if (!(u95 > 0)) {
      throw new IllegalArgumentException("u95 " + u95 + ", expected above 0");
    }
    return new EnScore(difference / u95);
  }

  /** Whether the two agree within their uncertainties ("satisfactory"). */
  public boolean isSatisfactory() {
    return Math.abs(value) <= LIMIT;
  }
}
