package faintwind.demo;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.JobWatch;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.KeepFormula;
import faintwind.job.record.CheckPath;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The shipped demonstration instruments. {@code mvn test -Dtest=DemoProjectsTest -Ddemo.write=true}
 * makes them anew.
 */
class DemoProjectsTest {
  private static final Path SHIPPED = Path.of("demo-projects");

  @Test
  @EnabledIfSystemProperty(named = "demo.write", matches = "true")
  void makesTheDemonstrationAnew() throws IOException {
    delete(SHIPPED);
    DemoProjects.writeAll(SHIPPED);
    assertThat(SHIPPED.resolve("cellar/journal.jsonl")).exists();
  }

  @ParameterizedTest
  @ValueSource(strings = {"cellar", "ripening-room", "cellar-door"})
  void eachInstrumentIsMadeUpAndWhole(String name) throws IOException {
    InstrumentFolder.Opened opened = new InstrumentFolder(SHIPPED.resolve(name)).open();
    assertThat(opened.problems()).isEmpty();
    assertThat(opened.state().madeUp()).isTrue();
    assertThat(opened.state().designJson()).isPresent();
    assertThat(CheckPath.run(SHIPPED.resolve(name), Locale.ENGLISH).problems()).isEmpty();
  }

  /** Where it fails, the fit has changed since: make the demonstration anew. */
  @Test
  void theShippedFormulaIsWhatItsRecordingsGive() throws IOException {
    Path cellar = SHIPPED.resolve("cellar");
    InstrumentState state = new InstrumentFolder(cellar).open().state();
    Messages words = Messages.of(Locale.ENGLISH);
    KeepFormula job =
        new KeepFormula(cellar, new Calibrate(Clock.systemUTC(), words, Calibrate.Settings.USUAL));
    String file = state.last(Event.CalibrationPutInForce.class).orElseThrow().event().file();
    KeepFormula.Kept read = job.read(file, state).fold((kept, notes) -> kept, problems -> null);
    assertThat(read).isNotNull();
    assertThat(read.formula().look().isOk()).isTrue();
    assertThat(job.drawnAgain(read, state, JobWatch.NOBODY).formula().recordings()).isNotEmpty();
  }

  @Test
  void theFaultyOneHasAPiercedLeadAndAStruckEntry() throws IOException {
    var state = new InstrumentFolder(SHIPPED.resolve("cellar-door")).open().state();
    assertThat(state.reading("heater-insulation", "lead-a-ball").orElseThrow().event().typed())
        .isEqualTo("27 Ω");
    assertThat(state.lines().stream().filter(line -> !line.stands())).isNotEmpty();
  }

  @Test
  void theHalfBuiltOneWaitsForItsCoats() throws IOException {
    var state = new InstrumentFolder(SHIPPED.resolve("ripening-room")).open().state();
    assertThat(state.standing(Event.ClockStarted.class, "coat-parts")).hasSize(1);
    assertThat(state.finished("coat-parts")).isEmpty();
  }

  @Test
  void everyTextFileSaysThatItIsMadeUp() throws IOException {
    try (Stream<Path> files = Files.walk(SHIPPED)) {
      List<Path> silent =
          files
              .filter(f -> f.toString().matches(".*\\.(csv|json|jsonl)"))
              .filter(f -> !text(source(f)).toLowerCase(Locale.ROOT).matches("(?s).*made.?up.*"))
              .toList();
      assertThat(silent).isEmpty();
    }
  }

  /** Speeds hold the columns of their log and nothing else: the log beside them says it. */
  private static Path source(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.startsWith("speeds-") ? file.resolveSibling(name.substring(7)) : file;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
