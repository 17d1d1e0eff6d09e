package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Provenance;
import faintwind.calibration.run.SignalUnit;
import faintwind.guide.turntable.Advice.Action;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchSourceTest {

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  /** A measured source takes the same path as a rehearsal, and is not marked as one. */
  @Test
  void sessionOnAGrowingFileIsRecordedAndGuided() throws Exception {
    Path log = folder.resolve("log.csv");
    StringBuilder rows = new StringBuilder("time_s,delta_K\n");
    for (int i = 0; i < 300; i++) {
      rows.append(i).append(',').append(i % 2 == 0 ? "0.01" : "0.02").append('\n');
    }
    Files.writeString(log, rows);
    LiveInput input = value(BenchSource.open("file:" + log + "?from=start", Optional.empty()));
    assertThat(input.head().provenance()).isEqualTo(Provenance.MEASURED);
    assertThat(input.head().unit()).isEqualTo(SignalUnit.DELTA_K);
    LiveSession session =
        new LiveSession(
            input,
            folder,
            RehearsalPlan.preparation(RehearsalPlan.Length.SHORT),
            Optional.empty(),
            () -> 0);
    Thread reading = new Thread(() -> run(session), "test-session");
    reading.start();
    try {
      assertThat(settles(session)).isTrue();
      assertThat(session.look().advice().troubles()).isEmpty();
      session.did();
      assertThat(session.look().advice().action()).isEqualTo(Action.WARMING);
      assertThat(Files.readString(session.table()))
          .contains("zero,session.csv")
          .doesNotContain("rehearsal");
    } finally {
      session.stop();
      reading.join();
    }
  }

  private static boolean settles(LiveSession session) {
    long end = System.nanoTime() + 20_000_000_000L;
    while (session.look().advice().action() != Action.SWITCH_ON && System.nanoTime() < end) {
      Thread.onSpinWait();
    }
    return session.look().advice().action() == Action.SWITCH_ON;
  }

  private static void run(LiveSession session) {
    try {
      session.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void sourcesThatAreNoLinesAreRefused() throws IOException {
    assertThat(BenchSource.open("typed:?every_s=30&unit=mV", Optional.empty()).problems())
        .extracting(Problem::id)
        .containsExactly("turntable.live.not-lines");
    assertThat(BenchSource.open("nonsense", Optional.empty()).problems())
        .extracting(Problem::id)
        .containsExactly("source.unknown");
  }

  private static <T> T value(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems);
        });
  }
}
