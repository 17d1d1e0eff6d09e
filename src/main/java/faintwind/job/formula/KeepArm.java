package faintwind.job.formula;

import faintwind.calibration.ArmShown;
import faintwind.calibration.Calibration;
import faintwind.calibration.Parameter;
import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.Uncertain;
import faintwind.files.arm.ArmFile;
import faintwind.files.arm.ArmSession;
import faintwind.files.run.ChainFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Keeps what calibrations showed of an arm in the record of that arm. */
public final class KeepArm {
  private static final double SAME = 1e-6;

  private KeepArm() {}

  /** Why nothing can be kept in a file; to be asked before a calibration is made. */
  public static List<Problem> trouble(Path file) throws IOException {
    return Files.exists(file) ? ArmFile.read(file).problems() : List.of();
  }

  /**
   * Adds what a calibration showed, in the place of what the same runs showed before.
   *
   * @return refused where the file is no record of an arm, or the calibration says nothing of one:
   *     it was rehearsed, or made without an arm
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Path> add(Path file, Calibration calibration) throws IOException {
    if (calibration.rehearsal()) {
      return Checked.refused(Problem.error("arm.rehearsal", Where.file(file.toString()), ""));
    }
    Checked<ArmKnown> shown = shown(calibration, file);
    if (!(shown instanceof Checked.Ok<ArmKnown> arm)) {
      return Checked.refused(shown.problems());
    }
    Checked<List<ArmSession>> before =
        Files.exists(file) ? ArmFile.read(file) : Checked.ok(List.of());
    if (!(before instanceof Checked.Ok<List<ArmSession>> ok)) {
      return Checked.refused(before.problems());
    }
    List<ArmSession> sessions = new ArrayList<>(ok.value());
    Map<String, String> inputs = new TreeMap<>(calibration.origin().inputSha256());
    inputs.remove(ChainFile.NAME); // the same for many
    sessions.removeIf(
        each ->
            each.inputsSha256().stream().anyMatch(inputs::containsValue)
                || isSame(each.shown(), arm.value()));
    sessions.add(
        new ArmSession(
            calibration.origin().instrumentId(),
            calibration.origin().validFrom().toString(),
            inputs.values().stream().sorted().toList(),
            arm.value()));
    ArmFile.write(file, sessions);
    return Checked.ok(file);
  }

  /**
   * Whether both are of one session: no two others come out alike in six digits. Its files may have
   * been saved again, by a program that ends lines otherwise.
   */
  private static boolean isSame(ArmKnown one, ArmKnown other) {
    return isSame(one.carriedShare(), other.carriedShare())
        && isSame(one.rise_s(), other.rise_s())
        && isSame(one.decay_s(), other.decay_s())
        && isSame(one.runUp_s(), other.runUp_s());
  }

  private static boolean isSame(Uncertain one, Uncertain other) {
    return Math.abs(one.value() - other.value()) < SAME * Math.abs(one.value());
  }

  /** What a calibration showed, as knowledge before the next; refused where that is nothing. */
  static Checked<ArmKnown> shown(Calibration calibration, Path file) {
    return calibration
        .coverage()
        .arm()
        .map(arm -> Checked.ok(known(arm)))
        .orElseGet(
            () ->
                Checked.refused(
                    Problem.error("calibrate.arm-from-none", Where.file(file.toString()), "")));
  }

  private static ArmKnown known(ArmShown arm) {
    return new ArmKnown(
        uncertain(arm.carriedShare()),
        uncertain(arm.rise_s()),
        uncertain(arm.decay_s()),
        uncertain(arm.runUp_s()),
        arm.asymmetry().map(KeepArm::uncertain));
  }

  private static Uncertain uncertain(Parameter parameter) {
    return Uncertain.of(parameter.value(), parameter.u());
  }
}
