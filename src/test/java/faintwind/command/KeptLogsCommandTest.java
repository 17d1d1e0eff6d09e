package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.files.instrument.WriterLock;
import faintwind.message.Problem;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Logs that are converted into an instrument's folder: which files are kept, and entered as what.
 */
class KeptLogsCommandTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final int ROWS = 700;

  @TempDir Path temp;
  private Path folder;
  private Path log;
  private final Shell shell = new Shell();

  @BeforeEach
  void copyTheCellar() throws IOException {
    folder = temp.resolve("rind 1");
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, folder.resolve(CELLAR.relativize(file).toString()));
      }
    }
    List<String> rows = Files.readAllLines(CELLAR.resolve("logs/north-shelf-day.csv"));
    log = Files.write(temp.resolve("löwe 🦁.csv"), rows.subList(0, ROWS));
  }

  private List<FileAdded> entered() throws IOException {
    return Journal.in(folder).content().entries().stream()
        .map(JournalEntry::event)
        .flatMap(event -> event instanceof FileAdded added ? Stream.of(added) : Stream.empty())
        .toList();
  }

  private List<FileAdded> enteredSince(int before) throws IOException {
    return entered().subList(before, entered().size());
  }

  private List<String> problems() throws IOException {
    return new InstrumentFolder(folder).audit().problems().stream().map(Problem::id).toList();
  }

  private Path calibration() {
    return folder.resolve("calibrations/2026-09-13.json");
  }

  @Test
  void minutesOfAKeptLogAreWrittenWhereTheyAreAskedFor() throws IOException {
    Path minutes = temp.resolve("minutes.csv");
    assertThat(shell.run("convert", folder, log, "--minutes", minutes)).isZero();
    assertThat(Files.readAllLines(minutes)).hasSizeGreaterThan(5);
    assertThat(shell.run("convert", folder, log, "--minutes", minutes)).isEqualTo(2);
    Path inside = folder.resolve("logs/minutes of the löwe.csv");
    int before = entered().size();
    assertThat(shell.run("convert", folder, log, "--minutes", inside)).isZero();
    assertThat(enteredSince(before))
        .extracting(FileAdded::kind, FileAdded::file)
        .contains(tuple(FileRole.MINUTES, "logs/minutes of the löwe.csv"));
    assertThat(shell.run("convert", folder, log, "--minutes", inside, "--force")).isEqualTo(2);
    assertThat(shell.said()).contains("never replaced");
    assertThat(problems()).isEmpty();
  }

  @Test
  void minutesOfManyKeptLogsGoIntoAFolder() throws IOException {
    Path other = Files.copy(log, temp.resolve("other.csv"));
    Path minutes = temp.resolve("minutes");
    assertThat(shell.run("convert", folder, log, other, "--minutes", minutes)).isZero();
    assertThat(minutes.resolve("löwe 🦁.csv")).exists();
    assertThat(minutes.resolve("other.csv")).exists();
  }

  @Test
  void namesOfTwoHundredLettersAreKept() throws IOException {
    String name = "ÄÖü 🧀".repeat(40);
    Path named = temp.resolve("named");
    assertThat(shell.run("new", named, "--name", name, "--who", name)).isZero();
    assertThat(shell.run("pack", named, "--out", temp.resolve("a.zip"))).isZero();
    assertThat(shell.run("unpack", temp.resolve("a.zip"), temp.resolve("theirs"))).isZero();
    Path copy = Files.copy(log, temp.resolve("ü 🧀".repeat(28) + ".csv"));
    assertThat(shell.run("convert", folder, copy)).isZero();
    assertThat(enteredSince(entered().size() - 2))
        .extracting(FileAdded::file)
        .containsExactly("logs/" + copy.getFileName(), "logs/speeds-" + copy.getFileName());
    assertThat(problems()).isEmpty();
    Path longest = Files.copy(log, temp.resolve("x".repeat(250) + ".csv"));
    assertThat(shell.run("convert", folder, longest)).as(shell.said()).isEqualTo(1);
    assertThat(shell.said()).contains("File name too long").doesNotContain("Exception");
    assertThat(problems()).isEmpty();
  }

  @Test
  void whatALogThatIsRefusedWouldHaveReplacedIsNotEntered() throws IOException {
    Path there = Files.writeString(folder.resolve("logs/there.csv"), "old\n");
    Path bad = Files.writeString(temp.resolve("bad.csv"), "time_s,delta_K\nx,y\n");
    int before = entered().size();
    assertThat(shell.run("convert", calibration(), bad, "--out", there, "--force")).isEqualTo(3);
    assertThat(Files.readString(there)).isEqualTo("old\n");
    assertThat(enteredSince(before)).isEmpty();
    Path logs = folder.resolve("logs");
    Files.writeString(logs.resolve("bad.csv"), "old\n");
    assertThat(shell.run("convert", calibration(), bad, log, "--out-dir", logs, "--force"))
        .isEqualTo(4);
    assertThat(enteredSince(before))
        .extracting(FileAdded::file)
        .containsExactly("logs/löwe 🦁.csv");
  }

  @Test
  void speedsAndMinutesInTheFolderAreEnteredAsWhatTheyAreByWhoMadeThem() throws IOException {
    int before = entered().size();
    Path speeds = folder.resolve("logs/own speeds.csv");
    Path minutes = folder.resolve("logs/own minutes.csv");
    assertThat(
            shell.run(
                "convert",
                calibration(),
                log,
                "--out",
                speeds,
                "--minutes",
                minutes,
                "--who",
                "Ida"))
        .isZero();
    assertThat(enteredSince(before))
        .extracting(FileAdded::kind, FileAdded::file)
        .containsExactly(
            tuple(FileRole.SPEEDS, "logs/own speeds.csv"),
            tuple(FileRole.MINUTES, "logs/own minutes.csv"));
    List<JournalEntry> entries = Journal.in(folder).content().entries();
    assertThat(entries.get(entries.size() - 1).who()).isEqualTo("Ida");
    assertThat(problems()).isEmpty();
  }

  @Test
  void speedsWrittenWhileSomebodyElseHoldsTheFolderAreToldOf() throws IOException {
    int before = entered().size();
    try (WriterLock lock = WriterLock.take(folder, "Käthe, bench").orElseThrow()) {
      assertThat(lock).isNotNull();
      Path speeds = folder.resolve("logs/own.csv");
      assertThat(shell.run("convert", calibration(), log, "--out", speeds)).isEqualTo(1);
      assertThat(shell.said()).contains("Käthe, bench");
    }
    assertThat(enteredSince(before)).isEmpty();
  }

  @Test
  void theRawStreamBesideAnEnteredRecordingIsNoStranger() throws IOException {
    Path runs = folder.resolve("runs/first-session");
    Files.writeString(runs.resolve("session.raw.1.gz"), "packed");
    Files.writeString(runs.resolve("stranger.raw.1.gz"), "packed");
    shell.run("check", folder);
    assertThat(shell.said()).contains("stranger.raw.1.gz").doesNotContain("session.raw");
  }
}
