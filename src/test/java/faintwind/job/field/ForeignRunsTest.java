package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.job.formula.DraftProfile;
import faintwind.job.turntable.ReadRuns;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForeignRunsTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @BeforeEach
  void writeWhatAForeignLoggerWrote() throws IOException {
    StringBuilder log = new StringBuilder("Zeit [s];Spannung [mV]\n");
    for (int i = 0; i < 900; i++) {
      log.append(String.format(Locale.ROOT, "%d;%.3f%n", i, 2 - i / 1000.0).replace('.', ','));
    }
    Files.writeString(folder.resolve("log.csv"), log);
    Files.writeString(
        folder.resolve("runs.csv"),
        """
        run,file,kind,from_s,to_s,radius_mm,turns,turns_time_s,spin_start_s,spin_stop_s
        warm,log.csv,still,0,300,,,,,
        spin,log.csv,spin,300,890,500,40,400,310,800
        """);
  }

  private static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  @Test
  void tableOfForeignRecordingsIsReadOnceItsLinesHaveAMeaning() throws IOException {
    Path table = folder.resolve("runs.csv");
    assertThat(ReadRuns.read(table).problems())
        .extracting(Problem::id)
        .contains(ForeignRuns.FOREIGN);
    Path log = folder.resolve("log.csv");
    ImportProfile profile = ok(DraftProfile.of(log, ZoneOffset.UTC)).profile();
    Path fresh = ok(ForeignRuns.toRunFiles(table, profile));
    List<Run> runs = ok(ReadRuns.read(fresh)).runs();
    assertThat(runs).extracting(Run::kind).containsExactly(RunKind.STILL, RunKind.SPIN);
    assertThat(runs).extracting(Run::file).containsOnly("log-run.csv");
    assertThat(Files.readString(table)).contains("warm,log.csv");
  }

  @Test
  void recordingByItselfIsToldFromATable() throws IOException {
    Path log = folder.resolve("log.csv");
    assertThat(ReadRuns.isRecording(log)).isFalse();
    assertThat(ReadRuns.read(log).problems())
        .extracting(Problem::id)
        .containsExactly(ForeignRuns.FOREIGN);
    Path run = ok(ForeignLog.toRunFile(log, ok(DraftProfile.of(log, ZoneOffset.UTC)).profile()));
    assertThat(ReadRuns.isRecording(run)).isTrue();
    assertThat(ReadRuns.isRecording(folder.resolve("runs.csv"))).isFalse();
  }
}
