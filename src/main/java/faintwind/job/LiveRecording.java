package faintwind.job;

import faintwind.calibration.live.LiveGap;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.live.LiveSample;
import faintwind.device.SourceEvent;
import faintwind.device.Timekeeper;
import faintwind.files.RunFileWriter;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/**
 * Records a source into a run file while it is made. Each row is in the file before anybody hears
 * of it, and on the disk a fifth of a second later at most or when the source pauses; memory does
 * not grow with the length of the recording. The file begins with the first row.
 *
 * <p>{@link #run} works on the thread that calls it; {@link #stop} may be called from any other.
 */
public final class LiveRecording implements Closeable {
  private static final Duration LONGEST_UNSYNCED = Duration.ofMillis(200);

  private final LiveInput input;
  private final Path file;
  private final Timekeeper time;
  private final List<LiveListener> listeners = new CopyOnWriteArrayList<>();
  private @Nullable RunFileWriter writer;
  private Optional<LiveGap> gap = Optional.empty();
  private Instant synced = Instant.MIN;
  private double last_s = Double.NEGATIVE_INFINITY;
  private final AtomicLong rows = new AtomicLong();
  private volatile boolean stopped;

  /**
   * A recording of one source into one file, which is replaced where it is there.
   *
   * @param input the source and what it gives
   * @param file where the rows go
   */
  public LiveRecording(LiveInput input, Path file) {
    this(input, file, Timekeeper.system());
  }

  LiveRecording(LiveInput input, Path file, Timekeeper time) {
    this.input = input;
    this.file = file;
    this.time = time;
  }

  /** From now on this one hears of it too. */
  public void listen(LiveListener listener) {
    listeners.add(listener);
  }

  /** The run file. */
  public Path file() {
    return file;
  }

  /** Rows in the file so far. */
  public long rows() {
    return rows.get();
  }

  /**
   * Records until the source ends, {@link #stop} is called or the thread is interrupted.
   *
   * @return the number of rows; with none there is no file
   * @throws IOException where the source cannot be had, or the disk fails; what arrived stays
   */
  public long run() throws IOException {
    try {
      boolean more = true;
      while (more && !stopped) {
        more = take(input.source().next());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      close();
    }
    return rows.get();
  }

  /** Ends the recording after the row that is being written. */
  public void stop() throws IOException {
    stopped = true;
    input.source().close();
  }

  private boolean take(SourceEvent event) throws IOException {
    if (event instanceof SourceEvent.Reading reading) {
      row(reading.sample(), reading.received());
    } else if (event instanceof SourceEvent.Lost lost) {
      broken(lost.gap(), lost.received());
    } else if (event instanceof SourceEvent.Connected) {
      tell(LiveNews.Kind.CONNECTED, event.received(), "live.connected");
    } else if (event instanceof SourceEvent.Reconnecting away) {
      sync();
      String wait_s = String.valueOf(Math.max(1, away.retryIn().toSeconds()));
      tell(LiveNews.Kind.RECONNECTING, away.received(), "live.reconnecting", away.why(), wait_s);
    } else if (event instanceof SourceEvent.Ended) {
      sync();
      tell(LiveNews.Kind.ENDED, event.received(), "live.ended", String.valueOf(rows));
      return false;
    }
    return true;
  }

  private void row(LiveSample sample, Instant received) throws IOException {
    double time_s = sample.time_s().orElse(last_s);
    if (time_s <= last_s) {
      return;
    }
    last_s = time_s;
    LiveRow row =
        new LiveRow(
            time_s,
            sample.signal(),
            sample.air(),
            sample.supply_V(),
            sample.terminal_K(),
            gap,
            received);
    gap = Optional.empty();
    RunFileWriter open = writer == null ? begin(row) : writer;
    open.append(row);
    rows.incrementAndGet();
    if (Duration.between(synced, time.now()).compareTo(LONGEST_UNSYNCED) >= 0) {
      sync();
    }
    listeners.forEach(listener -> listener.row(row));
  }

  private RunFileWriter begin(LiveRow first) throws IOException {
    Instant zero = first.received().minusNanos((long) (first.time_s() * 1e9));
    OffsetDateTime start = zero.atZone(ZoneId.systemDefault()).toOffsetDateTime();
    RunFileWriter open = RunFileWriter.begin(file, input.head(), start);
    writer = open;
    synced = time.now();
    return open;
  }

  private void broken(LiveGap why, Instant at) {
    gap = Optional.of(why);
    tell(LiveNews.Kind.GAP, at, "live.gap-" + why.word());
  }

  private void sync() throws IOException {
    if (writer != null) {
      writer.sync();
      synced = time.now();
    }
  }

  private void tell(LiveNews.Kind kind, Instant at, String id, String... words) {
    String found = words.length == 0 ? "" : words[0];
    List<String> details = words.length == 0 ? List.of() : List.of(words).subList(1, words.length);
    Where where = Where.file(input.head().source());
    LiveNews news =
        new LiveNews(kind, Problem.warning(id, where, found, details.toArray(String[]::new)), at);
    listeners.forEach(listener -> listener.happened(news));
  }

  /** Closes source and file; what arrived stays. */
  @Override
  public void close() throws IOException {
    input.source().close();
    if (writer != null) {
      writer.close();
    }
  }
}
