package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.message.Problem;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No command replaces what a record rests on, or enters an altered file as if it were another. */
class EvidenceStaysTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final String LOG = "logs/north-shelf-day.csv";
  private static final String CALIBRATION = "calibrations/2026-09-13.json";

  @TempDir Path temp;
  private Path folder;
  private final Shell shell = new Shell();

  @BeforeEach
  void copyTheCellar() throws IOException {
    folder = temp.resolve("north shelf ü");
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, folder.resolve(CELLAR.relativize(file).toString()));
      }
    }
  }

  private void alter(String name) throws IOException {
    Path file = folder.resolve(name);
    byte[] bytes = Files.readAllBytes(file);
    byte[] more = Arrays.copyOf(bytes, bytes.length + 1);
    more[bytes.length] = '\n';
    Files.write(file, more);
  }

  private int lines() throws IOException {
    return Journal.in(folder).content().entries().size();
  }

  private List<String> errors() throws IOException {
    return new InstrumentFolder(folder)
        .audit().problems().stream().filter(Problem::isError).map(Problem::id).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "journal.jsonl",
        "instrument.json",
        CALIBRATION,
        LOG,
        "runs/first-session/runs.csv"
      })
  void noOutputReplacesIt(String name) throws IOException {
    byte[] before = Files.readAllBytes(folder.resolve(name));
    assertThat(shell.run("report", folder, "--out", folder.resolve(name), "--force")).isEqualTo(2);
    assertThat(shell.said()).contains("never replaced");
    assertThat(shell.run("steps", folder, "--out", folder.resolve(name), "--force")).isEqualTo(2);
    assertThat(folder.resolve(name)).hasBinaryContent(before);
    assertThat(errors()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {LOG, "runs/first-session/runs.csv", "runs/first-session/session.csv"})
  void anAlteredFileIsNotEnteredAnew(String name) throws IOException {
    alter(name);
    int before = lines();
    assertThat(shell.run("note", folder, "--file", folder.resolve(name))).isEqualTo(3);
    assertThat(shell.said()).contains("not the one that was entered");
    assertThat(shell.run("note", folder, "--runs", folder.resolve("runs/first-session/runs.csv")))
        .isEqualTo(name.startsWith("runs") ? 3 : 0);
    assertThat(shell.run("convert", folder, folder.resolve(LOG)))
        .isEqualTo(name.equals(LOG) ? 3 : 0);
    assertThat(lines()).isEqualTo(name.equals(LOG) ? before + 1 : before + 2);
    assertThat(errors()).containsExactly("folder.file-changed");
  }

  @Test
  void nothingIsConvertedByACalibrationThatWasAltered() throws IOException {
    alter(CALIBRATION);
    int before = lines();
    assertThat(shell.run("convert", folder, folder.resolve(LOG))).isEqualTo(3);
    assertThat(shell.said()).contains(CALIBRATION).contains("not the one that was entered");
    assertThat(shell.run("note", folder, "--file", folder.resolve(CALIBRATION))).isEqualTo(3);
    assertThat(lines()).isEqualTo(before);
    try (Stream<Path> logs = Files.list(folder.resolve("logs"))) {
      assertThat(logs.map(log -> log.getFileName().toString()))
          .allMatch(log -> Files.exists(CELLAR.resolve("logs/" + log)));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"runs/first-session/runs.csv", "runs/first-session/session.csv"})
  void nothingThatWasMadeOfAlteredRunsIsPutInForce(String name) throws IOException {
    assertThat(shell.run("put-in-force", folder)).isZero();
    alter(name);
    int before = lines();
    assertThat(shell.run("put-in-force", folder)).isEqualTo(3);
    assertThat(shell.said()).contains(name).contains("not the one that was entered");
    String reason = "the office took the file apart and saved it";
    assertThat(shell.run("put-in-force", folder, "--reason", reason)).isEqualTo(3);
    assertThat(lines()).isEqualTo(before);
    assertThat(shell.run("accept", folder, "--place", name, "--because", reason)).isZero();
    assertThat(shell.run("put-in-force", folder)).isZero();
  }

  @Test
  void anAcceptedAlterationStaysAWarningWhateverIsMadeOfTheFile() throws IOException {
    alter(LOG);
    assertThat(
            shell.run(
                "accept", folder, "--place", LOG, "--because", "saved again by a spreadsheet"))
        .isZero();
    assertThat(shell.run("convert", folder, folder.resolve(LOG))).isZero();
    assertThat(shell.run("check", folder)).isZero();
    assertThat(shell.said()).contains("saved again by a spreadsheet");
  }

  @Test
  void aPlanInTheFolderIsEntered() throws IOException {
    int before = lines();
    Path plan = folder.resolve("own plan.json");
    Path sheet = folder.resolve("own sheet.pdf");
    assertThat(shell.run("plan", folder, "--radius-mm", "300,600", "--out", plan, "--sheet", sheet))
        .as(shell.said())
        .isZero();
    assertThat(lines()).isEqualTo(before + 2);
    assertThat(new InstrumentFolder(folder).open().state().all(FileAdded.class))
        .extracting(line -> line.event().kind())
        .contains(FileRole.PLAN);
    assertThat(new InstrumentFolder(folder).audit().problems()).isEmpty();
    assertThat(shell.run("plan", folder, "--radius-mm", "300", "--out", plan, "--force"))
        .isEqualTo(2);
  }

  @Test
  void aReportMayBeMadeAgain() throws IOException {
    Path report = folder.resolve("own.html");
    int before = lines();
    assertThat(shell.run("report", folder, "--certificate", "--out", report)).isZero();
    assertThat(shell.run("report", folder, "--certificate", "--out", report)).isEqualTo(2);
    assertThat(shell.run("report", folder, "--certificate", "--out", report, "--force")).isZero();
    assertThat(lines()).isEqualTo(before + 2);
    assertThat(new InstrumentFolder(folder).audit().problems()).isEmpty();
  }
}
