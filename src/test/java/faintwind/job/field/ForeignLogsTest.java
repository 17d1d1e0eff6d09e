package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.asset.ProfileFile;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.run.RunsTable;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForeignLogsTest {
  private static final Path CALIBRATION = Path.of("src/test/resources/golden/calibration.json");

  private static final String PROFILE =
      """
      {"format": "faintwind-profile/1", "id": "cellar", "name": "made up", "delimiter": ";",
       "decimal_mark": ",", "header_lines": 2, "time": {"as": "min", "column": "t"},
       "columns": [{"column": "dT", "means": "signal", "unit": "K"},
                   {"column": "room", "means": "air", "unit": "F"}]}
      """;

  @TempDir Path folder;

  private static <T> T value(Checked<T> checked) {
    return checked.fold(
        (ok, notes) -> ok,
        problems -> {
          throw new AssertionError(problems);
        });
  }

  private static ImportProfile profile() throws IOException {
    return value(ProfileFile.parse(PROFILE, "cellar.json"));
  }

  private Convert convert() throws IOException {
    Calibration calibration = value(CalibrationFile.read(CALIBRATION, "calibration.json"));
    return new Convert(calibration, "calibration.json", SpeedSettings.usual(calibration));
  }

  /** The same log twice: as a run file, and as the made-up foreign logger writes it. */
  private void logs(int rows) throws IOException {
    List<String> own = new ArrayList<>(List.of("time_s,delta_K,air_C"));
    List<String> foreign = new ArrayList<>(List.of("Cellar logger (made up)", "nr;t;dT;room"));
    for (int i = 0; i < rows; i++) {
      double delta_K = 20 + 2 * Math.sin(i / 40.0);
      own.add(String.format(Locale.ROOT, "%d,%.3f,20", 3 * i, delta_K));
      foreign.add(
          String.format(Locale.ROOT, "%d;%.2f;%.3f;68", i, 0.05 * i, delta_K).replace('.', ','));
    }
    Files.write(folder.resolve("own.csv"), own);
    Files.write(folder.resolve("foreign.txt"), foreign);
  }

  @Test
  void aForeignLogConvertsToTheSameSpeeds() throws IOException {
    logs(400);
    Path ownSpeeds = folder.resolve("own-speeds.csv");
    Path speeds = folder.resolve("speeds.csv");
    assertThat(convert().file(folder.resolve("own.csv"), ownSpeeds, JobWatch.NOBODY).isOk())
        .isTrue();
    Checked<ConversionSummary> done =
        convert().reading(profile()).file(folder.resolve("foreign.txt"), speeds, JobWatch.NOBODY);
    assertThat(done.isOk()).isTrue();
    assertThat(lastCells(speeds)).isEqualTo(lastCells(ownSpeeds));
  }

  private static List<String> lastCells(Path file) throws IOException {
    return Files.readAllLines(file).stream()
        .map(line -> line.replaceFirst("^[^,]*,[^,]*,[^,]*,", ""))
        .toList();
  }

  @Test
  void aLineThatDoesNotFitIsABadRowOfAFieldLog() throws IOException {
    logs(50);
    Path log = folder.resolve("foreign.txt");
    List<String> lines = new ArrayList<>(Files.readAllLines(log));
    lines.set(20, "18;0,9;wet;68");
    lines.add("no more power");
    Files.write(log, lines);
    Path speeds = folder.resolve("speeds.csv");
    assertThat(convert().reading(profile()).file(log, speeds, JobWatch.NOBODY).isOk()).isTrue();
    List<String> rows = Files.readAllLines(speeds);
    assertThat(rows).hasSize(52);
    assertThat(rows.get(19)).isEqualTo(",,,,,bad");
    assertThat(rows.get(51)).isEqualTo(",,,,,bad");
  }

  @Test
  void aLogThatDoesNotFitAtAllIsRefusedNamingTheFields() throws IOException {
    logs(20);
    Checked<ConversionSummary> done =
        convert()
            .reading(profile())
            .file(folder.resolve("own.csv"), folder.resolve("speeds.csv"), JobWatch.NOBODY);
    assertThat(done.isOk()).isFalse();
    assertThat(done.problems()).extracting(Problem::id).contains("import.name");
    assertThat(done.problems())
        .extracting(p -> p.where().column().orElse(""))
        .contains("t", "dT", "room");
    assertThat(folder.resolve("speeds.csv")).doesNotExist();
  }

  @Test
  void aForeignRunIsRefusedWithItsLineAndField() throws IOException {
    logs(50);
    Path log = folder.resolve("foreign.txt");
    List<String> lines = new ArrayList<>(Files.readAllLines(log));
    lines.set(20, "18;0,9;wet;68");
    Files.write(log, lines);
    Path table = folder.resolve("runs.csv");
    Files.writeString(table, "run,file,kind\nstill,foreign.txt,still\n");
    Checked<RunsTable> read = RunsTable.readForeign(table, profile());
    assertThat(read.problems()).extracting(Problem::id).contains("import.number");
    Problem number =
        read.problems().stream()
            .filter(p -> p.id().equals("import.number"))
            .findFirst()
            .orElseThrow();
    assertThat(number.where().line()).hasValue(21);
    assertThat(number.where().column()).contains("columns, signal");
  }

  @Test
  void timesThatFallAreToldWithTheLineOfTheForeignFile() throws IOException {
    logs(50);
    Path log = folder.resolve("foreign.txt");
    List<String> lines = new ArrayList<>(Files.readAllLines(log));
    lines.set(20, "18;0,1;20,1;68");
    Files.write(log, lines);
    Path table = folder.resolve("runs.csv");
    Files.writeString(table, "run,file,kind\nstill,foreign.txt,still\n");
    Problem problem = RunsTable.readForeign(table, profile()).problems().get(0);
    assertThat(problem.id()).isEqualTo("file.time-not-increasing");
    assertThat(problem.where().line()).hasValue(21);
  }
}
