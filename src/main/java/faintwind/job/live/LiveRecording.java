package faintwind.job.live;

import faintwind.calibration.live.LiveGap;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.live.LiveSample;
import faintwind.calibration.live.RecordClock;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.speed.SpeedRow;
import faintwind.device.RawLog;
import faintwind.device.SourceEvent;
import faintwind.device.Timekeeper;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Records a source into a run file while it is made. Each row is in the file before anybody hears
 * of it, and on the disk a fifth of a second later at most or when the source pauses; memory does
 * not grow with the length of the recording. The file begins with the first row. What was lost is
 * marked in the row after it, never filled in. Beside it stands every byte that arrived, see {@link
 * RawLog}.
 *
 * <p>{@link #run} works on the thread that calls it; {@link #stop} may be called from any other.
 */
public final class LiveRecording implements Closeable {
  private final LiveInput input;
  private final Path file;
  private final Optional<LiveLines> lines;
  private final Optional<LiveSpeed> speed;
  private final RecordClock clock;
  private final LiveFile out;
  private final Optional<RawLog> raw;
  private final LiveDoor door;
  private final NewsGate gate = new NewsGate();
  private final List<LiveListener> listeners = new CopyOnWriteArrayList<>();
  private Optional<LiveGap> gap = Optional.empty();
  private long gaps;
  private long doubled;
  private volatile boolean stopped;

  /**
   * A recording of one source into one file, which is replaced where it is there.
   *
   * @param input the source and what it gives
   * @param file where the rows go
   */
  public LiveRecording(LiveInput input, Path file) {
    this(input, file, Optional.empty(), Timekeeper.system());
  }

  /** The same with the air speed of each row beside it. */
  public LiveRecording(LiveInput input, Path file, LiveSpeed speed) {
    this(input, file, Optional.of(speed), Timekeeper.system());
  }

  LiveRecording(LiveInput input, Path file, Optional<LiveSpeed> speed, Timekeeper time) {
    this.input = input;
    this.file = file;
    this.lines = input.lines().map(LiveLines::new);
    this.speed = speed;
    this.clock = new RecordClock(input.arrival());
    this.out = new LiveFile(file, input, speed.isPresent(), time);
    this.door = new LiveDoor(input.head(), input.possible());
    this.raw = input.raw().map(tap -> new RawLog(RawLog.beside(file), input.head().source()));
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
    return out.rows();
  }

  /**
   * Records until the source ends, {@link #stop} is called or the thread is interrupted.
   *
   * @return what it came to; refused where nothing was recorded (then there is no file), with what
   *     did not fit the profile
   * @throws IOException where the source cannot be had, or the disk fails; what arrived stays
   */
  public Checked<LiveCount> run() throws IOException {
    try {
      keepRaw();
      boolean more = true;
      while (more && !stopped) {
        more = take(input.source().next());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (UncheckedIOException e) {
      throw e.getCause(); // the disk, while bytes arrived
    } finally {
      close();
    }
    if (rows() == 0 && raw.isPresent()) {
      RawLog.delete(RawLog.beside(file));
    }
    long unreadable = lines.map(LiveLines::unreadable).orElse(0L);
    long spread = input.lines().map(LineReader::spread).orElse(0L);
    return rows() == 0
        ? Checked.refused(nothing(unreadable))
        : Checked.ok(new LiveCount(rows(), gaps, unreadable, door.leftOut(), spread, doubled));
  }

  private void keepRaw() throws IOException {
    if (raw.isPresent()) {
      RawLog.delete(RawLog.beside(file));
      input.raw().orElseThrow().to(raw.get());
    }
  }

  private List<Problem> nothing(long unreadable) {
    List<Problem> all = new ArrayList<>();
    Where where = Where.file(input.head().source());
    all.add(
        unreadable == 0
            ? Problem.error("live.nothing-arrived", where, "")
            : Problem.error("live.nothing-fits", where, String.valueOf(unreadable)));
    lines.ifPresent(l -> all.addAll(l.unfit()));
    return all;
  }

  /** Ends the recording after the row that is being written. */
  public void stop() throws IOException {
    stopped = true;
    input.source().close();
  }

  private boolean take(SourceEvent event) throws IOException {
    Instant at = event.received();
    if (event instanceof SourceEvent.Line line) {
      return line(line);
    } else if (event instanceof SourceEvent.Reading reading) {
      row(reading.sample(), List.of(), at);
    } else if (event instanceof SourceEvent.Lost lost) {
      broken(lost.gap(), at);
    } else if (event instanceof SourceEvent.Connected) {
      tell(LiveNews.Kind.CONNECTED, at, warning("live.connected", ""));
    } else if (event instanceof SourceEvent.Reconnecting away) {
      out.sync();
      String wait_s = String.valueOf(Math.max(1, away.retryIn().toSeconds()));
      tell(LiveNews.Kind.RECONNECTING, at, warning("live.reconnecting", away.why(), wait_s));
    } else if (event instanceof SourceEvent.Ended) {
      out.sync();
      tell(LiveNews.Kind.ENDED, at, warning("live.ended", String.valueOf(rows())));
      return false;
    }
    return true;
  }

  private boolean line(SourceEvent.Line line) throws IOException {
    LiveLines reading =
        lines.orElseThrow(() -> new IllegalStateException("lines without a profile"));
    Optional<LiveSample> sample = reading.read(line);
    if (sample.isPresent()) {
      row(sample.get(), reading.notes(), line.received());
    } else if (!reading.latest().isEmpty()) {
      unreadable(reading.latest().get(0), line.received());
    }
    return !reading.fitsNothing();
  }

  private void unreadable(Problem why, Instant at) {
    if (rows() > 0) {
      gap = Optional.of(gap.orElse(LiveGap.GARBLED));
    }
    tell(LiveNews.Kind.UNREADABLE, at, why.as(Severity.WARNING));
  }

  private void row(LiveSample read, List<Problem> notes, Instant received) throws IOException {
    Optional<RecordClock.Placed> placed = clock.place(read.time_s(), received);
    if (placed.isEmpty()) {
      doubled++;
      tell(LiveNews.Kind.UNREADABLE, received, warning("live.same-time", ""));
      return;
    }
    // what the source said of a break says more than that it was long
    placed
        .get()
        .gap()
        .filter(found -> found != LiveGap.SILENT || gap.isEmpty())
        .ifPresent(found -> broken(found, received));
    LiveSample sample = door.let(read, notes);
    door.latest().forEach(note -> tell(LiveNews.Kind.UNREADABLE, received, note));
    gaps += gap.isPresent() ? 1 : 0;
    Optional<LiveGap> odd =
        door.latest().isEmpty() ? Optional.empty() : Optional.of(LiveGap.IMPOSSIBLE);
    LiveRow row =
        new LiveRow(
            placed.get().time_s(),
            sample.signal(),
            sample.air(),
            sample.supply_V(),
            sample.terminal_K(),
            gap.or(() -> odd),
            received);
    gap = Optional.empty();
    Optional<SpeedRow> found = speed.map(s -> s.next(row));
    out.append(row, found);
    listeners.forEach(listener -> listener.row(row));
    found.ifPresent(f -> listeners.forEach(listener -> listener.speed(row, f)));
  }

  private void broken(LiveGap why, Instant at) {
    gap = Optional.of(why);
    String id = "live.gap-" + why.word();
    tell(LiveNews.Kind.GAP, at, warning(id, ""));
  }

  private Problem warning(String id, String found, String... details) {
    return Problem.warning(id, Where.file(input.head().source()), found, details);
  }

  private void tell(LiveNews.Kind kind, Instant at, Problem problem) {
    if (gate.opens(kind + problem.id(), at)) {
      LiveNews news = new LiveNews(kind, problem, at);
      listeners.forEach(listener -> listener.happened(news));
    }
  }

  /** Closes source and file; what arrived stays. */
  @Override
  public void close() throws IOException {
    input.source().close();
    out.close();
    if (raw.isPresent()) {
      raw.get().close();
    }
  }
}
