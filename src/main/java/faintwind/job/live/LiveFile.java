package faintwind.job.live;

import faintwind.calibration.live.LiveRow;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.profile.WallClock;
import faintwind.calibration.speed.SpeedRow;
import faintwind.device.Timekeeper;
import faintwind.files.run.OwnedFile;
import faintwind.files.run.RunFileWriter;
import faintwind.files.run.TableForm;
import faintwind.job.OutputPath;
import java.io.Closeable;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/**
 * The file of a live recording: made at the start, its header with the first row, synced at least
 * five times a second.
 */
final class LiveFile implements Closeable {
  private static final Duration LONGEST_UNSYNCED = Duration.ofMillis(200);

  private final OutputPath out;
  private final LiveInput input;
  private final RunFileWriter.Columns columns;
  private final Timekeeper time;
  private final AtomicLong rows = new AtomicLong();
  private volatile @Nullable OwnedFile owned;
  private @Nullable RunFileWriter writer;
  private TableForm form = TableForm.POINTS;
  private Instant synced = Instant.EPOCH;

  LiveFile(OutputPath out, LiveInput input, boolean withSpeed, Timekeeper time) {
    this.out = out;
    this.input = input;
    this.columns = withSpeed ? RunFileWriter.Columns.WITH_SPEED : RunFileWriter.Columns.RECORDED;
    this.time = time;
  }

  /** Before the first row: with semicolons and decimal commas. */
  void withCommas() {
    form = TableForm.COMMAS;
  }

  /** From now on the file is this recording's. */
  void take() throws IOException {
    boolean keep = out.existing() == OutputPath.Existing.KEEP;
    owned = OwnedFile.take(out.path(), keep ? OwnedFile.Existing.KEEP : OwnedFile.Existing.REPLACE);
  }

  private OwnedFile owned() {
    OwnedFile taken = owned;
    if (taken == null) {
      throw new IllegalStateException("not taken");
    }
    return taken;
  }

  /** Whether the file was deleted or replaced; may be asked from any thread. */
  boolean isLost() throws IOException {
    OwnedFile taken = owned;
    return taken != null && !taken.isOurs();
  }

  /** Keeps the rows of a lost file under another name, and says so. */
  IOException lost() throws IOException {
    return owned().rescued();
  }

  long rows() {
    return rows.get();
  }

  void append(LiveRow row, List<String> others, Optional<SpeedRow> speed) throws IOException {
    RunFileWriter open = writer == null ? begin(row) : writer;
    open.append(row, others, speed);
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
    RunFileWriter open = RunFileWriter.begin(owned(), input.head(), columns, start, form);
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

  /** Closes it; one without a row goes. */
  @Override
  public void close() throws IOException {
    OwnedFile taken = owned;
    if (taken != null) {
      taken.close();
      owned = null;
      if (rows() == 0) {
        taken.delete();
      }
    }
  }
}
