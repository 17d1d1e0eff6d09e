package faintwind.ui.air;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A converted log.
 *
 * @param speeds the file
 * @param calibration what it was converted by, where that is known
 */
public record ConvertedLog(Path speeds, Optional<Path> calibration) {}
