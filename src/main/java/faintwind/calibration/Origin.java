package faintwind.calibration;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Whose calibration, when it was made, by which program, from which files.
 *
 * @param instrumentId the instrument
 * @param created when
 * @param softwareVersion version of this program
 * @param inputSha256 SHA-256 in hexadecimal of every input file, by its name in the table's folder
 * @param journalHead SHA-256 of the last line of the instrument's journal when the calibration was
 *     made; empty where the runs belong to no instrument's folder
 * @param measured when and with what its runs were measured, where that is known
 * @param pooled what instruments of its class had a say in it, where they did
 */
public record Origin(
    String instrumentId,
    OffsetDateTime created,
    String softwareVersion,
    Map<String, String> inputSha256,
    Optional<String> journalHead,
    Optional<Measured> measured,
    Optional<Pooled> pooled) {
  public Origin {
    inputSha256 = Collections.unmodifiableMap(new TreeMap<>(inputSha256));
  }

  /** Where nobody knows when the runs were measured, and they belong to no instrument's folder. */
  public Origin(
      String instrumentId,
      OffsetDateTime created,
      String softwareVersion,
      Map<String, String> inputSha256) {
    this(
        instrumentId,
        created,
        softwareVersion,
        inputSha256,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The same where others had a say. */
  public Origin with(Pooled others) {
    return new Origin(
        instrumentId,
        created,
        softwareVersion,
        inputSha256,
        journalHead,
        measured,
        Optional.of(others));
  }

  /** From when on the calibration can count: the end of its measurement, else when it was made. */
  public OffsetDateTime validFrom() {
    return measured.map(Measured::last).orElse(created);
  }
}
