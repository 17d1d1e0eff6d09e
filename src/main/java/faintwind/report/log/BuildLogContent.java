package faintwind.report.log;

import faintwind.calibration.Calibration;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.message.Checked;
import faintwind.physics.design.Use;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a build log is made from.
 *
 * @param checklist that guided the build
 * @param situation journal, designs and the time of printing
 * @param formula the calibration in force
 * @param photos picture data of the photos on record, by file name, as data addresses
 * @param notes problems of the folder, in words
 * @param software version of this program
 * @param use what it is for, as the design says
 */
public record BuildLogContent(
    Checklist checklist,
    Situation situation,
    Optional<Formula> formula,
    Map<String, String> photos,
    List<String> notes,
    String software,
    Optional<Use> use) {

  public BuildLogContent {
    photos = Map.copyOf(photos);
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

  /** The instrument's name. */
  public String name() {
    return situation.state().name().orElse("");
  }
}
