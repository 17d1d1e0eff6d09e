package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.files.instrument.WriterLock;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What changes an instrument from the command line is an entry, as from the window. */
class InstrumentCommandsTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");

  @TempDir Path temp;
  private Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void nameTheFolder() {
    folder = temp.resolve("rind 1");
  }

  private int run(Object... arguments) {
    out.reset();
    err.reset();
    Terminal terminal =
        Terminal.of(new ByteArrayInputStream(new byte[0]), out, err, Messages.of(Locale.ENGLISH));
    return Main.run(terminal, Stream.of(arguments).map(Object::toString).toArray(String[]::new));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
  }

  private InstrumentState state() throws IOException {
    InstrumentFolder.Opened opened = new InstrumentFolder(folder).audit();
    assertThat(opened.problems().stream().filter(Problem::isError)).isEmpty();
    return opened.state();
  }

  private List<Event> events() throws IOException {
    return Journal.in(folder).content().entries().stream().map(JournalEntry::event).toList();
  }

  private void copyCellar() throws IOException {
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, folder.resolve(CELLAR.relativize(file).toString()));
      }
    }
  }

  @Test
  void anInstrumentIsBegunOnceAndInAName() throws IOException {
    assertThat(run("new", folder, "--name", "Rind 1", "--who", "Käthe")).isZero();
    assertThat(state().name()).contains("Rind 1");
    assertThat(Journal.in(folder).content().entries().get(0).who()).isEqualTo("Käthe");
    assertThat(run("new", folder, "--name", "Rind 1")).isEqualTo(3);
    assertThat(said()).contains("There is already an instrument in");
    assertThat(events()).hasSize(1);
    assertThat(run("check", folder)).isZero();
  }

  @Test
  void notesPartsRepairsHandOverAndRetirementAreEntries() throws IOException {
    run("new", folder, "--who", "Ida");
    assertThat(run("note", folder, "new cellar")).isZero();
    assertThat(
            run(
                "note",
                folder,
                "--part",
                "ball",
                "--lot",
                "7",
                "--price",
                "6.4",
                "--currency",
                "EUR"))
        .isZero();
    assertThat(run("note", folder, "--repair", "--step", "mount-pair", "mounted anew")).isZero();
    assertThat(run("note", folder, "--hand-over", "Jo", "with its jar")).isZero();
    assertThat(run("note", folder, "--retire", "lead broken off")).isZero();
    assertThat(state().retired()).isTrue();
    assertThat(events())
        .extracting(event -> event.getClass().getSimpleName())
        .containsExactly(
            "InstrumentCreated",
            "NoteWritten",
            "PartRecorded",
            "Repaired",
            "HandedOver",
            "Retired");
    assertThat(run("check", folder)).isZero();
  }

  @Test
  void misuseOfANoteIsToldAndNothingIsEntered() throws IOException {
    run("new", folder);
    assertThat(run("note", folder)).isEqualTo(2);
    assertThat(run("note", folder, "--retire", "--hand-over", "Jo", "x")).isEqualTo(2);
    assertThat(run("note", folder, "--repair", "soldered")).isEqualTo(2);
    assertThat(run("note", folder, "--repair", "--step", "no-step", "soldered")).isEqualTo(3);
    assertThat(run("note", temp.resolve("nowhere"), "x")).isEqualTo(1);
    assertThat(run("note", Files.createDirectory(temp.resolve("empty")), "x")).isEqualTo(3);
    assertThat(events()).hasSize(1);
  }

  @Test
  void aFileThatNobodyEnteredIsNamedAndCanBeEntered() throws IOException {
    run("new", folder);
    Path stray = Files.writeString(folder.resolve("others.txt"), "x");
    assertThat(run("check", folder)).isZero();
    assertThat(said()).contains("others.txt").contains("No entry names this file");
    assertThat(run("note", folder, "--file", stray)).isZero();
    assertThat(run("check", folder)).isZero();
    assertThat(said()).doesNotContain("No entry names this file");
  }

  @Test
  void runsAreEnteredWithEveryRecordingAndTheChain() throws IOException {
    run("new", folder);
    assertThat(run("note", folder, "--runs", CELLAR.resolve("runs/first-session/runs.csv")))
        .isZero();
    assertThat(state().all(Event.FileAdded.class))
        .extracting(line -> line.event().file())
        .containsExactlyInAnyOrder(
            "runs/set-1/chain.json",
            "runs/set-1/session.csv",
            "runs/set-1/zero.csv",
            "runs/set-1/runs.csv");
    assertThat(run("check", folder)).isZero();
    assertThat(said()).doesNotContain("No entry names this file");
  }

  @Test
  void aCalibrationOfTheFolderIsKeptEnteredAndHoldsTheHeadOfTheJournal() throws IOException {
    copyCellar();
    String head = state().head();
    int before = events().size();
    assertThat(run("calibrate", folder, "--refits", "0", "--who", "Ida")).isIn(0, 4);
    assertThat(events().subList(before, events().size()))
        .extracting(event -> event.getClass().getSimpleName())
        .containsExactly("FileAdded", "CalibrationMade");
    String file = state().last(Event.CalibrationMade.class).orElseThrow().event().file();
    assertThat(Files.readString(folder.resolve(file))).contains(head);
    Path inside = folder.resolve("calibrations/own.json");
    Path runs = folder.resolve("runs/first-session/runs.csv");
    assertThat(run("calibrate", runs, "--out", inside, "--refits", "0")).isIn(0, 4);
    assertThat(state().last(Event.CalibrationMade.class).orElseThrow().event().file())
        .isEqualTo("calibrations/own.json");
    assertThat(run("calibrate", runs, "--out", inside, "--force", "--refits", "0")).isEqualTo(2);
    assertThat(said()).contains("never replaced");
    assertThat(run("calibrate", folder, "--out", temp.resolve("x.json"))).isEqualTo(2);
    assertThat(run("check", folder)).isZero();
  }

  @Test
  void aReadingBeforeItsStepIsEnteredAndSaidToBeVoid() throws IOException {
    run("new", folder);
    assertThat(run("reading", folder, "heater-alone", "heater-alone", "100.2 Ohm")).isEqualTo(4);
    assertThat(said()).contains("before its step was reached").contains("Measure again.");
    assertThat(run("reading", folder, "heater-alone", "heater-alone", "4o2")).isEqualTo(3);
    assertThat(events()).hasSize(2);
  }

  @Test
  void aReadingOfAStepThatWasReachedIsJudged() throws IOException {
    Files.createDirectories(temp);
    copyCellar();
    assertThat(run("reading", folder, "heater-alone", "heater-alone", "100.2 Ohm")).isZero();
    assertThat(said()).contains("good");
    assertThat(run("reading", folder, "heater-alone", "heater-alone", "50 Ohm")).isEqualTo(4);
  }

  @Test
  void aFieldLogIsKeptWithItsSpeedsAndTheCalibrationUsed() throws IOException {
    copyCellar();
    Path log = temp.resolve("löwe 🦁.csv");
    List<String> rows = Files.readAllLines(CELLAR.resolve("logs/north-shelf-day.csv"));
    Files.write(log, rows.subList(0, 700));
    assertThat(run("convert", folder, log, "--who", "Ida")).isZero();
    List<Event> events = events();
    Event.LogConverted converted = (Event.LogConverted) events.get(events.size() - 1);
    assertThat(converted.log()).isEqualTo("logs/löwe 🦁.csv");
    assertThat(converted.speeds()).isEqualTo("logs/speeds-löwe 🦁.csv");
    assertThat(converted.calibration()).startsWith("calibrations/");
    assertThat(folder.resolve(converted.speeds())).exists();
    assertThat(state().head()).isNotEmpty();
    assertThat(run("convert", folder, log)).isZero();
    assertThat(folder.resolve("logs/speeds-löwe 🦁-2.csv")).exists();
    assertThat(folder.resolve("logs/löwe 🦁-2.csv")).doesNotExist();
    assertThat(run("convert", folder, log, "--out", temp.resolve("x.csv"))).isEqualTo(2);
    assertThat(run("check", folder)).isZero();
  }

  @Test
  void aCalibrationIsPutInForceOnlyAsItWasEntered() throws IOException {
    copyCellar();
    assertThat(run("put-in-force", folder)).isZero();
    Event.CalibrationMade made = state().last(Event.CalibrationMade.class).orElseThrow().event();
    assertThat(run("put-in-force", folder, folder.resolve(made.file()))).isZero();
    assertThat(run("put-in-force", folder, "calibrations/none.json")).isEqualTo(3);
    Files.writeString(folder.resolve("calibrations/own.json"), "{}");
    assertThat(run("put-in-force", folder, "calibrations/own.json")).isEqualTo(3);
    Path file = folder.resolve(made.file());
    Files.writeString(file, Files.readString(file) + "\n");
    assertThat(run("put-in-force", folder)).isEqualTo(3);
    assertThat(said()).contains("is not the one that was entered");
    assertThat(run("check", folder)).isEqualTo(3);
  }

  @Test
  void anAlterationIsAcceptedByReasonAndStaysInSight() throws IOException {
    copyCellar();
    Path photo = folder.resolve(state().last(Event.PhotoAdded.class).orElseThrow().event().file());
    Files.write(photo, new byte[] {1, 2, 3});
    String name = folder.relativize(photo).toString();
    assertThat(run("check", folder)).isEqualTo(3);
    assertThat(run("accept", folder, "--place", name, "--because", "x")).isEqualTo(3);
    assertThat(run("accept", folder, "--place", "runs/none", "--because", "cropped it by hand"))
        .isEqualTo(3);
    assertThat(run("accept", folder, "--place", name, "--because", "cropped it by hand")).isZero();
    assertThat(run("check", folder)).isZero();
    assertThat(said()).contains("cropped it by hand");
  }

  @Test
  void whileSomebodyElseWritesNothingIsEnteredAndItIsSaidWho() throws IOException {
    run("new", folder);
    try (WriterLock lock = WriterLock.take(folder, "Käthe, bench").orElseThrow()) {
      assertThat(lock).isNotNull();
      assertThat(run("note", folder, "x")).isEqualTo(1);
      assertThat(said()).contains("Käthe, bench");
      assertThat(run("check", folder)).isZero();
    }
    assertThat(run("note", folder, "x")).isZero();
  }

  @Test
  void anInstrumentIsHandedOverInOneFile() throws IOException {
    copyCellar();
    Path archive = temp.resolve("hand over.zip");
    assertThat(run("pack", folder, "--out", archive)).isZero();
    assertThat(run("pack", folder, "--out", archive)).isEqualTo(2);
    assertThat(run("unpack", archive, temp.resolve("theirs"))).isZero();
    assertThat(said()).contains(state().head());
    assertThat(run("check", temp.resolve("theirs/rind-1-north-shelf"))).isZero();
    assertThat(run("unpack", archive, temp.resolve("theirs"))).isEqualTo(3);
    assertThat(run("unpack", temp.resolve("none.zip"), temp)).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "two words",
        "Käthe's Größe",
        "🦁🧀 cellar",
        "a\tb",
        "x234567890123456789012345678901234567890123456789012345678901234567890123456789012345678901"
            + "23456789012345678901234567890123456789012345678901234567890123456789012345678901234567"
            + "8901234567890123456789"
      })
  void anyNameIsKeptAsItIs(String name) throws IOException {
    folder = temp.resolve(name.replace("\t", " "));
    assertThat(run("new", folder, "--name", name, "--who", name)).isZero();
    assertThat(run("note", folder, name)).isZero();
    assertThat(state().name()).contains(name);
    assertThat(run("pack", folder, "--out", temp.resolve("a.zip"))).isZero();
    assertThat(run("unpack", temp.resolve("a.zip"), temp.resolve("theirs"))).isZero();
    try (Stream<Path> all = Files.list(temp.resolve("theirs"))) {
      Path taken = all.findFirst().orElseThrow();
      assertThat(run("check", taken)).isZero();
      assertThat(new InstrumentFolder(taken).open().state().name()).contains(name);
    }
  }
}
