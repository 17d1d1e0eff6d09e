package faintwind.calibration;

import java.util.List;

/**
 * Which instruments had a say in a calibration, and in what.
 *
 * @param with the others
 * @param shared what they made expected of what all share, each with its standard uncertainty
 */
public record Pooled(List<Other> with, List<Parameter> shared) {
  public Pooled {
    with = List.copyOf(with);
    shared = List.copyOf(shared);
  }

  /**
   * One of the others.
   *
   * @param instrumentId whose
   * @param runsSha256 SHA-256 of the table of the runs that spoke
   */
  public record Other(String instrumentId, String runsSha256) {}
}
