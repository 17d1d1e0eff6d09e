package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.device.RawLog;
import faintwind.device.StillTime;
import faintwind.job.formula.OpenCalibration;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Eight hours over a connection that is cut in the middle of lines, by a logger whose clock is set
 * again and again and whose lines are garbled, in fast time over real sockets.
 */
@Timeout(300)
class SoakTest {
  private static final int ROWS = 8 * 3600 * 2;
  private static final Duration STEP = Duration.ofMillis(500);
  private static final long ALLOWED_GROWTH_BYTES = 3_000_000;
  private static final Path SHARED_MEMORY = Path.of("/dev/shm");
  private static final Path OPEN = Path.of("/proc/self/fd");
  private static final Path CALIBRATION = Path.of("src/test/resources/golden/calibration.json");

  @TempDir
  @SuppressWarnings("NullAway.Init")
  Path onDisk;

  private final StillTime time = new StillTime();
  private final Random random = new Random(20_261_129);
  private final List<Look> looks = new ArrayList<>();
  private final List<String> falseRows = new ArrayList<>();
  private int sent;
  private int cuts;
  private double clock_s = 5000;

  /** What the process holds. */
  private record Look(long bytes, long handles, int threads) {
    static Look now() {
      long least = Long.MAX_VALUE;
      for (int i = 0; i < 3; i++) {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
      }
      return new Look(least, openHandles(), ManagementFactory.getThreadMXBean().getThreadCount());
    }

    private static long openHandles() {
      try (Stream<Path> open = Files.isDirectory(OPEN) ? Files.list(OPEN) : Stream.empty()) {
        return open.count();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** A reading whose air tells which signal belongs to it. */
  private String line() {
    int at = sent++;
    clock_s += random.nextInt(2000) == 0 ? (random.nextBoolean() ? 1 : -1) * 40_000 : 0;
    double signal = 12 + (at % 1000) * 0.004;
    double air_C = 15 + (at % 1000) * 0.01;
    return String.format(Locale.ROOT, "%.1f,%.3f,%.2f%n", clock_s + at * 0.5, signal, air_C);
  }

  private void serve(ServerSocket server) {
    try {
      while (sent < ROWS) {
        try (Socket peer = server.accept()) {
          send(peer.getOutputStream());
        }
        cuts++;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Begins and ends in the middle of a line. */
  private void send(OutputStream out) throws IOException {
    StringBuilder text = new StringBuilder(sent == 0 ? "\ntime_s,delta_K,air_C\n" : "");
    String first = line();
    text.append(first.substring(1 + random.nextInt(first.length() - 1)));
    int count = 100 + random.nextInt(200);
    for (int i = 0; i < count && sent < ROWS; i++) {
      String line = line();
      boolean garbled = random.nextInt(300) == 0;
      text.append(garbled ? line.replace('.', ',') : line);
    }
    String last = line();
    text.append(last, 0, random.nextInt(last.length() - 1));
    out.write(text.toString().getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  private final class Ear implements LiveListener {
    private final LiveRecording recording;
    private int rows;

    Ear(LiveRecording recording) {
      this.recording = recording;
    }

    @Override
    public void row(LiveRow row) {
      rows++;
      double air_C = row.air().temperature_K().orElseThrow() - 273.15;
      double expected = 12 + (air_C - 15) * 0.4;
      if (Math.abs(row.signal().orElse(0) - expected) > 1e-6) {
        falseRows.add(row.toString());
      }
      time.pause(STEP);
      if (rows % (ROWS / 10) == 0) {
        looks.add(Look.now());
      }
    }

    @Override
    public void happened(LiveNews news) {
      if (news.kind() == LiveNews.Kind.RECONNECTING && sent >= ROWS) {
        try {
          recording.stop();
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
    }
  }

  /** In a process of its own: what other tests leave behind would count as growth. */
  @Test
  @Tag("long")
  void eightHoursOfCutsAndClocksThatAreSetNeedNoMoreThanTheFirst() throws Exception {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            SoakTest.class.getName(),
            onDisk.toString());
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    assertThat(said).contains("held");
  }

  /** The eight hours; what does not hold ends the process with its reason. */
  public static void main(String[] arguments) throws Exception {
    SoakTest soak = new SoakTest();
    soak.onDisk = Path.of(arguments[0]);
    soak.eightHours();
    System.out.println("held");
  }

  private void eightHours() throws Exception {
    Path place = Files.isWritable(SHARED_MEMORY) ? SHARED_MEMORY : onDisk;
    Path folder = Files.createTempDirectory(place, "faintwind");
    Path file = folder.resolve("soak.csv");
    LiveCount count;
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      Thread logger = new Thread(() -> serve(server), "test-logger");
      logger.start();
      count = recorded("tcp:127.0.0.1:" + server.getLocalPort(), server, file);
      logger.join();
    }
    assertThat(falseRows).isEmpty();
    assertThat(count.rows()).isGreaterThan(ROWS * 97L / 100);
    assertThat(count.gaps()).isGreaterThanOrEqualTo(cuts - 1);
    assertThat(RawLog.parts(RawLog.beside(file))).isNotEmpty();
    Look early = looks.get(0);
    Look late = looks.get(looks.size() - 1);
    assertThat(late.bytes() - early.bytes()).isLessThan(ALLOWED_GROWTH_BYTES);
    assertThat(late.handles()).isCloseTo(early.handles(), within(2L));
    assertThat(late.threads()).isCloseTo(early.threads(), within(1));
    RawLog.delete(RawLog.beside(file));
    Files.delete(file);
    Files.delete(folder);
  }

  private LiveCount recorded(String source, ServerSocket server, Path file) throws Exception {
    SourceAddress address = new SourceAddress.Tcp("127.0.0.1", server.getLocalPort());
    LiveInput input =
        OpenSource.lines(address, source, Optional.empty(), time)
            .fold((ok, notes) -> ok, p -> null);
    Calibration calibration = OpenCalibration.read(CALIBRATION).fold((ok, notes) -> ok, p -> null);
    LiveSpeed speed =
        LiveSpeed.of(calibration, input.head(), SpeedSettings.usual(calibration, LogAir.UNKNOWN))
            .fold((ok, notes) -> ok, p -> null);
    LiveRecording recording = new LiveRecording(input, file, Optional.of(speed), time);
    recording.listen(new Ear(recording));
    return recording.run().fold((ok, notes) -> ok, p -> null);
  }
}
