package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.RunOutcome;
import faintwind.calibration.run.NotCounted;
import faintwind.calibration.run.NotCounted.Stretch;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.files.run.RunsTable;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.report.figure.RecordingPlots;
import faintwind.report.figure.RecordingTrace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeaveOutTest {
  private static final Path BENCH = Path.of("src/test/resources/sample-runs/bench-f/in");
  private static final Messages ENGLISH = Messages.of(Locale.ENGLISH);

  @TempDir
  @SuppressWarnings("NullAway.Init")
  Path folder;

  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> files = Files.list(BENCH)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  private static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private Path leaveOut(String table, String run, NotCounted what) throws IOException {
    LeaveOut.Choice choice = new LeaveOut.Choice(run, what, "a door stood open");
    List<Event> events = ok(LeaveOut.events(folder, folder.resolve(table), choice, ENGLISH));
    assertThat(events).first().isInstanceOf(Event.NoteWritten.class);
    return folder.resolve(((Event.FileAdded) events.get(1)).file());
  }

  private static Run run(Path table, String name) throws IOException {
    return ok(RunsTable.read(table)).runSet().runs().stream()
        .filter(run -> run.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void stretchIsLeftOutAndTheTableBeforeStays() throws IOException {
    NotCounted stretch = NotCounted.NOTHING.with(new Stretch(3200, 3300));
    Path fresh = leaveOut("runs.csv", "spin01", stretch);
    assertThat(fresh.getFileName()).hasToString("runs-2.csv");
    assertThat(run(fresh, "spin01").conditions().notCounted()).isEqualTo(stretch);
    RecordingTrace trace = RecordingPlots.traces(List.of(run(fresh, "spin01"))).get(0);
    assertThat(trace.aside())
        .containsExactly(new RecordingTrace.Spin(3200, 3300, "a door stood open"));
    assertThat(run(folder.resolve("runs.csv"), "spin01").conditions().notCounted())
        .isEqualTo(NotCounted.NOTHING);
    RunSet counted = ok(RunsTable.read(fresh)).runSet().counted();
    double[] times = counted.runs().get(2).recording().signal().times_s();
    assertThat(Arrays.stream(times).boxed())
        .noneMatch(t -> t >= 3200 && t <= 3300)
        .anyMatch(t -> t > 3300);
  }

  @Test
  void takenBackItIsAsBefore() throws IOException {
    Path without = leaveOut("runs.csv", "spin03", NotCounted.ALL);
    assertThat(run(without, "spin03").isLeftOut()).isTrue();
    Path back = leaveOut("runs-2.csv", "spin03", NotCounted.NOTHING);
    assertThat(back.getFileName()).hasToString("runs-3.csv");
    assertThat(ok(RunsTable.read(back)).runSet().counted().runs())
        .usingRecursiveComparison()
        .isEqualTo(ok(RunsTable.read(folder.resolve("runs.csv"))).runSet().runs());
  }

  @Test
  void withoutAReasonOrWithTooLittleLeftItIsRefused() throws IOException {
    Path table = folder.resolve("runs.csv");
    LeaveOut.Choice silent = new LeaveOut.Choice("spin01", NotCounted.ALL, " ");
    assertThat(LeaveOut.events(folder, table, silent, ENGLISH).isOk()).isFalse();
    LeaveOut.Choice nobody = new LeaveOut.Choice("spin99", NotCounted.ALL, "why");
    assertThat(LeaveOut.events(folder, table, nobody, ENGLISH).problems().get(0).id())
        .isEqualTo("runs.no-such-run");
    assertThat(folder.resolve("runs-2.csv")).doesNotExist();
  }

  @Tag("long")
  @Test
  void fitGoesOnWithoutTheRunAndForetellsIt() throws IOException {
    Path without = leaveOut("runs.csv", "spin03", NotCounted.ALL);
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T14:30:00Z"), ZoneOffset.UTC);
    Calibrate calibrate =
        new Calibrate(
            clock, ENGLISH, new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty()));
    Calibrate.Outcome all = ok(calibrate.of(folder.resolve("runs.csv"), JobWatch.NOBODY));
    Calibrate.Outcome some = ok(calibrate.of(without, JobWatch.NOBODY));
    RunOutcome left =
        some.calibration().evidence().runs().stream()
            .filter(r -> r.run().equals("spin03"))
            .findFirst()
            .orElseThrow();
    assertThat(left.used()).isFalse();
    assertThat(left.why()).isEqualTo("why.left-out");
    assertThat(some.shortfalls()).isEqualTo(all.shortfalls());
    assertThat(some.calibration().warnings()).extracting("id").doesNotContain("fit.ails.other");
    double speed_m_s = 0.6;
    double before = u95(all, speed_m_s);
    assertThat(u95(some, speed_m_s)).isBetween(0.8 * before, 2 * before);
  }

  private static double u95(Calibrate.Outcome outcome, double speed_m_s) {
    return outcome.calibration().performance().speeds().stream()
        .min(
            (a, b) ->
                Double.compare(
                    Math.abs(a.speed_m_s() - speed_m_s), Math.abs(b.speed_m_s() - speed_m_s)))
        .orElseThrow()
        .u95_m_s();
  }
}
