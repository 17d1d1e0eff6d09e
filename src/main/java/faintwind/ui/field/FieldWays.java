package faintwind.ui.field;

import faintwind.calibration.profile.ImportProfile;
import faintwind.job.record.KeepConversion;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What the model asks of the instrument that is open. */
public interface FieldWays {
  /**
   * The calibration that was in force when a log was recorded; off the JavaFX thread. The file's
   * name is its path.
   */
  Chosen calibrationOf(Path log, Optional<ImportProfile> profile) throws IOException;

  /** Keeps log and speeds with the instrument and answers on the JavaFX thread. */
  void keep(
      Path log,
      Path calibration,
      Optional<ImportProfile> profile,
      Consumer<Checked<KeepConversion.Kept>> answer);

  /** Where the speeds of a log by a calibration are kept already, relative to the folder. */
  Optional<String> keptAs(Path log, Path calibration);

  /**
   * A calibration for a log.
   *
   * @param file empty where none was ever in force
   * @param notes what a person should know of the choice
   */
  record Chosen(Optional<Path> file, List<Problem> notes) {}
}
