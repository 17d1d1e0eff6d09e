package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.live.SourceAddress;
import faintwind.device.PlayedLink;
import faintwind.device.RawLog;
import faintwind.device.RawTap;
import faintwind.device.StillTime;
import faintwind.job.live.FaultyStream.Fault;
import faintwind.job.live.FaultyStream.Truth;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Streams spoiled in four ways: no row is false, and few true ones are lost. */
class FaultyStreamTest {
  private static final int STREAMS = 12;
  private static final int ROWS = 150;
  private static final double TOLERANCE_S = 2.1;

  /** In memory where there is such a folder: every row is brought to the disk. */
  private static final Path SHARED_MEMORY = Path.of("/dev/shm");

  @TempDir Path folder;

  private Path place() {
    return Files.isWritable(SHARED_MEMORY) ? SHARED_MEMORY : folder;
  }

  /** What a stream came to. */
  private record Outcome(int kept, List<String> falseRows, int gaps) {}

  @ParameterizedTest
  @EnumSource(Fault.class)
  void noRowIsFalse(Fault fault) throws Exception {
    List<String> falseRows = new ArrayList<>();
    for (int seed = 1; seed <= STREAMS; seed++) {
      FaultyStream stream = new FaultyStream(fault, seed, ROWS, true);
      Outcome outcome = judged(stream, seed);
      falseRows.addAll(outcome.falseRows());
      boolean whole = fault == Fault.REPEATED_STAMPS || fault == Fault.CLOCK_SET;
      assertThat(outcome.kept()).isGreaterThanOrEqualTo(whole ? ROWS : ROWS * 3 / 4);
      if (fault == Fault.CLOCK_SET) {
        assertThat(outcome.gaps()).isEqualTo(stream.set);
      } else if (fault == Fault.REPEATED_STAMPS) {
        assertThat(outcome.gaps()).isZero();
      }
    }
    assertThat(falseRows).isEmpty();
  }

  private Outcome judged(FaultyStream stream, int seed) throws Exception {
    Path file = Files.createTempDirectory(place(), "faintwind").resolve("log.csv");
    record(stream, file);
    List<String> rows = Files.readAllLines(file).stream().filter(r -> !r.startsWith("#")).toList();
    Files.delete(file);
    RawLog.delete(RawLog.beside(file));
    Files.delete(file.getParent());
    List<String> falseRows = new ArrayList<>();
    int gaps = 0;
    double before_s = Double.NaN;
    double beforeTrue_s = Double.NaN;
    for (String row : rows.subList(1, rows.size())) {
      String[] cells = row.split(",", -1);
      Optional<Truth> truth = truth(stream.measured, cells);
      double time_s = Double.parseDouble(cells[0]);
      boolean gap = !cells[4].isEmpty();
      gaps += gap ? 1 : 0;
      double true_s = truth.map(Truth::true_s).orElse(Double.NaN);
      double off_s = (time_s - before_s) - (true_s - beforeTrue_s);
      if (truth.isEmpty() || time_s <= before_s || (!gap && Math.abs(off_s) > TOLERANCE_S)) {
        falseRows.add("stream " + seed + ": " + row);
      }
      before_s = time_s;
      beforeTrue_s = true_s;
    }
    return new Outcome(rows.size() - 1, falseRows, gaps);
  }

  /** Measured just so: signal, air and supply of one and the same row. */
  private static Optional<Truth> truth(Map<String, Truth> measured, String[] cells) {
    return measured.values().stream()
        .filter(t -> same(t.cells().get(0), cells[1]))
        .filter(t -> same(t.cells().get(1), cells[2]) && same(t.cells().get(2), cells[3]))
        .findFirst();
  }

  private static boolean same(String written, String recorded) {
    return !recorded.isEmpty()
        && Math.abs(Double.parseDouble(written) - Double.parseDouble(recorded)) < 1e-6;
  }

  private static void record(FaultyStream stream, Path file)
      throws IOException, InterruptedException {
    StillTime time = new StillTime();
    RawTap tap = RawTap.holding();
    LiveInput input =
        new OpenSource(
                new SourceAddress.Tcp("localhost", 1),
                "tcp:localhost:1",
                PlayedLink.of(stream.pieces, time, tap),
                tap)
            .lines(Optional.empty())
            .fold((ok, notes) -> ok, p -> null);
    new LiveRecording(input, file, Optional.empty(), time).run();
  }
}
