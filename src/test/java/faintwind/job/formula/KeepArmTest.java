package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.ArmShown;
import faintwind.calibration.Calibration;
import faintwind.calibration.Coverage;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.speed.ModelInstrument;
import faintwind.files.arm.ArmFile;
import faintwind.files.arm.ArmSession;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepArmTest {
  @TempDir private Path folder;

  private static Calibration of(String sha256, double share) {
    Calibration made = new ModelInstrument(0.01).calibration();
    ArmShown arm =
        new ArmShown(
            new Parameter("carried_share", share, 0.005, "1"),
            new Parameter("carried_rise", 20, 5, "s"),
            new Parameter("carried_decay", 25, 5, "s"),
            new Parameter("run_up", 2, 0.3, "s"),
            new Parameter("draught", 0.01, 0.003, "m/s"),
            Optional.empty());
    return new Calibration(
        new Origin(
            "made up",
            OffsetDateTime.parse("2026-01-01T00:00:00Z"),
            "test",
            Map.of("runs.csv", sha256)),
        made.signal(),
        made.formula(),
        new Coverage(0.1, 3, 5, 32, true, Optional.of(arm)),
        made.evidence(),
        made.performance(),
        List.of());
  }

  private int kept(Calibration... sessions) throws IOException {
    Path file = folder.resolve("arm.json");
    for (Calibration session : sessions) {
      assertThat(KeepArm.add(file, session).isOk()).isTrue();
    }
    List<ArmSession> read =
        ArmFile.read(file)
            .fold(
                (found, notes) -> found,
                problems -> {
                  throw new AssertionError(problems.toString());
                });
    return read.size();
  }

  @Test
  void anotherSessionIsAdded() throws IOException {
    assertThat(kept(of("a".repeat(64), 0.03), of("b".repeat(64), 0.0301))).isEqualTo(2);
  }

  @Test
  void aRehearsalSaysNothingOfAnArm() throws IOException {
    Calibration made = of("a".repeat(64), 0.03);
    Calibration rehearsed =
        new Calibration(
            made.origin(),
            made.signal(),
            made.formula(),
            made.coverage(),
            made.evidence(),
            made.performance(),
            List.of(Problem.warning(Calibration.REHEARSAL, Where.NOWHERE, "")));
    Path file = folder.resolve("arm.json");
    assertThat(KeepArm.add(file, rehearsed).problems())
        .singleElement()
        .matches(problem -> problem.id().equals("arm.rehearsal"));
    assertThat(file).doesNotExist();
  }

  @Test
  void theSameFilesCountOnce() throws IOException {
    assertThat(kept(of("a".repeat(64), 0.03), of("a".repeat(64), 0.031))).isEqualTo(1);
  }

  /** Line ends changed by another program: other hashes, the same session. */
  @Test
  void filesThatWereSavedAgainCountOnce() throws IOException {
    assertThat(kept(of("a".repeat(64), 0.03), of("b".repeat(64), 0.03))).isEqualTo(1);
  }
}
