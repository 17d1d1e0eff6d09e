package faintwind.job.air;

import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What speeds are taken from, beside those that a table holds itself.
 *
 * @param speeds the converted log that times speak of
 * @param calibration what it was converted by
 * @param settle_s how long to wait at each place, where a person says it
 */
public record AirInputs(
    Optional<Path> speeds, Optional<Path> calibration, Optional<Double> settle_s) {
  /** Every speed is in the table. */
  public static final AirInputs NONE =
      new AirInputs(Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Opens them.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<AirSource> open() throws IOException {
    return AirSource.open(speeds, calibration, Optional.empty());
  }

  /** A table with the files that belong to it. */
  List<Path> with(Path table) {
    List<Path> files = new ArrayList<>(List.of(table));
    speeds.ifPresent(files::add);
    calibration.ifPresent(files::add);
    return files;
  }
}
