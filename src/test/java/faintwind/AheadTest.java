package faintwind;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.files.calibration.CalibrationFile;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What is prepared on a second thread never changes what the first does, and never hangs it. */
@Timeout(240)
class AheadTest {
  private static final Path CALIBRATION =
      Path.of("demo-projects", "cellar", "calibrations", "2026-09-13.json");

  @Test
  void waitsUntilAllIsDone() {
    Thread first = Thread.currentThread();
    AtomicBoolean done = new AtomicBoolean();
    Ahead ahead =
        Ahead.of(
            () -> {
              while (first.getState() != Thread.State.WAITING) {
                Thread.onSpinWait();
              }
              done.set(true);
            });
    ahead.await();
    assertThat(done).isTrue();
  }

  @Test
  void whatFailsIsLeftToWhoNeedsIt() {
    PrintStream usual = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
    try {
      Ahead ahead =
          Ahead.of(
              () -> {
                throw new ExceptionInInitializerError("broken");
              });
      ahead.await();
      ahead.await();
    } finally {
      System.setErr(usual);
    }
    assertThat(said.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  @Test
  void whoIsInterruptedDoesNotWait() {
    CountDownLatch never = new CountDownLatch(1);
    Ahead ahead =
        Ahead.of(
            () -> {
              try {
                never.await();
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            });
    Thread.currentThread().interrupt();
    ahead.await();
    assertThat(Thread.interrupted()).isTrue();
    never.countDown();
    ahead.await();
  }

  @Test
  void onlyAConversionIsPrepared() {
    for (String first : new String[] {"check", "--help", "", "converts"}) {
      assertThat(Ahead.isOfUse(2, first)).as(first).isFalse();
    }
    assertThat(Ahead.isOfUse(2)).isFalse();
    assertThat(Ahead.isOfUse(2, "convert", "calibration.json")).isTrue();
    assertThat(Ahead.isOfUse(1, "convert", "calibration.json")).isFalse();
    assertThat(Ahead.isOfUse(2, "convert", "--help")).isFalse();
    assertThat(Ahead.isOfUse(2, "convert", "-h")).isFalse();
  }

  @Test
  void aReadingThatBeginsMeanwhileIsTheSame() throws Exception {
    byte[] alone = read();
    Ahead ahead = Ahead.of(OpenCalibration::prepare);
    assertThat(read()).isEqualTo(alone);
    ahead.await();
    assertThat(read()).isEqualTo(alone);
  }

  private static byte[] read() throws IOException {
    Checked<Calibration> read = OpenCalibration.read(CALIBRATION);
    return CalibrationFile.bytes(((Checked.Ok<Calibration>) read).value());
  }

  /** Classes that begin on two threads at once, each time anew and at another moment. */
  @Tag("long")
  @Test
  void noTwoClassesWaitForOneAnother() throws Exception {
    URL[] path =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(AheadTest::url)
            .toArray(URL[]::new);
    Random random = new Random(7);
    for (int round = 0; round < 6; round++) {
      try (URLClassLoader fresh = new URLClassLoader(path, ClassLoader.getPlatformClassLoader())) {
        int later_ms = random.nextInt(120) - 60;
        FutureTask<Object> second =
            new FutureTask<>(
                () -> {
                  sleep(Duration.ofMillis(Math.max(0, later_ms)));
                  Class<?> open = fresh.loadClass(OpenCalibration.class.getName());
                  return open.getMethod("prepare").invoke(null);
                });
        FutureTask<Object> first =
            new FutureTask<>(
                () -> {
                  sleep(Duration.ofMillis(Math.max(0, -later_ms)));
                  return begun(fresh);
                });
        start(first, fresh);
        start(second, fresh);
        second.get(60, TimeUnit.SECONDS);
        assertThat(first.get(60, TimeUnit.SECONDS)).as("round %d", round).isEqualTo(2);
      }
    }
  }

  /** The command line of a conversion without its log: refused by the command line itself. */
  private static Object begun(ClassLoader fresh) throws Exception {
    Class<?> spoken = fresh.loadClass("faintwind.job.language.Spoken");
    Object system =
        spoken
            .getMethod("bySystem", Locale.class, Path.class)
            .invoke(null, Locale.ENGLISH, Path.of("."));
    Object words = spoken.getMethod("words").invoke(system);
    Class<?> terminal = fresh.loadClass("faintwind.terminal.Terminal");
    Object quiet =
        terminal
            .getMethod(
                "of", InputStream.class, OutputStream.class, OutputStream.class, words.getClass())
            .invoke(
                null,
                new ByteArrayInputStream(new byte[0]),
                new ByteArrayOutputStream(),
                new ByteArrayOutputStream(),
                words);
    return fresh
        .loadClass(Main.class.getName())
        .getMethod("run", terminal, String[].class)
        .invoke(null, quiet, new String[] {"convert", CALIBRATION.toString()});
  }

  private static void start(FutureTask<?> task, ClassLoader loader) {
    Thread thread = new Thread(task);
    thread.setContextClassLoader(loader);
    thread.setDaemon(true);
    thread.start();
  }

  private static URL url(String path) {
    try {
      return Path.of(path).toUri().toURL();
    } catch (MalformedURLException e) {
      throw new IllegalArgumentException(path, e);
    }
  }

  private static void sleep(Duration time) {
    try {
      Thread.sleep(time.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
