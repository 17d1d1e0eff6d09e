package faintwind.files.run;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Uncertain;
import faintwind.files.ProblemList;
import java.util.Optional;

/** What a row says first of all; the rest is read accordingly. */
record RunDraft(RunKind kind, String file, String name) {

  /** The run, where all that its kind needs is there; else the problems are told. */
  Optional<Run> run(RunRow row, Optional<Recording> recording, ProblemList problems) {
    RunConditions conditions = row.conditions();
    Optional<ArmTurning> arm = kind == RunKind.SPIN ? row.arm() : Optional.empty();
    Optional<Uncertain> reference = kind == RunKind.REFERENCE ? row.reference() : Optional.empty();
    boolean whole =
        (kind != RunKind.SPIN || arm.isPresent())
            && (kind != RunKind.REFERENCE || reference.isPresent());
    if (arm.isPresent() && recording.isPresent()) {
      RunsTableRules.spin(arm.get(), recording.get(), row, problems);
    }
    return whole
        ? recording.map(part -> new Run(name, kind, file, part, conditions, arm, reference))
        : Optional.empty();
  }
}
