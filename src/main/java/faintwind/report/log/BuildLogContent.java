package faintwind.report.log;

import faintwind.calibration.Calibration;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.message.Checked;
import faintwind.physics.design.Use;
import faintwind.record.Event.LogConverted;
import faintwind.report.figure.LogShape;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a build log is made from.
 *
 * @param checklist that guided the build
 * @param situation journal, designs and the time of printing
 * @param formula the calibration in force
 * @param pictures photos and field logs
 * @param notes problems of the folder, in words
 * @param software version of this program
 * @param use what it is for, as the design says
 */
public record BuildLogContent(
    Checklist checklist,
    Situation situation,
    Optional<Formula> formula,
    Pictures pictures,
    List<String> notes,
    String software,
    Optional<Use> use) {

  public BuildLogContent {
    notes = List.copyOf(notes);
  }

  /**
   * A calibration with what it was drawn from.
   *
   * @param file its name in the instrument's folder
   * @param calibration the calibration
   * @param look what it was drawn from; refused where its recordings are not at hand
   */
  public record Formula(String file, Calibration calibration, Checked<FitLook> look) {}

  /**
   * What is shown of the folder's files.
   *
   * @param photos picture data of the photos on record, by file name, as data addresses
   * @param logs field logs that were kept, by time
   */
  public record Pictures(Map<String, String> photos, List<FieldLog> logs) {
    public static final Pictures NONE = new Pictures(Map.of(), List.of());

    public Pictures {
      photos = Map.copyOf(photos);
      logs = List.copyOf(logs);
    }
  }

  /**
   * A field log that was kept.
   *
   * @param name relative to the instrument's folder
   * @param sha256 of the log
   * @param from when it begins
   * @param to when it ends
   * @param converted what was made of it; empty where it was not converted
   * @param shape of its speeds
   */
  public record FieldLog(
      String name,
      String sha256,
      OffsetDateTime from,
      OffsetDateTime to,
      Optional<LogConverted> converted,
      Optional<LogShape> shape) {}

  Map<String, String> photos() {
    return pictures.photos();
  }

  /** The instrument's name. */
  public String name() {
    return situation.state().name().orElse("");
  }
}
