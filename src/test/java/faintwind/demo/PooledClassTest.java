package faintwind.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.calibration.Calibration;
import faintwind.calibration.Pooled;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualCalibration;
import faintwind.calibration.virtual.VirtualClass;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.command.Shell;
import faintwind.files.calibration.CalibrationFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class of three made-up pairs from its runs tables to its calibrations, by the commands. */
@Tag("long")
class PooledClassTest {
  private static final long SEED = 83_000;
  private static final int PAIRS = 3;

  @TempDir private Path bench;
  private final Shell shell = new Shell();

  @BeforeEach
  void makeTheClass() throws IOException {
    List<VirtualBuild> pairs = VirtualClass.pairs(SEED, PAIRS);
    for (int i = 0; i < PAIRS; i++) {
      VirtualCalibration lesson =
          VirtualRehearsal.calibration(pairs.get(i), VirtualClass.lesson(i), SEED * 10 + i);
      Path runs = Files.createDirectories(bench.resolve(".lesson-" + i));
      for (String file : lesson.files().keySet()) {
        DemoTables.recording(runs.resolve(file), lesson.file(file), "2026-11-2" + i + "T09:00:00Z");
      }
      DemoTables.runs(runs.resolve("runs.csv"), lesson.runs());
      assertThat(shell.run("new", pair(i), "--name", "Pair " + (i + 1), "--who", "Ida")).isZero();
      assertThat(shell.run("note", pair(i), "--runs", runs.resolve("runs.csv"), "--who", "Ida"))
          .as(shell.said())
          .isZero();
    }
  }

  private Path pair(int i) {
    return bench.resolve("pair-" + (i + 1));
  }

  private List<Path> calibrations(int i) throws IOException {
    Path folder = pair(i).resolve("calibrations");
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static Calibration read(Path file) throws IOException {
    return CalibrationFile.read(file, "")
        .fold(
            (calibration, notes) -> calibration,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  @Test
  void eachPairGetsItsCalibrationAndSaysWithWhomItWasPooled() throws IOException {
    assertThat(shell.run("pool", bench, "--who", "Ida")).as(shell.said()).isZero();
    assertThat(shell.said())
        .contains("Learned from 3 instruments together", "share of carried air");
    for (int i = 0; i < PAIRS; i++) {
      Calibration made = read(calibrations(i).get(0));
      Pooled pooled = made.origin().pooled().orElseThrow();
      assertThat(pooled.with()).hasSize(2).allMatch(other -> other.runsSha256().length() == 64);
      assertThat(pooled.shared()).extracting(p -> p.name()).contains("tilt", "carried_share");
      assertThat(made.warnings()).anyMatch(warning -> warning.id().equals("pool.pooled"));
      assertThat(shell.run("check", pair(i))).as(shell.said()).isZero();
    }
    assertThat(shell.run("put-in-force", pair(0), "--who", "Ida")).as(shell.said()).isZero();
  }

  @Test
  void aLookKeepsNothingAndCopiesAreLeftOut() throws IOException {
    Path copy = bench.resolve("pair-9");
    try (Stream<Path> all = Files.walk(pair(0))) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, copy.resolve(pair(0).relativize(file).toString()));
      }
    }
    assertThat(shell.run("pool", bench, "--look", "--json")).as(shell.said()).isEqualTo(4);
    String said = shell.said();
    JsonNode told = new ObjectMapper().readTree(said.substring(0, said.lastIndexOf('}') + 1));
    assertThat(told.at("/shared/0/name").asText()).isEqualTo("forced");
    assertThat(told.at("/instruments/3/left_out/0").asText()).isEqualTo("pool.same-runs");
    assertThat(calibrations(0)).isEmpty();
  }

  @Test
  void theArmIsKeptAndToldToTheNext() throws IOException {
    Path arm = bench.resolve("arm.json");
    for (int i = 0; i < 2; i++) {
      assertThat(shell.run("calibrate", pair(i), "--refits", "0", "--keep-arm", arm))
          .as(shell.said())
          .isIn(0, 4);
    }
    JsonNode kept = new ObjectMapper().readTree(arm.toFile());
    assertThat(kept.path("sessions")).hasSize(2);
    double share = kept.at("/expected/carried_share/standard_uncertainty").asDouble();
    assertThat(share).isLessThan(0.02);
    assertThat(shell.run("calibrate", pair(2), "--refits", "0", "--arm-from", arm)).isIn(0, 4);
    assertThat(shell.said()).contains("The arm is known from arm.json");
    assertThat(shell.run("check", arm)).as(shell.said()).isZero();
  }
}
