package faintwind.job.live;

import faintwind.calibration.live.LiveRow;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.profile.WallClock;
import faintwind.calibration.speed.SpeedRow;
import faintwind.device.Timekeeper;
import faintwind.files.run.RunFileWriter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/** The file of a live recording: begun with the first row, synced at least five times a second. */
final class LiveFile implements Closeable {
  private static final Duration LONGEST_UNSYNCED = Duration.ofMillis(200);

  private final Path file;
  private final LiveInput input;
  private final RunFileWriter.Columns columns;
  private final Timekeeper time;
  private final AtomicLong rows = new AtomicLong();
  private @Nullable RunFileWriter writer;
  private Instant synced = Instant.EPOCH;

  LiveFile(Path file, LiveInput input, boolean withSpeed, Timekeeper time) {
    this.file = file;
    this.input = input;
    this.columns = withSpeed ? RunFileWriter.Columns.WITH_SPEED : RunFileWriter.Columns.RECORDED;
    this.time = time;
  }

  long rows() {
    return rows.get();
  }

  void append(LiveRow row, Optional<SpeedRow> speed) throws IOException {
    RunFileWriter open = writer == null ? begin(row) : writer;
    open.append(row, speed);
    rows.incrementAndGet();
    if (Duration.between(synced, time.now()).compareTo(LONGEST_UNSYNCED) >= 0) {
      sync();
    }
  }

  private RunFileWriter begin(LiveRow first) throws IOException {
    Instant zero = first.received().minusNanos((long) (first.time_s() * 1e9));
    OffsetDateTime byArrival =
        zero.atZone(ZoneId.systemDefault()).toOffsetDateTime().truncatedTo(ChronoUnit.MILLIS);
    OffsetDateTime start = input.lines().flatMap(LiveFile::told).orElse(byArrival);
    RunFileWriter open = RunFileWriter.begin(file, input.head(), columns, start);
    writer = open;
    synced = time.now();
    return open;
  }

  /** A date as it stands; without an offset it is taken as one of this computer's zone. */
  private static Optional<OffsetDateTime> told(LineReader lines) {
    return lines
        .start()
        .or(
            () ->
                lines
                    .clock()
                    .filter(WallClock::isDated)
                    .map(c -> c.zero().atZone(ZoneId.systemDefault()).toOffsetDateTime()));
  }

  /** Brings what arrived to the disk. */
  void sync() throws IOException {
    if (writer != null) {
      writer.sync();
      synced = time.now();
    }
  }

  @Override
  public void close() throws IOException {
    if (writer != null) {
      writer.close();
    }
  }
}
