package faintwind.calibration;

import java.util.List;

/**
 * Whether the fit meets the build.
 *
 * @param rows what was compared
 * @param suspects what may be wrong, the likeliest first; empty where all agree
 */
public record BuildAgreement(List<Row> rows, List<Suspicion> suspects) {
  /**
   * The largest |Eₙ| of one number that tolerances explain. Up to five numbers are judged at once,
   * so each is judged at 99 % for 95 % of them all together (Bonferroni's inequality): 2.576/1.960
   * of the normal distribution.
   */
  public static final double LIMIT = 1.314;

  public BuildAgreement {
    rows = List.copyOf(rows);
    suspects = List.copyOf(suspects);
  }

  /** Whether no tolerance explains a difference. */
  public boolean disagrees() {
    return rows.stream().anyMatch(row -> row.judged() && !row.agrees());
  }

  /**
   * One number by both.
   *
   * @param quantity which
   * @param found by the fit
   * @param u_found its standard uncertainty
   * @param says what the build says
   * @param u_says its standard uncertainty, of all parts in quadrature
   * @param en difference of the logarithms over its expanded uncertainty (k = 2)
   * @param judged whether it counts for the verdict; else it is another view of the others
   */
  public record Row(
      BuildQuantity quantity,
      double found,
      double u_found,
      double says,
      double u_says,
      EnScore en,
      boolean judged) {
    /** Whether tolerances explain the difference. */
    public boolean agrees() {
      return Math.abs(en.value()) <= LIMIT;
    }

    /** By how much the fit's number is larger, relative. */
    public double off() {
      return found / says - 1;
    }
  }

  /**
   * What may be wrong.
   *
   * @param suspect what
   * @param factor by how much it would have to be other than recorded
   * @param explains whether this alone explains what was found
   * @param weight share of its likelihood among all suspects, 0 to 1
   */
  public record Suspicion(BuildSuspect suspect, double factor, boolean explains, double weight) {}
}
