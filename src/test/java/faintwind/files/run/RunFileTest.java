package faintwind.files.run;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.Recording;
import faintwind.calibration.run.SignalChain.Input;
import faintwind.calibration.run.SignalUnit;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunFileTest {
  private static final Path SAMPLES = Path.of("src/test/resources/sample-runs");

  @Test
  void sampleRunIsReadWhole() throws IOException {
    Recording run = ok(RunFile.read(SAMPLES.resolve("bench-b/in/still.csv"), "x", Input.VOLTAGE));
    assertThat(run.unit()).isEqualTo(SignalUnit.DELTA_K);
    assertThat(run.signal().size()).isEqualTo(2996);
    assertThat(run.air_K().orElseThrow().value(0)).isBetween(290.0, 310.0);
    assertThat(run.supply_V()).isPresent();
    assertThat(run.pressure_Pa()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"'\n'", "'\r\n'"})
  void byteOrderMarkCommentsAndBothLineEndsAreRead(String lineEnd) throws IOException {
    String text =
        String.join(
            lineEnd,
            "\uFEFF# bench at the window",
            "# start: 2026-11-25T14:30:00+01:00",
            "time_s, signal_mV ,air_C,pressure_hPa,rh_pct,lamp",
            "0,-1.5e0,20,1013.25,50,on",
            "",
            "2.5,\"+2\",21,1013.25,50,\"off, then on\"");
    Recording run = ok(read(text));
    assertThat(run.start()).contains(OffsetDateTime.parse("2026-11-25T14:30:00+01:00"));
    assertThat(run.signal().times_s()).containsExactly(0, 2.5);
    assertThat(run.signal().values()).containsExactly(-1.5, 2);
    assertThat(run.air_K().orElseThrow().values()).containsExactly(293.15, 294.15);
    assertThat(run.pressure_Pa().orElseThrow().value(0)).isEqualTo(101_325);
    assertThat(run.relativeHumidity().orElseThrow().value(0)).isEqualTo(0.5);
  }

  @Test
  void allProblemsOfAFileAreListedWithTheirPlaces() throws IOException {
    List<Problem> problems =
        read("time_s,delta_K,air_C\n0,1,20\n0,1,20\n2,warm,20\n3,NaN,20\n4,5\n5,\"1,5\",x\n")
            .problems();
    assertThat(problems)
        .extracting(p -> p.id() + " " + p.where().line().orElse(0))
        .containsExactly(
            "file.time-not-increasing 3",
            "cell.not-a-number 4",
            "cell.not-finite 5",
            "file.cells-count 6",
            "cell.decimal-comma 7",
            "cell.not-a-number 7");
  }

  @Test
  void manyProblemsOfOneKindAreCountedNotListed() throws IOException {
    List<Problem> problems = read("time_s,delta_K\n" + "0,1\n".repeat(1001)).problems();
    assertThat(problems).hasSize(11);
    assertThat(problems.get(10).id()).isEqualTo("file.and-more");
    assertThat(problems.get(10).found()).isEqualTo("990");
  }

  @Test
  void rowWithoutSignalIsPassedOverWithANote() throws IOException {
    Checked<Recording> run = read("time_s,delta_K\n0,1\n1,\n2,3\n");
    assertThat(ok(run).signal().size()).isEqualTo(2);
    assertThat(run.problems()).extracting(Problem::id).containsExactly("file.signal-empty");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"1d", "0x1p3", "1f", "1_000", "1 2", "--1", "1e", "."})
  void whatIsNotADecimalNumberIsRefused(String cell) throws IOException {
    assertThat(read("time_s,delta_K\n0," + cell + "\n1,1\n").problems())
        .extracting(Problem::id)
        .containsExactly("cell.not-a-number");
  }

  @Test
  void terminalTemperatureOfACompensatedMeterIsTakenOff() throws IOException {
    String text = "time_s,delta_K,air_C,terminal_C\n0,51,19,21\n";
    Recording run = ok(RunFile.read(bytes(text), "x", Input.COMPENSATED_C));
    assertThat(run.signal().value(0)).isEqualTo(30);
  }

  @Test
  void terminalsAreTakenToBeAsWarmAsTheAirWhereNothingElseIsKnown() throws IOException {
    Checked<Recording> run =
        RunFile.read(bytes("time_s,delta_K,air_C\n0,51,19\n"), "x", Input.COMPENSATED_C);
    assertThat(ok(run).signal().value(0)).isEqualTo(32);
    assertThat(run.problems()).extracting(Problem::id).containsExactly("file.terminal-from-air");
  }

  @Test
  void compensatedMeterWithoutTerminalTemperatureIsRefused() throws IOException {
    assertThat(RunFile.read(bytes("time_s,delta_K\n0,51\n"), "x", Input.COMPENSATED_C).problems())
        .extracting(Problem::id)
        .containsExactly("file.terminal-missing");
  }

  @Test
  void endlessLineIsRefusedInBoundedMemory() throws IOException {
    String text = "time_s,delta_K\n0," + "1".repeat(5_000_000) + "\n1,1\n2,x\n";
    assertThat(read(text).problems())
        .extracting(p -> p.id() + " " + p.where().line().orElse(0))
        .containsExactly("file.line-too-long 2", "cell.not-a-number 4");
  }

  @Test
  void hugeFileIsRefusedBeforeItIsRead(@TempDir Path folder) throws IOException {
    Path huge = folder.resolve("huge.csv");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(RunFile.LARGEST_BYTES + 1); // takes no room on the disk
    }
    assertThat(RunFile.read(huge, "huge.csv", Input.VOLTAGE).problems())
        .extracting(Problem::id)
        .containsExactly("file.too-large");
  }

  private static Checked<Recording> read(String text) throws IOException {
    return RunFile.read(bytes(text), "run.csv", Input.VOLTAGE);
  }

  private static ByteArrayInputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Recording ok(Checked<Recording> run) {
    return run.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  @Test
  void whatNoInstrumentMeasuresIsLeftOutWithANote() throws IOException {
    Checked<Recording> read = read("time_s,delta_K,supply_V\n0,20,5\n1,805,5\n2,21,140\n");
    Recording run = ok(read);
    assertThat(run.signal().values()).containsExactly(20, 21);
    assertThat(run.supply_V().orElseThrow().values()).containsExactly(5, 5);
    assertThat(read.problems())
        .extracting(Problem::id)
        .containsExactly("file.impossible", "file.impossible");
  }
}
