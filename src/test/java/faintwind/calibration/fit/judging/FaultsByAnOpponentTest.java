package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.run.RunSet;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName(
    "Faults put into a bench by another simulation are caught, named and not blamed on others")
class FaultsByAnOpponentTest {
  private static final Path BENCH = Path.of("src/test/resources/opponent/seven-speeds");

  /** Parts of ids that blame the run they stand at. */
  private static final List<String> BLAMES =
      List.of(
          "fit.ails",
          "fit.fouled",
          "fit.gain",
          "fit.moved",
          "fit.slip-one",
          "fit.wrong-",
          "fit.runs-exchanged",
          "fit.marks-",
          "fit.wild-part",
          "fit.heater-",
          "fit.run-sign",
          "fit.same-recording",
          "fit.not-followed");

  @TempDir Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "sign_one, fit.run-sign-reversed",
    "sign_all, fit.sign-reversed",
    "heater_lost, fit.heater-lost",
    "heater_off_from, fit.heater-lost",
    "saturated, fit.saturated",
    "clock_ms, runs.clock-in-ms",
    "turns_time_minutes_one, fit.clock-differs",
    "file_used_twice, fit.same-recording",
    "air_fahrenheit, fit.air-in-fahrenheit",
    "wet, fit.ails.wet",
    "leak, fit.leak",
  })
  void faultIsCaughtAndNamed(String fault, String id) throws IOException {
    isCaughtAndNamed(fault, id);
  }

  @Tag("slow")
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "radii_cm, fit.slip-all.tenth",
    "radii_inch, fit.slip-all.inch",
    "radius_x10_one, fit.slip-one.ten",
    "turns_digits_swapped, fit.wrong-count",
    "runs_exchanged, fit.turns-exchanged",
    "fouled, fit.fouled",
    "sensor_moved, fit.moved",
    "gain_switched, fit.gain",
    "sag_no_column, fit.ails.supply",
    "draught, fit.ails.draught",
    "stopped_midway, fit.ails.speed-from",
    "stamps_shifted, fit.marks-",
  })
  void faultThatNeedsALongFitIsCaughtAndNamed(String fault, String id) throws IOException {
    isCaughtAndNamed(fault, id);
  }

  @Test
  void healthyBenchIsNotAccused() throws IOException {
    Outcome outcome = outcome("none");
    assertThat(outcome.caught()).isFalse();
    assertThat(blamed(outcome.problems())).isEmpty();
  }

  private void isCaughtAndNamed(String fault, String id) throws IOException {
    Outcome outcome = outcome(fault);
    Set<String> guilty = Set.copyOf(Files.readAllLines(BENCH.resolve(fault).resolve("guilty.txt")));
    assertThat(outcome.caught()).as(outcome.problems().toString()).isTrue();
    assertThat(outcome.problems().stream().map(Problem::id).limit(2))
        .as("cause first or second")
        .anyMatch(found -> found.startsWith(id));
    if (!guilty.contains("*")) {
      assertThat(blamed(outcome.problems())).isNotEmpty().isSubsetOf(guilty);
    }
  }

  private static Set<String> blamed(List<Problem> problems) {
    Set<String> blamed = new HashSet<>();
    for (Problem problem : problems) {
      boolean blames =
          problem.isError() || BLAMES.stream().anyMatch(part -> problem.id().startsWith(part));
      if (blames) {
        problem.where().run().ifPresent(blamed::add);
      }
    }
    return blamed;
  }

  /**
   * What the program says.
   *
   * @param caught refused, or done with code 4
   * @param problems in their order
   */
  private record Outcome(boolean caught, List<Problem> problems) {}

  private Outcome outcome(String fault) throws IOException {
    Checked<RunsTable> read = RunsTable.read(laidOver(fault));
    if (!(read instanceof Checked.Ok<RunsTable> table)) {
      return new Outcome(true, read.problems().stream().filter(Problem::isError).toList());
    }
    RunSet set = table.value().runSet();
    Checked<FitResult> fitted = PhysicalFit.of(set, () -> false);
    if (!(fitted instanceof Checked.Ok<FitResult> ok)) {
      return new Outcome(true, fitted.problems());
    }
    List<Problem> refusals = UnusableFit.of(ok.value(), set);
    List<Problem> all = new ArrayList<>(refusals);
    all.addAll(Diagnosis.warnings(ok.value(), set));
    return new Outcome(!refusals.isEmpty() || Diagnosis.runsContradict(ok.value(), set), all);
  }

  /** The healthy bench with the faulty one's files in the place of its own. */
  private Path laidOver(String fault) throws IOException {
    for (Path from : List.of(BENCH.resolve("none"), BENCH.resolve(fault))) {
      try (Stream<Path> files = Files.list(from)) {
        for (Path file : files.toList()) {
          Files.write(
              folder.resolve(Optional.ofNullable(file.getFileName()).orElseThrow().toString()),
              Files.readAllBytes(file));
        }
      }
    }
    return folder.resolve("runs.csv");
  }
}
