package faintwind.device;

import faintwind.calibration.live.LiveGap;
import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Lines over a link that may break. A link that cannot be had at first is told as a failure; one
 * that was there and went away is tried again after half a second, then after twice as long each
 * time up to half a minute, for as long as it takes. The line that the break tore is not given.
 */
public final class LineSource implements SampleSource {
  private static final Duration FIRST_WAIT = Duration.ofMillis(500);
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(30);
  private static final Duration NAP = Duration.ofMillis(100);

  private final LineLink link;
  private final Timekeeper time;
  private final RawTap tap;
  private volatile LineLink.@Nullable Open open;
  private volatile boolean closed;
  private @Nullable ByteLines lines;
  private boolean everThere;
  private boolean lost;
  private boolean atFirst;
  private Duration wait = FIRST_WAIT;

  LineSource(LineLink link, Timekeeper time, RawTap tap) {
    this.link = link;
    this.time = time;
    this.tap = tap;
  }

  @Override
  public SourceEvent next() throws IOException, InterruptedException {
    if (!closed && everThere && lines == null && !lost) {
      pause();
    }
    if (closed) {
      return new SourceEvent.Ended(time.now());
    }
    if (lost && lines != null) {
      lost = false;
      return cut();
    }
    ByteLines from = lines;
    return from == null ? connect() : line(from);
  }

  private SourceEvent connect() throws IOException {
    try {
      LineLink.Open fresh = link.open();
      open = fresh;
      if (closed) {
        fresh.close();
        return new SourceEvent.Ended(time.now());
      }
      lines = new ByteLines(tap.over(fresh.bytes(), RawPiece.Kind.BYTES, time));
    } catch (IOException e) {
      if (!everThere) {
        throw e;
      }
      return away(e);
    }
    mark();
    lost = everThere;
    everThere = true;
    atFirst = true;
    return new SourceEvent.Connected(time.now());
  }

  private void mark() {
    boolean whole = link.firstLine() == SourceEvent.Wholeness.WHOLE;
    tap.mark(whole ? RawPiece.Kind.CONNECTED : RawPiece.Kind.CONNECTED_TORN, time.now());
  }

  private SourceEvent cut() {
    tap.mark(RawPiece.Kind.CUT, time.now());
    return new SourceEvent.Lost(LiveGap.CUT, time.now());
  }

  private SourceEvent line(ByteLines from) throws IOException {
    Optional<String> text;
    try {
      text = from.next();
    } catch (OtherSenderException e) {
      return e.isTaken() ? cut() : new SourceEvent.OtherSender(e.other(), e.kept(), time.now());
    } catch (IOException e) {
      return broken(e);
    }
    if (text.isEmpty()) {
      return broken(new IOException("end of the line"));
    }
    SourceEvent.Wholeness whole = atFirst ? link.firstLine() : SourceEvent.Wholeness.WHOLE;
    atFirst = false;
    wait = FIRST_WAIT;
    return new SourceEvent.Line(text.get(), whole, time.now());
  }

  private SourceEvent broken(IOException why) throws IOException {
    LineLink.Open was = open;
    open = null;
    lines = null;
    lost = false;
    if (was != null) {
      was.close();
    }
    return closed ? new SourceEvent.Ended(time.now()) : away(why);
  }

  private SourceEvent away(IOException why) {
    String words = Optional.ofNullable(why.getMessage()).orElse(why.getClass().getSimpleName());
    return new SourceEvent.Reconnecting(words, wait, time.now());
  }

  private void pause() throws InterruptedException {
    Duration left = wait;
    while (!closed && !left.isNegative() && !left.isZero()) {
      Duration nap = left.compareTo(NAP) > 0 ? NAP : left;
      time.pause(nap);
      left = left.minus(nap);
    }
    Duration twice = wait.multipliedBy(2);
    wait = twice.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : twice;
  }

  @Override
  public void close() throws IOException {
    closed = true;
    LineLink.Open was = open;
    if (was != null) {
      was.close();
    }
  }
}
