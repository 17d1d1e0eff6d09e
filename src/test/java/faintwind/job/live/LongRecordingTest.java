package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.RecordClock.Arrival;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.run.Possible;
import faintwind.device.SampleSource;
import faintwind.device.SourceEvent;
import faintwind.device.StillTime;
import faintwind.files.asset.ProfileFile;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LongRecordingTest {
  private static final int LINES_A_SECOND = 200;
  private static final int HOUR = 3600 * LINES_A_SECOND;
  private static final long ALLOWED_GROWTH_BYTES = 3_000_000;

  /** In memory where there is such a folder: 18 000 syncs to a disk would take minutes. */
  private static final Path SHARED_MEMORY = Path.of("/dev/shm");

  @TempDir Path onDisk;

  private final StillTime time = new StillTime();
  private long early_bytes;
  private long late_bytes;

  /** Lines in fast time, every thousandth of them garbled, with looks at the memory. */
  private final class Lines implements SampleSource {
    private final int count;
    private final StringBuilder text = new StringBuilder();
    private int line;

    Lines(int count) {
      this.count = count;
    }

    @Override
    public SourceEvent next() {
      if (line == count / 10) {
        early_bytes = used_bytes();
      }
      if (line == count) {
        late_bytes = used_bytes();
        return new SourceEvent.Ended(time.now());
      }
      time.pause(Duration.ofNanos(1_000_000_000L / LINES_A_SECOND));
      text.setLength(0);
      text.append(line * 5).append("e-3,1.").append(line % 1000);
      text.append(line % 1000 == 999 ? "?" : "");
      line++;
      return new SourceEvent.Line(text.toString(), SourceEvent.Wholeness.WHOLE, time.now());
    }

    @Override
    public void close() {}
  }

  private static long used_bytes() {
    Runtime runtime = Runtime.getRuntime();
    long least = Long.MAX_VALUE;
    for (int i = 0; i < 3; i++) {
      System.gc();
      least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
    }
    return least;
  }

  @Test
  @Tag("slow")
  void anHourOf200LinesASecondNeedsNoMoreMemoryThanItsFirstMinutes() throws IOException {
    record(HOUR);
  }

  @Test
  void aTwelfthOfAnHourDoesNotEither() throws IOException {
    record(HOUR / 12);
  }

  private void record(int count) throws IOException {
    String name = "assets/profiles/seconds-millivolts.json";
    ImportProfile profile =
        ProfileFile.read(Path.of(name), name).fold((ok, notes) -> ok, p -> null);
    LiveHead head =
        new LiveHead(profile.unit(), profile.liveColumns(), Provenance.MEASURED, "test");
    LineReader reader = new LineReader(profile, LineReader.Begin.STREAM, "test");
    LiveInput input =
        new LiveInput(
            new Lines(count),
            head,
            Optional.of(reader),
            Arrival.LIVE,
            Possible.of(profile.unit()),
            Optional.empty());
    Path folder =
        Files.isWritable(SHARED_MEMORY)
            ? Files.createTempDirectory(SHARED_MEMORY, "faintwind")
            : onDisk;
    Path file = folder.resolve("hour.csv");
    LiveRecording recording = new LiveRecording(input, file, Optional.empty(), time);
    Heard heard = new Heard();
    recording.listen(heard);

    int garbled = count / 1000;
    Checked<LiveCount> done = recording.run();

    assertThat(done).isEqualTo(Checked.ok(new LiveCount(count - garbled, garbled - 1, garbled)));
    assertThat(late_bytes - early_bytes).isLessThan(ALLOWED_GROWTH_BYTES);
    // told now and then, not each time
    assertThat(heard.news).hasSizeLessThan(800);
    try (var lines = Files.lines(file)) {
      assertThat(lines.filter(line -> line.endsWith(",garbled")).count()).isEqualTo(garbled - 1);
    }
    Files.delete(file);
    if (!folder.equals(onDisk)) {
      Files.delete(folder);
    }
  }
}
