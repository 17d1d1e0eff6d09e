package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.RunSet;
import faintwind.files.arm.ArmFile;
import faintwind.files.arm.ArmSession;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.run.ChainFile;
import faintwind.job.EnteredFile;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What earlier calibration files say of the arm, as knowledge before the next calibration on it.
 *
 * @param known the arm, where there are earlier files
 * @param notes which files it was taken from
 */
record EarlierArm(Optional<ArmKnown> known, List<Problem> notes) {
  /** Two radii on one hole of an arm agree to a hundredth. */
  private static final double SAME_RADIUS = 0.01;

  EarlierArm {
    notes = List.copyOf(notes);
  }

  /**
   * The arm of these calibrations or records of arms, all of one.
   *
   * @param inputs SHA-256 of this table's files: what they showed before is not told to them
   * @return refused where a file is none, or says nothing of an arm
   * @throws IOException where a file cannot be read
   */
  static Checked<EarlierArm> of(List<Path> files, Map<String, String> inputs) throws IOException {
    List<ArmKnown> sessions = new ArrayList<>();
    for (Path file : files) {
      Checked<List<ArmKnown>> read = ArmFile.is(file) ? recorded(file, inputs) : shown(file);
      if (!(read instanceof Checked.Ok<List<ArmKnown>> ok)) {
        return Checked.refused(read.problems());
      }
      sessions.addAll(ok.value());
    }
    Optional<ArmKnown> known = ArmKnown.ofSessions(sessions);
    return Checked.ok(
        new EarlierArm(known, known.map(arm -> List.of(note(files, arm))).orElse(List.of())));
  }

  private static Checked<List<ArmKnown>> recorded(Path file, Map<String, String> inputs)
      throws IOException {
    return ArmFile.read(file)
        .map(
            sessions ->
                sessions.stream()
                    .filter(
                        session -> session.inputsSha256().stream().noneMatch(inputs::containsValue))
                    .map(ArmSession::shown)
                    .toList());
  }

  private static Checked<List<ArmKnown>> shown(Path file) throws IOException {
    return OpenCalibration.read(file).then(read -> KeepArm.shown(read, file)).map(List::of);
  }

  /**
   * The calibrations on record around a table that were made on the same arm: from other
   * recordings, with every radius of this table among theirs.
   *
   * @param inputs SHA-256 of this table's files
   */
  static List<Path> onRecord(Path table, RunSet set, Map<String, String> inputs)
      throws IOException {
    Optional<Path> folder = EnteredFile.folderAround(table);
    if (folder.isEmpty()) {
      return List.of();
    }
    InstrumentState state = new InstrumentFolder(folder.get()).open().state();
    List<Path> tables = FormulaRuns.tables(state, folder.get());
    List<Path> same = new ArrayList<>();
    for (var made : state.standing(CalibrationMade.class)) {
      Path file = folder.get().resolve(made.event().file());
      if (Files.exists(file)
          && OpenCalibration.read(file) instanceof Checked.Ok<Calibration> earlier
          && earlier.value().coverage().arm().isPresent()
          && apart(earlier.value(), inputs)
          && onSameArm(earlier.value(), tables, set)) {
        same.add(file);
      }
    }
    return same;
  }

  /** Whether no recording is in both: the same evidence must not count twice. */
  private static boolean apart(Calibration earlier, Map<String, String> inputs) {
    return earlier.origin().inputSha256().entrySet().stream()
        .filter(input -> !input.getKey().equals(ChainFile.NAME))
        .noneMatch(input -> inputs.containsValue(input.getValue()));
  }

  private static boolean onSameArm(Calibration earlier, List<Path> tables, RunSet set)
      throws IOException {
    Checked<RunSet> runs = FormulaRuns.of(earlier, tables);
    if (!(runs instanceof Checked.Ok<RunSet> ok)) {
      return false;
    }
    double[] known = radii_m(ok.value());
    return Arrays.stream(radii_m(set))
        .allMatch(r -> Arrays.stream(known).anyMatch(k -> Math.abs(r / k - 1) < SAME_RADIUS));
  }

  private static double[] radii_m(RunSet set) {
    return set.runs().stream()
        .flatMap(run -> run.arm().stream())
        .mapToDouble(arm -> arm.radius_m().value())
        .toArray();
  }

  private static Problem note(List<Path> files, ArmKnown arm) {
    String names =
        String.join(", ", files.stream().map(f -> String.valueOf(f.getFileName())).toList());
    return Problem.warning(
        "calibrate.arm-from",
        Where.NOWHERE,
        names,
        Numerals.digits(100 * arm.carriedShare().value(), 2),
        Numerals.digits(100 * arm.carriedShare().u().orElse(0), 2));
  }
}
