package faintwind.job.live;

import faintwind.calibration.live.LiveGap;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.live.LiveSample;
import faintwind.calibration.live.RecordClock;
import faintwind.calibration.profile.LineOutcome;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.speed.SpeedRow;
import faintwind.device.RawLog;
import faintwind.device.SourceEvent;
import faintwind.device.Timekeeper;
import faintwind.job.OutputPath;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Records a source into a run file while it is made. Each row is in the file before anybody hears
 * of it, and on the disk a fifth of a second later at most or when the source pauses; memory does
 * not grow with the length of the recording. The file is this recording's alone. What was lost is
 * marked in the row after it, never filled in. Beside it stands every byte that arrived, see {@link
 * RawLog}.
 *
 * <p>{@link #run} works on the thread that calls it; {@link #stop} may be called from any other.
 */
public final class LiveRecording implements Closeable {
  private final LiveInput input;
  private final OutputPath file;
  private final Optional<LiveLines> lines;
  private final Optional<LiveSpeed> speed;
  private final RecordClock clock;
  private final LiveFile out;
  private final Optional<RawLog> raw;
  private final LiveDoor door;
  private final LiveEars ears;
  private Optional<LiveGap> gap = Optional.empty();
  private long gaps;
  private long doubled;
  private volatile boolean stopped;

  /**
   * A recording of one source into one file.
   *
   * @param input the source and what it gives
   * @param file where the rows go; made when the recording begins
   */
  public LiveRecording(LiveInput input, OutputPath file) {
    this(input, file, Optional.empty(), Timekeeper.system());
  }

  /** The same with the air speed of each row beside it. */
  public LiveRecording(LiveInput input, OutputPath file, LiveSpeed speed) {
    this(input, file, Optional.of(speed), Timekeeper.system());
  }

  LiveRecording(LiveInput input, Path file, Optional<LiveSpeed> speed, Timekeeper time) {
    this(input, new OutputPath(file, OutputPath.Existing.KEEP), speed, time);
  }

  private LiveRecording(
      LiveInput input, OutputPath file, Optional<LiveSpeed> speed, Timekeeper time) {
    this.input = input;
    this.file = file;
    this.lines = input.lines().map(l -> new LiveLines(l, input.head().others()));
    this.speed = speed;
    this.clock = new RecordClock(input.arrival());
    this.out = new LiveFile(file, input, speed.isPresent(), time);
    this.ears = new LiveEars(input.head().source());
    this.door = new LiveDoor(input.head(), input.possible());
    this.raw =
        input.raw().map(tap -> new RawLog(RawLog.beside(file.path()), input.head().source()));
  }

  /** From now on this one hears of it too. */
  public void listen(LiveListener listener) {
    ears.add(listener);
  }

  /** Before it runs: its file has semicolons and decimal commas. */
  public void writeCommas() {
    out.withCommas();
  }

  /** The run file. */
  public Path file() {
    return file.path();
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
   * @throws IOException where the file is there or somebody records into it, where it is deleted or
   *     replaced meanwhile (its rows are kept under another name), where the source cannot be had,
   *     or the disk fails; what arrived stays
   */
  public Checked<LiveCount> run() throws IOException {
    try {
      out.take();
      keepRaw();
      record();
      if (out.isLost()) {
        throw out.lost();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (UncheckedIOException e) {
      throw e.getCause(); // the disk, while bytes arrived
    } finally {
      close();
    }
    if (rows() == 0 && raw.isPresent()) {
      RawLog.delete(RawLog.beside(file()));
    }
    long unreadable = lines.map(LiveLines::unreadable).orElse(0L);
    long spread = input.lines().map(LineReader::spread).orElse(0L);
    return rows() == 0
        ? Checked.refused(nothing(unreadable))
        : Checked.ok(new LiveCount(rows(), gaps, unreadable, door.leftOut(), spread, doubled));
  }

  private void record() throws IOException, InterruptedException {
    FileWatch watch = new FileWatch(out, input);
    try {
      boolean more = true;
      while (more && !stopped) {
        more = take(input.source().next());
      }
    } finally {
      watch.close();
    }
  }

  private void keepRaw() throws IOException {
    if (raw.isPresent()) {
      List<Path> there = RawLog.parts(RawLog.beside(file()));
      if (!there.isEmpty() && file.existing() == OutputPath.Existing.KEEP) {
        throw new FileAlreadyExistsException(there.get(0).toString());
      }
      RawLog.delete(RawLog.beside(file()));
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
      row(new LineOutcome.Row(reading.sample(), List.of(), List.of()), at);
    } else if (event instanceof SourceEvent.Lost lost) {
      broken(lost.gap(), at);
    } else if (event instanceof SourceEvent.Connected) {
      ears.tell(LiveNews.Kind.CONNECTED, at, "live.connected", "");
    } else if (event instanceof SourceEvent.Reconnecting away) {
      out.sync();
      String wait_s = String.valueOf(Math.max(1, away.retryIn().toSeconds()));
      ears.tell(LiveNews.Kind.RECONNECTING, at, "live.reconnecting", away.why(), wait_s);
    } else if (event instanceof SourceEvent.OtherSender sender) {
      ears.tell(LiveNews.Kind.OTHER_SENDER, at, "live.other-sender", sender.other(), sender.kept());
    } else if (event instanceof SourceEvent.Ended) {
      out.sync();
      if (out.isLost()) {
        return false;
      }
      ears.tell(LiveNews.Kind.ENDED, at, "live.ended", String.valueOf(rows()));
      return false;
    }
    return true;
  }

  private boolean line(SourceEvent.Line line) throws IOException {
    LiveLines reading =
        lines.orElseThrow(() -> new IllegalStateException("lines without a profile"));
    Optional<LineOutcome.Row> row = reading.read(line);
    if (row.isPresent()) {
      row(row.get(), line.received());
    } else if (!reading.latest().isEmpty()) {
      unreadable(reading.latest().get(0), line.received());
    }
    return !reading.fitsNothing();
  }

  private void unreadable(Problem why, Instant at) {
    if (rows() > 0) {
      gap = Optional.of(gap.orElse(LiveGap.GARBLED));
    }
    ears.tell(LiveNews.Kind.UNREADABLE, at, why.as(Severity.WARNING));
  }

  private void row(LineOutcome.Row read, Instant received) throws IOException {
    Optional<RecordClock.Placed> placed = clock.place(read.sample().time_s(), received);
    if (placed.isEmpty()) {
      doubled++;
      ears.tell(LiveNews.Kind.UNREADABLE, received, "live.same-time", "");
      return;
    }
    // what the source said of a break says more than that it was long
    placed
        .get()
        .gap()
        .filter(found -> found != LiveGap.SILENT || gap.isEmpty())
        .ifPresent(found -> broken(found, received));
    if (gap.isEmpty()) {
      gap = lines.flatMap(l -> l.gap(read));
    }
    LiveSample sample = door.let(read);
    door.latest().forEach(note -> ears.tell(LiveNews.Kind.UNREADABLE, received, note));
    gaps += gap.filter(found -> found != LiveGap.IMPOSSIBLE).isPresent() ? 1 : 0;
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
    out.append(row, lines.map(l -> l.others(read)).orElse(List.of()), found);
    ears.row(row, found);
  }

  private void broken(LiveGap why, Instant at) {
    gap = Optional.of(why);
    ears.tell(LiveNews.Kind.GAP, at, "live.gap-" + why.word(), "");
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
