package faintwind.ui.air;

import faintwind.job.air.AirInputs;
import faintwind.job.air.OpeningGuide;
import faintwind.job.air.Reading;
import faintwind.message.Checked;
import faintwind.record.JournalEntry;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What the models ask of the instrument that is open; answers come on the JavaFX thread. */
public interface AirWays {
  /** The calibration in force. */
  Optional<Path> calibration();

  /** The log that was converted last. */
  Optional<ConvertedLog> lastLog();

  /** A converted log, with its calibration where it is on record, else the one in force. */
  ConvertedLog log(Path speeds);

  /** Who read a caution, and when, in words; empty where nobody has. */
  Optional<String> cautionReadBy(String caution);

  /** Enters that a caution was read. */
  void cautionRead(String caution);

  /** Keeps a flow with the instrument. */
  void keepFlow(
      OpeningGuide guide,
      List<Reading> readings,
      AirInputs inputs,
      Consumer<Checked<JournalEntry>> answer);

  /** Keeps a survey with the instrument. */
  void keepSurvey(List<Reading> readings, AirInputs inputs, Consumer<Checked<JournalEntry>> answer);
}
