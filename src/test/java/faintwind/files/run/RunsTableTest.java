package faintwind.files.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.SignalChain;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunsTableTest {
  private static final Path SAMPLES = Path.of("src/test/resources/sample-runs");
  private static final String HEAD =
      "run,file,kind,radius_mm,turns,turns_time_s,spin_start_s,spin_stop_s,speed_m_s,air_C\n";

  @TempDir Path folder;

  @BeforeEach
  void writeOneRunFile() throws IOException {
    StringBuilder rows = new StringBuilder("time_s,delta_K\n");
    for (int i = 0; i <= 100; i++) {
      rows.append(i).append(",30\n");
    }
    Files.writeString(folder.resolve("a.csv"), rows);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "b", "c", "d", "e", "f", "g"})
  void sampleTableIsReadWithoutAWord(String letter) throws IOException {
    Checked<RunsTable> read = RunsTable.read(SAMPLES.resolve("bench-" + letter + "/in/runs.csv"));
    assertThat(read.problems()).isEmpty();
    assertThat(read.isOk()).isTrue();
  }

  @Test
  void spinRunOfASampleCarriesWhatTheTableSays() throws IOException {
    RunSet runs = ok(RunsTable.read(SAMPLES.resolve("bench-b/in/runs.csv"))).runSet();
    Run spin = runs.runs().get(2);
    assertThat(spin.kind()).isEqualTo(RunKind.SPIN);
    assertThat(spin.arm().orElseThrow().radius_m().value()).isEqualTo(0.9);
    assertThat(spin.arm().orElseThrow().speed_m_s()).isCloseTo(2.9679, within(1e-4));
    assertThat(spin.conditions().direction()).contains(Direction.CW);
    assertThat(spin.conditions().thermocouple()).contains("K");
    assertThat(spin.conditions().pressure_Pa().orElseThrow()).isCloseTo(99_910, within(1e-6));
    assertThat(runs.chain()).isEqualTo(SignalChain.AS_IS);
  }

  @Test
  void firstClickOutsideTheSpinIsRefused() throws IOException {
    Path table = folder.resolve("clicks.csv");
    for (String click : List.of("5", "61", "20", "")) {
      Files.writeString(
          table,
          "run,file,kind,radius_mm,turns,turns_time_s,first_click_s,spin_start_s,spin_stop_s\n"
              + "still,a.csv,still,,,,,,\none,a.csv,spin,300,10,30,"
              + click
              + ",20,60\n");
      boolean outside = click.equals("5") || click.equals("61");
      assertThat(RunsTable.read(table).problems())
          .filteredOn(p -> p.id().equals("runs.click-outside"))
          .hasSize(outside ? 1 : 0);
    }
  }

  /** A table from elsewhere could name any file of this computer, and have it read out. */
  @Test
  void fileOutsideTheFolderIsReadOnlyWhereAllowedAndNeverPrinted() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "root:x:0:0\n");
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Path table = inner.resolve("runs.csv");
    for (String name : List.of("../secret.txt", secret.toAbsolutePath().toString())) {
      Files.writeString(table, "run,file,kind\na," + name + ",still\n");
      assertThat(RunsTable.read(table).problems())
          .extracting(Problem::id)
          .contains("runs.file-elsewhere");
      Checked<RunsTable> allowed = RunsTable.readAnywhere(table, Optional.empty());
      assertThat(allowed.problems()).extracting(Problem::id).contains("runs.file-outside-unread");
      assertThat(allowed.problems().toString()).doesNotContain("root");
    }
    Files.writeString(table, "run,file,kind\na,../a.csv,still\nb,../a.csv,still\n");
    assertThat(RunsTable.readAnywhere(table, Optional.empty()).problems())
        .extracting(Problem::id)
        .doesNotContain("runs.file-outside-unread", "runs.file-elsewhere");
  }

  @Test
  void rowsOfAStaircaseAreWindowsOfOneFile() throws IOException {
    RunsTable table = ok(RunsTable.read(SAMPLES.resolve("bench-f/in/runs.csv")));
    Run third = table.runSet().runs().get(3);
    assertThat(third.recording().signal().first_s()).isGreaterThanOrEqualTo(3740.5);
    assertThat(third.recording().signal().last_s()).isLessThanOrEqualTo(4556.1);
    assertThat(table.files().keySet()).containsExactly("runs.csv", "zero.csv", "session.csv");
  }

  @Test
  void allProblemsOfTheTableAreToldAtOnce() throws IOException {
    assertThat(
            ids(
                "s,a.csv,still,,,,,,,20",
                "s,a.csv,spin,0,10,50,10,60,,20",
                ",a.csv,spin,300,10,,10,60,,20",
                "t,b.csv,gust,300,,50,10,60,,20",
                "u,a.csv,spin,300,\"10,5\",50,60,10,,200",
                "v,a.csv,spin,300,10,50,10,160,,20",
                "w,a.csv,reference,,,,,,,20"))
        .containsExactlyInAnyOrder(
            "runs.radius-not-positive 3 radius_mm",
            "runs.turns-without-time 4 turns_time_s",
            "runs.kind-unknown 5 kind",
            "runs.file-missing 5 file",
            "runs.air-out-of-range 6 air_C",
            "cell.decimal-comma 6 turns",
            "runs.spin-stops-before-start 6 spin_stop_s",
            "runs.spin-outside 7 spin_stop_s",
            "runs.speed-missing 8 speed_m_s",
            "runs.name-doubled 3 run",
            "runs.name-empty 4 run");
  }

  @Test
  void oneRunAloneIsRefused() throws IOException {
    assertThat(ids("s,a.csv,still,,,,,,,20")).containsExactly("runs.only-one 0 ");
  }

  @Test
  void chainBesideTheTableIsRead() throws IOException {
    Files.writeString(
        folder.resolve("chain.json"),
        "{\"input\":\"voltage\",\"type\":\"K\",\"gain\":100.5,\"offset\":0.1,\"sign\":-1,"
            + "\"range\":2500,\"bits\":12,\"noise\":0.3}");
    SignalChain chain =
        ok(table("s,a.csv,still,,,,,,,", "t,a.csv,reference,,,,,,1,")).runSet().chain();
    assertThat(chain.sign()).isEqualTo(-1);
    assertThat(chain.thermocouple()).contains("K");
    assertThat(chain.gain()).hasValue(100.5);
    assertThat(chain.resolution().bits()).hasValue(12);
  }

  @Test
  void wrongChainIsToldBesideTheProblemsOfTheTable() throws IOException {
    Files.writeString(
        folder.resolve("chain.json"), "{\"input\":\"amps\",\"sign\":2,\"gain\":\"x\"}");
    assertThat(ids("s,a.csv,still,,,,,,,1e999"))
        .containsExactlyInAnyOrder(
            "chain.input-unknown 0 input",
            "chain.sign 0 sign",
            "chain.not-a-number 0 gain",
            "cell.not-finite 2 air_C");
  }

  @Test
  void runFilesInDifferentUnitsAreRefused() throws IOException {
    Files.writeString(folder.resolve("b.csv"), "time_s,signal_mV\n0,1\n1,1\n2,1\n3,1\n4,1\n");
    assertThat(ids("s,a.csv,still,,,,,,,", "t,b.csv,reference,,,,,,1,"))
        .containsExactly("runs.units-differ 0 ");
  }

  @Test
  void noteMaySpanLinesAndHoldCommas() throws IOException {
    Files.writeString(
        folder.resolve("runs.csv"),
        "run,file,kind,speed_m_s,note\ns,a.csv,still,,\"door open,\nthen shut\"\nt,a.csv,reference,1,\n,,,,\n");
    List<Run> runs = ok(RunsTable.read(folder.resolve("runs.csv"))).runSet().runs();
    assertThat(runs).hasSize(2);
    assertThat(runs.get(0).conditions().note()).isEqualTo("door open,\nthen shut");
  }

  private List<String> ids(String... rows) throws IOException {
    return table(rows).problems().stream()
        .filter(Problem::isError)
        .map(p -> p.id() + " " + p.where().line().orElse(0) + " " + p.where().column().orElse(""))
        .toList();
  }

  private Checked<RunsTable> table(String... rows) throws IOException {
    Path table = folder.resolve("runs.csv");
    Files.writeString(table, HEAD + String.join("\n", rows) + "\n");
    return RunsTable.read(table);
  }

  private static RunsTable ok(Checked<RunsTable> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  @Test
  void whatTheChainCannotHandOnIsLeftOutAndTold() throws IOException {
    String rows = Files.readString(folder.resolve("a.csv")).replace("delta_K", "signal_uV");
    Files.writeString(folder.resolve("a.csv"), rows.replace("\n50,30\n", "\n50,32767\n"));
    Files.writeString(folder.resolve("b.csv"), rows);
    String table = HEAD + "s,a.csv,still,,,,,,,20\nt,b.csv,reference,,,,,,0.5,20\n";
    Files.writeString(folder.resolve("runs.csv"), table);
    Files.writeString(folder.resolve("chain.json"), "{\"range\": 20000, \"bits\": 16}");
    Checked<RunsTable> read = RunsTable.read(folder.resolve("runs.csv"));
    assertThat(read.problems()).extracting(Problem::id).containsExactly("file.beyond-chain");
    assertThat(ok(read).runSet().runs().get(0).recording().signal().values())
        .hasSize(100)
        .containsOnly(30);
    Files.writeString(folder.resolve("chain.json"), "{\"range\": 2}");
    assertThat(RunsTable.read(folder.resolve("runs.csv")).isOk()).isFalse();
  }
}
