package faintwind.ui.formula;

import faintwind.guide.InForceGate.Answer;
import faintwind.job.JobWatch;
import faintwind.job.formula.ExportFormula;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.job.formula.LeaveOut;
import faintwind.job.formula.MeasuredKnown;
import faintwind.job.formula.MeasuredWhen;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What the model of a formula asks of the world. */
public interface FormulaWays {

  /** What is known of the measurement of runs without asking; off the JavaFX thread. */
  Checked<MeasuredKnown> known(Path table) throws IOException;

  /**
   * Fits the runs of a table and keeps the calibration file; off the JavaFX thread.
   *
   * @param said what a person said of their measurement
   */
  Checked<Kept> fit(Path table, MeasuredWhen said, JobWatch watch) throws IOException;

  /**
   * Leaves something of the runs out of the fit, or takes it back, and enters it.
   *
   * @param table the runs table that counts now
   * @param told takes the table that counts from now on
   */
  void leaveOut(Path table, LeaveOut.Choice choice, Consumer<Checked<Path>> told);

  /** Reads the calibration again that was made or put in force last; empty where there is none. */
  Optional<Checked<Kept>> read() throws IOException;

  /** Whether a calibration is the one in force. */
  boolean isInForce(String file);

  /** The same with its fitted recordings; off the JavaFX thread. */
  Kept drawnAgain(Kept kept, JobWatch watch) throws IOException;

  /** Notes in the journal that a calibration was made. */
  void made(Kept kept);

  /** Whether a calibration may be put in force, and what is open in the build. */
  Answer gate(Kept kept);

  /** What is wrong with a reason why a calibration counts that does not meet the build. */
  List<Problem> whyNotExplained(String reason);

  /** Puts it in force with that reason, in the person's name. */
  void forceExplained(String file, String reason);

  /** Puts a calibration file in force. */
  void putInForce(String file);

  /** Writes the build log into the instrument's folder; off the JavaFX thread. */
  Checked<String> writeBuildLog() throws IOException;

  /** When the calibration in force is to be made again, in words; empty where none is. */
  Optional<String> due();

  /** Whether that day is past. */
  default boolean isOverdue() {
    return false;
  }

  /** Goes to the turntable. */
  void toTurntable();

  /** Goes to the field logs that the calibration in force is for. */
  void toField();

  /**
   * Writes the formula of a calibration for use without this program; off the JavaFX thread.
   *
   * @param file the calibration, relative to the folder
   */
  Checked<Path> export(String file, ExportFormula.Kind kind, Path target) throws IOException;
}
