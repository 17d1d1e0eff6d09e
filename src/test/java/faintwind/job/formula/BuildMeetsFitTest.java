package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped runs against a design that is theirs, and against one whose resistor is not. */
class BuildMeetsFitTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");

  @TempDir Path folder;

  private Calibrate.Outcome withResistor(String ohm) throws IOException {
    try (Stream<Path> runs = Files.list(CELLAR.resolve("runs/first-session"))) {
      for (Path file : runs.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
    String design = new InstrumentFolder(CELLAR).open().state().designJson().orElseThrow();
    Files.writeString(
        folder.resolve("design.json"),
        design.replace("\"resistance_ohm\":100", "\"resistance_ohm\":" + ohm));
    Calibrate job =
        new Calibrate(
            Clock.systemUTC(),
            Messages.of(Locale.ENGLISH),
            new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty()));
    Checked<Calibrate.Outcome> done = job.of(folder.resolve("runs.csv"), JobWatch.NOBODY);
    return ((Checked.Ok<Calibrate.Outcome>) done).value();
  }

  private static List<String> ids(List<Problem> problems) {
    Messages words = Messages.of(Locale.ENGLISH);
    problems.forEach(problem -> assertThat(words.line(problem)).isNotBlank());
    return problems.stream().map(Problem::id).toList();
  }

  @Test
  void theShippedRunsMeetTheirDesignAndSayWhenTheyWereMeasured() throws IOException {
    Calibrate.Outcome outcome = withResistor("100");
    assertThat(ids(outcome.shortfalls())).isEmpty();
    assertThat(outcome.calibration().evidence().build().orElseThrow().disagrees()).isFalse();
    assertThat(outcome.calibration().origin().validFrom().toLocalDate()).hasToString("2026-09-13");
  }

  @Tag("long")
  @Test
  void anotherResistorIsHeldUpAndAmongTheSuspects() throws IOException {
    Calibrate.Outcome outcome = withResistor("82");
    assertThat(ids(outcome.shortfalls())).containsExactly("calibrate.build-off");
    assertThat(ids(outcome.calibration().warnings()))
        .contains("fit.build-off.heating", "fit.build-suspect.resistor");
  }
}
