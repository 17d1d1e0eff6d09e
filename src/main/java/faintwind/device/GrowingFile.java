package faintwind.device;

import faintwind.calibration.live.LiveGap;
import faintwind.calibration.live.SourceAddress;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a file that another program writes, as they are added. A file that is replaced is
 * read to its end, then the new one from its beginning; one that is shortened, also if it has grown
 * again meanwhile, is read on from where it differs. A line counts when its end is there. A file
 * that is gone for a while is waited for.
 */
public final class GrowingFile implements SampleSource {
  private static final Duration LOOK_AGAIN = Duration.ofMillis(100);
  private static final int HEAD_BYTES = 1 << 14;

  private final Path file;
  private final SourceAddress.From from;
  private final Timekeeper time;
  private final RawTap tap;
  private final ByteBuffer room = ByteBuffer.allocate(1 << 16);
  private final ReadBytes read = new ReadBytes();
  private volatile boolean closed;
  private @Nullable FileChannel channel;
  private @Nullable Object key;
  private ByteLines lines = new ByteLines(InputStream.nullInputStream());
  private final Queue<String> head = new ArrayDeque<>();
  private boolean tornFirst;
  private boolean changed;
  private boolean everThere;
  private boolean toldGone;

  /** What was last found out about the file under the name. */
  private enum Presence {
    SAME,
    REPLACED,
    GONE
  }

  GrowingFile(SourceAddress.GrowingFile address, Timekeeper time, RawTap tap) {
    this.file = Path.of(address.path());
    this.from = address.from();
    this.time = time;
    this.tap = tap;
  }

  @Override
  public SourceEvent next() throws IOException, InterruptedException {
    while (!closed) {
      FileChannel now = channel;
      Optional<SourceEvent> event = now == null ? open() : more();
      if (event.isPresent()) {
        return event.get();
      }
      if (channel == now) {
        time.pause(LOOK_AGAIN);
      }
    }
    shut();
    return new SourceEvent.Ended(time.now());
  }

  private Optional<SourceEvent> open() throws IOException {
    FileChannel fresh;
    try {
      key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
      fresh = FileChannel.open(file, StandardOpenOption.READ);
    } catch (NoSuchFileException e) {
      if (!everThere) {
        throw e;
      }
      return gone();
    }
    channel = fresh;
    read.clear();
    begin();
    toldGone = false;
    if (everThere) {
      return replaced();
    }
    everThere = true;
    boolean whole = from == SourceAddress.From.START;
    tap.mark(whole ? RawPiece.Kind.CONNECTED : RawPiece.Kind.CONNECTED_TORN, time.now());
    if (!whole) {
      toEnd(fresh);
    }
    return Optional.of(new SourceEvent.Connected(time.now()));
  }

  /** What is there already does not count, but its header may be needed to read the rest. */
  private void toEnd(FileChannel fresh) throws IOException {
    ByteBuffer start = ByteBuffer.allocate((int) Math.min(fresh.size(), HEAD_BYTES));
    fresh.read(start, 0);
    InputStream bytes = new ByteArrayInputStream(start.array(), 0, start.position());
    ByteLines there = new ByteLines(tap.over(bytes, RawPiece.Kind.HEAD, time));
    for (Optional<String> one = there.next(); one.isPresent(); one = there.next()) {
      head.add(one.get());
    }
    fresh.position(fresh.size());
    tornFirst = true;
  }

  private void begin() {
    room.clear().flip();
    changed = false;
    lines = new ByteLines(tap.over(new Added(), RawPiece.Kind.BYTES, time));
  }

  private Optional<SourceEvent> replaced() {
    tap.mark(RawPiece.Kind.REPLACED, time.now());
    return Optional.of(new SourceEvent.Lost(LiveGap.REPLACED, time.now()));
  }

  private Optional<SourceEvent> gone() {
    if (toldGone) {
      return Optional.empty();
    }
    toldGone = true;
    return Optional.of(
        new SourceEvent.Reconnecting(file + ": no such file", LOOK_AGAIN, time.now()));
  }

  private Optional<SourceEvent> more() throws IOException {
    if (!head.isEmpty()) {
      return Optional.of(line(head.remove(), SourceEvent.Wholeness.PERHAPS_TORN));
    }
    Optional<String> added = lines.next();
    if (changed) {
      begin();
      return replaced();
    }
    Presence presence = added.isPresent() ? Presence.SAME : presence();
    // once more, for what was added before the file was replaced
    Optional<String> last = presence == Presence.REPLACED ? lines.next() : added;
    if (last.isPresent()) {
      return Optional.of(line(last.get(), SourceEvent.Wholeness.WHOLE));
    }
    if (presence == Presence.REPLACED) {
      shut();
      return open();
    }
    return presence == Presence.GONE ? gone() : Optional.empty();
  }

  /**
   * Whether the file still begins with what was read of it. One that was cut, or cut and has grown
   * again, is read on from the first line that differs; nothing that was read is read twice as far
   * as is known.
   */
  private boolean isAsRead(FileChannel now) throws IOException {
    long at = now.position();
    long from = at - read.count();
    ByteBuffer found = ByteBuffer.allocate((int) (at - from));
    int got = 1;
    while (found.hasRemaining() && got > 0) {
      got = now.read(found, from + found.position());
    }
    int same = read.same(found.array(), found.position());
    if (same == at - from && now.size() >= at) {
      return true;
    }
    int whole = read.cut(same);
    now.position(whole == 0 ? 0 : from + whole);
    return false;
  }

  private SourceEvent line(String text, SourceEvent.Wholeness whole) {
    boolean torn = tornFirst && whole == SourceEvent.Wholeness.WHOLE;
    tornFirst &= !torn;
    return new SourceEvent.Line(
        text, torn ? SourceEvent.Wholeness.PERHAPS_TORN : whole, time.now());
  }

  private Presence presence() throws IOException {
    try {
      Object found = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
      return found == null || found.equals(key) ? Presence.SAME : Presence.REPLACED;
    } catch (NoSuchFileException e) {
      return Presence.GONE;
    }
  }

  private void shut() throws IOException {
    FileChannel was = channel;
    channel = null;
    if (was != null) {
      was.close();
    }
  }

  @Override
  public void close() {
    closed = true;
  }

  /** What has been added so far; its end is not an end for good. */
  private final class Added extends InputStream {
    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
      FileChannel now = channel;
      if (now == null) {
        return -1;
      }
      changed |= !isAsRead(now);
      if (changed) {
        return -1;
      }
      room.clear().limit(Math.min(length, room.capacity()));
      int count = now.read(room);
      if (count <= 0) {
        return -1;
      }
      room.flip().get(target, offset, count);
      read.add(target, offset, count);
      return count;
    }
  }
}
