package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.guide.StepState;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.InstrumentView;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.LogConverted;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole instrument is made from the shell, as the one of the demonstration was. */
class WithoutAWindowTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final String PATIENCE = "nobody waits for glue in a made-up build";

  @TempDir Path temp;
  private Path folder;
  private final Shell shell = new Shell();

  @BeforeEach
  void nameTheFolder() {
    folder = temp.resolve("Rind 🧀 ÄÖÜ");
  }

  /** The command that enters the same. */
  private List<Object> command(JournalEntry entry) throws IOException {
    String step = entry.step().orElse("");
    Event event = entry.event();
    if (event instanceof InstrumentCreated e) {
      return List.of("new", folder, "--name", e.name());
    } else if (event instanceof DesignChosen e) {
      Path design = Files.writeString(temp.resolve("design.json"), e.json());
      return List.of("note", folder, "--design", design, e.why());
    } else if (event instanceof PartRecorded e) {
      List<Object> words = new ArrayList<>(List.of("note", folder, "--part", e.part()));
      words.addAll(List.of("--lot", e.lot(), "--currency", e.currency()));
      e.price().ifPresent(price -> words.addAll(List.of("--price", price)));
      return words;
    } else if (event instanceof NoteWritten e) {
      return List.of("note", folder, e.text());
    } else if (event instanceof PhotoAdded e) {
      Path photo = CELLAR.resolve(e.file());
      return List.of("note", folder, "--photo", photo, "--step", step, e.caption());
    } else if (event instanceof ReadingEntered e) {
      return List.of("reading", folder, step, e.reading(), e.typed());
    }
    return ofStep(step, event);
  }

  private List<Object> ofStep(String step, Event event) {
    List<Object> words = new ArrayList<>(List.of("step", folder, step));
    if (event instanceof StepOpened) {
      words.add("--open");
    } else if (event instanceof StepFinished) {
      words.add("--finish");
    } else if (event instanceof CautionAcknowledged e) {
      words.addAll(List.of("--read", e.caution()));
    } else if (event instanceof QuestionAnswered e) {
      words.addAll(List.of("--answer", e.question() + "=" + e.choice()));
    } else if (event instanceof ClockStarted) {
      words.add("--start-clock");
    } else {
      return ofData(event);
    }
    return words;
  }

  private List<Object> ofData(Event event) {
    if (event instanceof FileAdded e && e.kind() == Event.FileRole.RUNS_TABLE) {
      return List.of("note", folder, "--runs", CELLAR.resolve(e.file()));
    } else if (event instanceof FileAdded e && e.kind() == Event.FileRole.OTHER) {
      return List.of("note", folder, "--file", CELLAR.resolve(e.file()));
    } else if (event instanceof CalibrationMade) {
      return List.of("calibrate", folder, "--refits", "0");
    } else if (event instanceof CalibrationPutInForce) {
      return List.of("put-in-force", folder);
    } else if (event instanceof LogConverted e) {
      return List.of("convert", folder, CELLAR.resolve(e.log()));
    }
    return List.of();
  }

  private void enter(JournalEntry entry) throws IOException {
    List<Object> words = command(entry);
    if (words.isEmpty()) {
      return; // entered by the command that brings its table, calibration or log
    }
    int code = shell.run(words.toArray());
    assertThat(code).as("%s: %s", words, shell.said()).isIn(0, 4);
    if (entry.event() instanceof ClockStarted clock) {
      Object step = entry.step().orElseThrow();
      words = List.of("step", folder, step, "--waive", clock.clock(), "--because", PATIENCE);
      assertThat(shell.run(words.toArray())).as("%s: %s", words, shell.said()).isZero();
    }
  }

  @Test
  @Tag("long")
  void everyEntryOfTheDemonstrationCanBeMadeFromTheShell() throws IOException {
    List<JournalEntry> demo = Journal.in(CELLAR).content().entries();
    for (JournalEntry entry : demo) {
      enter(entry);
    }
    assertThat(new InstrumentFolder(folder).audit().problems()).isEmpty();
    InstrumentView view =
        InstrumentView.open(folder, KeptDesigns.withShippedParts()::sheet)
            .fold((v, notes) -> v, problems -> null);
    assertThat(view.state().standing(ReadingEntered.class))
        .hasSameSizeAs(demo.stream().filter(e -> e.event() instanceof ReadingEntered).toList());
    assertThat(view.progress(OffsetDateTime.now(ZoneId.systemDefault())).steps())
        .filteredOn(step -> step.state() == StepState.BLOCKED)
        .isEmpty();
    assertThat(view.state().calibrationInForce(OffsetDateTime.now(ZoneId.systemDefault())))
        .isPresent();
    assertThat(shell.run("check", folder)).isZero();
    assertThat(shell.run("report", folder, "--out", temp.resolve("log.html"))).isZero();
    assertThat(Files.readString(temp.resolve("log.html"))).contains(PATIENCE);
    assertThat(view.problems()).extracting(Problem::id).isEmpty();
  }
}
