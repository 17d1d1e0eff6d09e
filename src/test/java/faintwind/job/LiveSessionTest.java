package faintwind.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.Run;
import faintwind.calibration.RunKind;
import faintwind.calibration.RunSet;
import faintwind.calibration.beat.SpinTurns;
import faintwind.guide.turntable.Advice;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
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

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  /** A whole rehearsal as fast as it can: recording, table, and a fit that says what it is. */
  @Test
  void rehearsalThatRunsByItselfLeavesRunsThatCanBeFittedAndSayWhatTheyAre() throws IOException {
    LiveSession session = session(RehearsalHand.Lead.GUIDE);
    runToTheEnd(session);
    assertThat(session.look().advice().action()).isEqualTo(Advice.Action.DONE);
    assertThat(session.spins()).hasSize(6);
    assertThat(session.spins())
        .allSatisfy(s -> assertThat(s.turns().how()).isEqualTo(SpinTurns.How.MARKED));

    Checked<RunSet> read = ReadRuns.read(session.table());
    System.out.println(read.problems());
    List<Run> runs = read.fold((set, notes) -> set.runs(), problems -> List.of());
    assertThat(runs).hasSize(9);
    assertThat(runs.stream().filter(r -> r.kind() == RunKind.SPIN))
        .hasSize(6)
        .allSatisfy(r -> assertThat(r.conditions().note()).startsWith("rehearsal"));
    Run first = runs.get(2);
    assertThat(first.arm().orElseThrow().speed_m_s()).isCloseTo(0.6, within(0.02));

    long start = System.nanoTime();
    Checked<Calibrate.Outcome> outcome =
        new Calibrate(
                Clock.fixed(Instant.parse("2026-11-21T12:00:00Z"), ZoneOffset.UTC),
                Messages.of(Locale.ENGLISH),
                new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty()))
            .of(session.table(), JobWatch.NOBODY);
    System.out.println((System.nanoTime() - start) / 1e9 + " s fit");
    outcome.problems().forEach(p -> System.out.println(Messages.of(Locale.ENGLISH).line(p)));
    Calibration made = outcome.fold((o, notes) -> o.calibration(), p -> failed(p));
    made.performance().speeds().forEach(s -> System.out.printf("%.3f %.4f%n", s.speed_m_s(), s.u95_m_s()/s.speed_m_s()));
    made.warnings().forEach(p -> System.out.println(Messages.of(Locale.ENGLISH).line(p)));
  }

  private static Calibration failed(List<Problem> problems) {
    throw new AssertionError(problems);
  }

  private LiveSession session(RehearsalHand.Lead lead) {
    Rehearsal rehearsal = new Rehearsal(RehearsalPlan.build(), SEED, Double.POSITIVE_INFINITY);
    return new LiveSession(
        rehearsal.input(),
        folder,
        RehearsalPlan.preparation(),
        Optional.of(new RehearsalHand(rehearsal, lead, SEED, Double.POSITIVE_INFINITY)),
        () -> 0);
  }

  private static void runToTheEnd(LiveSession session) throws IOException {
    session.run();
  }
}
