package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.beat.SpinTurns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.guide.turntable.Advice;
import faintwind.job.JobWatch;
import faintwind.job.design.KeptDesigns;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.KeepFormula;
import faintwind.job.formula.OpenCalibration;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.turntable.ReadRuns;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LiveSessionTest {
  private static final long SEED = 11;
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-21T12:00:00Z"), ZoneOffset.UTC);

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  /** A short rehearsal as fast as it can: recording, table, and a fit that says what it is. */
  @Test
  void rehearsalThatRunsByItselfIsFittedAndCanNeverBeTakenForACalibration() throws IOException {
    Enter.begin(
        folder, new Event.InstrumentCreated("Practice", true), CLOCK, Enter.Person.named("Ida"));
    Files.createDirectories(folder.resolve("runs/live-1"));
    LiveSession session = session(folder.resolve("runs/live-1"));
    session.run();
    assertThat(session.look().advice().action()).isEqualTo(Advice.Action.DONE);
    assertThat(session.spins())
        .hasSize(3)
        .allSatisfy(s -> assertThat(s.turns().how()).isEqualTo(SpinTurns.How.MARKED));
    assertThat(Files.readString(session.table().resolveSibling(LiveSession.RECORDING)))
        .startsWith("# rehearsal:");

    Checked<RunSet> read = ReadRuns.read(session.table());
    assertThat(read.problems()).extracting(Problem::id).contains("file.rehearsal");
    List<Run> runs = value(read).runs();
    assertThat(runs)
        .filteredOn(run -> run.arm().isPresent())
        .extracting(run -> run.arm().orElseThrow())
        .hasSize(3)
        .allMatch(arm -> arm.firstClick_s().orElseThrow() > arm.spinStart_s() + 3)
        .allMatch(
            arm -> arm.firstClick_s().orElseThrow() + arm.turnsTime_s().value() < arm.spinStop_s());
    assertThat(runs.stream().map(Run::kind))
        .containsExactly(
            RunKind.ZERO, RunKind.STILL, RunKind.SPIN, RunKind.SPIN, RunKind.SPIN, RunKind.STILL);
    assertThat(runs.stream().filter(r -> r.kind() == RunKind.SPIN))
        .allSatisfy(r -> assertThat(r.conditions().note()).startsWith("rehearsal"));
    assertThat(runs.get(2).arm().orElseThrow().speed_m_s()).isCloseTo(0.6, within(0.02));

    KeepFormula.Kept kept = fitted(session.table());
    assertThat(kept.formula().calibration().rehearsal()).isTrue();
    assertThat(ids(OpenCalibration.read(folder.resolve(kept.file()))))
        .containsExactly("calibration.rehearsal");
    Enter enter = new Enter(view(), CLOCK, Enter.Person.named("Ida"));
    assertThat(ids(enter.plain(Optional.empty(), new Event.CalibrationPutInForce(kept.file()))))
        .containsExactly("calibration.rehearsal");
    assertThat(Files.readString(folder.resolve(kept.file().replace(".json", ".html"))))
        .contains("Nothing was measured");
  }

  private KeepFormula.Kept fitted(Path table) throws IOException {
    Messages words = Messages.of(Locale.ENGLISH);
    Calibrate quick =
        new Calibrate(
            CLOCK, words, new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty()));
    return value(new KeepFormula(folder, quick).fit(table, JobWatch.NOBODY));
  }

  private InstrumentView view() throws IOException {
    return value(InstrumentView.open(folder, KeptDesigns.withShippedParts()::sheet));
  }

  private static List<String> ids(Checked<?> checked) {
    assertThat(checked.isOk()).isFalse();
    return checked.problems().stream().map(Problem::id).toList();
  }

  @Test
  void countsThatCannotBeAreRefusedAndOddOnesAskedAbout() throws IOException {
    LiveSession session = session(folder);
    session.run();
    assertThat(session.count(0, -3, 100).problems())
        .extracting(Problem::id)
        .containsExactly("beat.turns-too-few");
    assertThat(session.count(0, 10.5, 0).problems())
        .extracting(Problem::id)
        .containsExactly("beat.turns-not-whole", "beat.time-not-positive");
    assertThat(session.count(0, 20, 9000).problems())
        .extracting(Problem::id)
        .containsExactly("beat.time-too-long");
    assertThat(session.spins().get(0).turns().how()).isEqualTo(SpinTurns.How.MARKED);
    double turn_s =
        session.spins().get(0).turns().time_s().value() / session.spins().get(0).turns().turns();
    assertThat(session.count(0, 10, 10 * turn_s).problems()).isEmpty();
    assertThat(session.count(0, 10, 20 * turn_s).problems())
        .extracting(Problem::id)
        .containsExactly("beat.off-the-plan");
    assertThat(Files.readString(session.table())).contains(",600,1,10,");
  }

  private static <T> T value(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems);
        });
  }

  private static LiveSession session(Path into) {
    double fastest = Double.POSITIVE_INFINITY;
    Rehearsal rehearsal = new Rehearsal(RehearsalPlan.build(), SEED, fastest);
    return new LiveSession(
        rehearsal.input(),
        into,
        RehearsalPlan.preparation(RehearsalPlan.Length.SHORT),
        Optional.of(new RehearsalHand(rehearsal, RehearsalHand.Lead.GUIDE, SEED, fastest)),
        () -> 0);
  }
}
