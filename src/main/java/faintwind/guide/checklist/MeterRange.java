package faintwind.guide.checklist;

/**
 * One range of a meter.
 *
 * @param unit Ω, V or A
 * @param top the largest value it shows, in {@code unit}
 * @param step one count of its last figure, in {@code unit}
 * @param share of the reading that may be wrong, such as 0.008
 * @param counts of the last figure that may be wrong beside that
 */
public record MeterRange(String unit, double top, double step, double share, double counts) {

  public MeterRange {
    if (!(top > 0) || !(step > 0) || !(share >= 0) || !(counts >= 0)) {
      throw new IllegalArgumentException(
          "range to "
              + top
              + " "
              + unit
              + ", step "
              + step
              + ", share "
              + share
              + ", counts "
              + counts
              + "; allowed: top and step above 0, the others from 0");
    }
  }

  /**
   * Half-width of what a reading may be wrong by, in the range's unit: share · reading + counts ·
   * step (the usual form of a meter's data sheet, common practice).
   */
  public double halfWidth(double reading) {
    return share * Math.abs(reading) + counts * step;
  }
}
