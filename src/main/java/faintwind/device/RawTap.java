package faintwind.device;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Queue;
import org.jspecify.annotations.Nullable;

/**
 * Where the bytes of a source can be had as they arrive. What arrives before a log is there is held
 * for it. For the thread of the recording.
 */
public final class RawTap {
  /** More than a header and the lines before it; older bytes than these are let go. */
  private static final int MOST_HELD = 1 << 22;

  private final Queue<RawPiece> held = new ArrayDeque<>();
  private boolean isHolding;
  private int heldBytes;
  private @Nullable RawLog log;

  private RawTap(boolean isHolding) {
    this.isHolding = isHolding;
  }

  /** Waits for its log. */
  public static RawTap holding() {
    return new RawTap(true);
  }

  /** Lets everything go. */
  public static RawTap none() {
    return new RawTap(false);
  }

  /** What was held, and all that comes, goes there. */
  public void to(RawLog target) throws IOException {
    log = target;
    while (!held.isEmpty()) {
      target.append(held.remove());
    }
  }

  /** Nobody wants what is held, or what comes. */
  public void off() {
    isHolding = false;
    held.clear();
  }

  /** Something happened to the connection. */
  void mark(RawPiece.Kind kind, Instant at) {
    take(new RawPiece(kind, at, ""));
  }

  /** The same stream, with a look at what arrives through it. */
  InputStream over(InputStream in, RawPiece.Kind kind, Timekeeper time) {
    return new FilterInputStream(in) {
      @Override
      public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
      }

      @Override
      public int read(byte[] target, int from, int length) throws IOException {
        int count = in.read(target, from, length);
        if (count > 0 && (isHolding || log != null)) {
          String bytes = new String(target, from, count, StandardCharsets.ISO_8859_1);
          take(new RawPiece(kind, time.now(), bytes));
        }
        return count;
      }
    };
  }

  private void take(RawPiece piece) {
    RawLog target = log;
    if (target != null) {
      try {
        target.append(piece);
      } catch (IOException e) {
        // the disk fails, not the source: nobody must take it for a cut
        throw new UncheckedIOException(e);
      }
    } else if (isHolding) {
      held.add(piece);
      heldBytes += piece.bytes().length();
      while (heldBytes > MOST_HELD) {
        heldBytes -= held.remove().bytes().length();
      }
    }
  }
}
