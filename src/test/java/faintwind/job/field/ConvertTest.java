package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.calibration.speed.TestCalibration;
import faintwind.job.JobWatch;
import faintwind.job.record.CheckPath;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConvertTest {
  private final Calibration calibration = TestCalibration.ofModel();
  private final Convert convert =
      new Convert(calibration, "cellar.json", SpeedSettings.usual(calibration));

  @TempDir Path folder;

  @Test
  void columnsPassThroughAndEveryRowKeepsItsPlace() throws IOException {
    Path log = log("log.csv", "time_s,place,delta_K\n0,\"rack, left\",20\n1,b,20\n2,c,x\n2,d,20\n");
    Path out = folder.resolve("speeds.csv");
    ConversionSummary summary =
        convert.file(log, out, JobWatch.NOBODY).fold((value, notes) -> value, p -> null);
    List<String> lines = Files.readAllLines(out);
    assertThat(lines).hasSize(5);
    assertThat(lines.get(0)).isEqualTo("time_s,place,delta_K,speed_m_s,u95_m_s,flag");
    assertThat(lines.get(1)).startsWith("0,\"rack, left\",20,");
    assertThat(lines.get(3)).isEqualTo("2,c,x,,,bad");
    assertThat(summary.rows()).isEqualTo(4);
    assertThat(summary.flagged()).containsEntry(SpeedFlag.BAD, 1L);
  }

  @Test
  void startOfTheClockPassesThroughAndTheOutputIsARunFile() throws IOException {
    Path log =
        log(
            "log.csv",
            "# made up\n# start: 2026-09-19T08:10:00+02:00\ntime_s,delta_K\n0,20\n1,20\n");
    Path out = folder.resolve("speeds.csv");
    assertThat(convert.file(log, out, JobWatch.NOBODY).isOk()).isTrue();
    List<String> lines = Files.readAllLines(out);
    assertThat(lines).hasSize(4);
    assertThat(lines.get(0)).isEqualTo("# start: 2026-09-19T08:10:00+02:00");
    assertThat(CheckPath.run(out, Locale.ENGLISH).problems()).isEmpty();
  }

  @Test
  void summaryNamesCalibrationAndAveragingTime() throws IOException {
    Path log = log("log.csv", rows(0, 50));
    ConversionSummary summary =
        convert
            .file(log, folder.resolve("o.csv"), JobWatch.NOBODY)
            .fold((value, notes) -> value, p -> null);
    assertThat(summary.lines(Messages.of(Locale.ENGLISH)))
        .anyMatch(line -> line.contains("cellar.json"))
        .anyMatch(line -> line.contains("chosen for the noise of this instrument"));
    Convert asked = new Convert(calibration, "cellar.json", new SpeedSettings(30, LogAir.UNKNOWN));
    ConversionSummary chosen =
        asked
            .file(log, folder.resolve("p.csv"), JobWatch.NOBODY)
            .fold((value, notes) -> value, p -> null);
    assertThat(chosen.lines(Messages.of(Locale.ENGLISH)))
        .contains("Averaging time of the speed: 30 s.");
  }

  @Test
  void minutesStandInAFileOfTheirOwn() throws IOException {
    Path log = log("log.csv", "# start: 2026-09-19T08:10:00+02:00\n" + rows(30, 150));
    Path minutes = folder.resolve("minutes.csv");
    Path out = folder.resolve("o.csv");
    assertThat(convert.withMinutes(minutes).file(log, out, JobWatch.NOBODY).isOk()).isTrue();
    List<String> lines = Files.readAllLines(minutes);
    assertThat(lines.get(0)).isEqualTo("# start: 2026-09-19T08:10:00+02:00");
    assertThat(lines.get(1)).startsWith("# ").contains("60 s");
    assertThat(lines.get(2)).isEqualTo("time_s,rows,speed_m_s,u95_m_s,flag");
    assertThat(lines.subList(3, lines.size()))
        .extracting(line -> line.replaceFirst("^(\\d+,\\d+),.*", "$1"))
        .containsExactly("0,30", "60,60", "120,30");
    assertThat(Files.readAllLines(out).get(1)).isEqualTo("time_s,delta_K,speed_m_s,u95_m_s,flag");
  }

  @Test
  void refusedLogLeavesNoMinutes() throws IOException {
    Path log = log("log.csv", "time_s,delta_K\n0,x\n1,x\n");
    Path minutes = folder.resolve("minutes.csv");
    assertThat(
            convert.withMinutes(minutes).file(log, folder.resolve("o.csv"), JobWatch.NOBODY).isOk())
        .isFalse();
    assertThat(minutes).doesNotExist();
  }

  @Test
  void minutesOfManyLogsGoIntoAFolder() throws IOException {
    Path log = log("log.csv", rows(0, 70));
    Path to = folder.resolve("out");
    convert.withMinutes(folder.resolve("minutes")).files(List.of(log), to, JobWatch.NOBODY);
    assertThat(folder.resolve("minutes/log.csv")).exists();
    assertThat(to.resolve("log.csv")).exists();
  }

  @Test
  void streamHandsOnEachRowBeforeTheNext() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayInputStream in = new ByteArrayInputStream(bytes(rows(0, 40)));
    convert.stream(in, out, "stream", JobWatch.NOBODY);
    assertThat(out.toString(StandardCharsets.UTF_8).lines()).hasSize(41);
  }

  @Test
  void logInAnotherUnitIsRefusedAndNothingWritten() throws IOException {
    Path log = log("log.csv", "time_s,signal_mV\n0,1\n1,1\n");
    Path out = folder.resolve("speeds.csv");
    List<Problem> problems = convert.file(log, out, JobWatch.NOBODY).problems();
    assertThat(problems).extracting(Problem::id).containsExactly("convert.unit-differs");
    assertThat(folder).isDirectoryNotContaining("glob:**speeds*");
  }

  @Test
  void convertedLogIsNotConvertedAgain() throws IOException {
    Path log = log("log.csv", "time_s,delta_K,flag\n0,20,\n");
    List<Problem> problems = convert.file(log, folder.resolve("o.csv"), JobWatch.NOBODY).problems();
    assertThat(problems).extracting(Problem::id).containsExactly("convert.columns-there");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "nothing\n",
        "time_s,delta_K\n",
        "time_s,delta_K\n0;20\n1;20\n",
        "time_s,delta_K\n0,x\n1,y\n",
        "time_s,delta_K\na,20\nb,20\n",
        "time_s,signal_mV\n0,1\n1,1\n",
        "time_s,delta_K,flag\n0,20,\n",
        "time_s,signal_mV,flag\n0,20,\n",
        "time_s\n0\n",
        "delta_K\n20\n",
        "time_s,delta_K,delta_K\n0,20,20\n"
      })
  void whatIsRefusedForSavingIsRefusedForLooking(String text) throws IOException {
    Path log = log("log.csv", text);
    Checked<?> saved = convert.file(log, folder.resolve("o.csv"), JobWatch.NOBODY);
    Checked<?> looked = convert.look(log, JobWatch.NOBODY);
    assertThat(saved.isOk()).isFalse();
    assertThat(looked.problems()).isNotEmpty().isEqualTo(saved.problems());
  }

  @Test
  void missingLogAndFolderAreRefusedAlike() throws IOException {
    for (Path log : List.of(folder.resolve("none.csv"), folder)) {
      Checked<?> saved = convert.file(log, folder.resolve("o.csv"), JobWatch.NOBODY);
      assertThat(convert.look(log, JobWatch.NOBODY).problems())
          .isNotEmpty()
          .isEqualTo(saved.problems());
    }
  }

  @Test
  void whatIsSavedIsWhatWasLookedAt() throws IOException {
    Path log = log("log.csv", rows(0, 50));
    Path out = folder.resolve("o.csv");
    Checked<ConversionSummary> saved = convert.file(log, out, JobWatch.NOBODY);
    Checked<LookedAtLog> looked = convert.look(log, JobWatch.NOBODY);
    assertThat(looked.map(LookedAtLog::summary)).isEqualTo(saved);
    FieldRows rows = looked.fold((value, notes) -> value.rows(), problems -> null);
    List<String> lines = Files.readAllLines(out);
    assertThat(rows.size()).isEqualTo(lines.size() - 1);
    for (int i = 0; i < rows.size(); i++) {
      double speed_m_s = Double.parseDouble(lines.get(i + 1).split(",", -1)[2]);
      assertThat(rows.speed_m_s(i)).isCloseTo(speed_m_s, Offset.offset(1e-4));
    }
  }

  @Test
  void logWithoutOneReadableRowIsRefused() throws IOException {
    Path log = log("log.csv", "time_s,delta_K\n0;20\n1;20\n");
    List<Problem> problems = convert.file(log, folder.resolve("o.csv"), JobWatch.NOBODY).problems();
    assertThat(problems).extracting(Problem::id).containsExactly("convert.no-row-readable");
    assertThat(folder.resolve("o.csv")).doesNotExist();
  }

  @Test
  void oneBadLogOfManyDoesNotKeepTheOthers() throws IOException {
    Path good = log("good.csv", rows(0, 30));
    Path bad = log("bad.csv", "nothing\n");
    Path out = Files.createDirectory(folder.resolve("out"));
    List<Convert.LogOutcome> outcomes = convert.files(List.of(bad, good), out, JobWatch.NOBODY);
    assertThat(outcomes.get(0).outcome().isOk()).isFalse();
    assertThat(outcomes.get(1).outcome().isOk()).isTrue();
    assertThat(out.resolve("good.csv")).exists();
    assertThat(out.resolve("bad.csv")).doesNotExist();
  }

  private Path log(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static String rows(int from, int to) {
    StringBuilder text = new StringBuilder("time_s,delta_K\n");
    for (int i = from; i < to; i++) {
      text.append(i).append(",20.").append(i % 3).append('\n');
    }
    return text.toString();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
