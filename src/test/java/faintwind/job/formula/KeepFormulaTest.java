package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.judging.FitLook;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.JobWatch;
import faintwind.job.record.Enter;
import faintwind.job.record.Enter.Person;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.KeepRuns;
import faintwind.job.record.WriteReport;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A formula that is read again beside the recordings it was made from. */
class KeepFormulaTest {
  private static final Path BENCH = Path.of("src/test/resources/sample-runs/bench-g/in/runs.csv");
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T14:30:00Z"), ZoneOffset.ofHours(1));
  private static final Messages ENGLISH = Messages.of(Locale.ENGLISH);
  private static final AtomicInteger NEXT = new AtomicInteger();
  private static final Person MAKER = new Person("Ada Test", () -> "e" + NEXT.incrementAndGet());

  @TempDir static Path folder;
  private static KeepFormula.Kept made;

  @BeforeAll
  static void fitOnce() throws IOException {
    Enter.begin(folder, new InstrumentCreated("Rind 9", false), CLOCK, MAKER);
    ok(KeepRuns.keep(folder, BENCH, enter()));
    made = ok(job().fit(folder.resolve("runs/set-1/runs.csv"), JobWatch.NOBODY));
    ok(enter().plain(Optional.empty(), new CalibrationMade(made.file(), made.sha256())));
  }

  private static KeepFormula job() {
    Calibrate.Settings settings =
        new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty());
    return new KeepFormula(folder, new Calibrate(CLOCK, ENGLISH, settings));
  }

  private static Enter enter() throws IOException {
    return new Enter(ok(InstrumentView.open(folder, json -> Optional.empty())), CLOCK, MAKER);
  }

  private static InstrumentState state() throws IOException {
    return new InstrumentFolder(folder).open().state();
  }

  private static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  @Test
  void formulaReadAgainShowsTheSameStraightLine() throws IOException {
    KeepFormula.Kept read = ok(job().read(made.file(), state()));
    FitLook look = ok(read.formula().look());
    assertThat(look.straightLine()).isEqualTo(ok(made.formula().look()).straightLine());
    assertThat(look.recordings()).isEmpty();
  }

  @Test
  void fittedOnceMoreTheRecordingsAreDrawnAsBefore() throws IOException {
    KeepFormula.Kept read = ok(job().read(made.file(), state()));
    KeepFormula.Kept drawn = job().drawnAgain(read, state(), JobWatch.NOBODY);
    assertThat(drawn.formula().recordings()).hasSameSizeAs(made.formula().recordings());
    double[] before = made.formula().recordings().get(0).fitted().values();
    double[] again = drawn.formula().recordings().get(0).fitted().values();
    assertThat(again).containsExactly(before, Assertions.within(1e-9));
  }

  @Test
  void buildLogGoesFromTheRecordingsToTheBand() throws IOException {
    Path log = folder.resolve("log.html");
    ok(new WriteReport(CLOCK, ENGLISH).write(folder, log));
    assertThat(Files.readString(log))
        .contains(">measured<", ">fitted<", "times 1.9", "Straight line reads, m/s")
        .contains("AICc not clearly lower")
        .doesNotContain("not at hand");
  }

  @Test
  void changedRecordingIsNamedAndNothingIsDrawnFromIt() throws IOException {
    Path file = folder.resolve("runs/set-1/session.csv");
    byte[] whole = Files.readAllBytes(file);
    byte[] other = whole.clone();
    other[other.length - 3] ^= 1;
    try {
      Files.write(file, other);
      KeepFormula.Kept read = ok(job().read(made.file(), state()));
      List<Problem> why = read.formula().look().problems();
      assertThat(why).extracting(Problem::id).containsExactly("formula-runs.changed");
      assertThat(why).extracting(Problem::found).containsExactly("session.csv");
      Path log = folder.resolve("log-without.html");
      ok(new WriteReport(CLOCK, ENGLISH).write(folder, log));
      assertThat(Files.readString(log))
          .contains("are not at hand", "session.csv", "3 The choice of the formula")
          .doesNotContain(">fitted<");
    } finally {
      Files.write(file, whole);
    }
  }
}
