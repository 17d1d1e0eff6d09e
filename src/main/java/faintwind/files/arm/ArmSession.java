package faintwind.files.arm;

import faintwind.calibration.run.ArmKnown;
import java.util.List;

/**
 * What one calibration showed of an arm.
 *
 * @param instrumentId whose calibration
 * @param counted when its runs were measured, else when it was made, ISO 8601
 * @param inputsSha256 SHA-256 of every file it was made from: the same recording counts once
 * @param shown what it showed
 */
public record ArmSession(
    String instrumentId, String counted, List<String> inputsSha256, ArmKnown shown) {
  public ArmSession {
    inputsSha256 = List.copyOf(inputsSha256);
  }
}
