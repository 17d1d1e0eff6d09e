package faintwind.device;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import org.jspecify.annotations.Nullable;

/**
 * A connection on which a test says what arrives when, and where it breaks. Ends with its pieces.
 */
public final class PlayedLink implements LineLink {
  private final Queue<Piece> pieces;
  private final StillTime time;
  private final LineSource source;
  private @Nullable Piece open;
  private int at;

  /**
   * What arrives at once.
   *
   * @param pause since the piece before
   * @param text what arrives
   * @param cut whether the connection breaks after it
   */
  public record Piece(Duration pause, String text, boolean cut) {}

  private PlayedLink(List<Piece> pieces, StillTime time, RawTap tap) {
    this.pieces = new ArrayDeque<>(pieces);
    this.time = time;
    this.source = new LineSource(this, time, tap);
  }

  /** The pieces as a source of lines. */
  public static SampleSource of(List<Piece> pieces, StillTime time, RawTap tap) {
    return new PlayedLink(pieces, time, tap).source;
  }

  @Override
  public Open open() {
    return new Open() {
      @Override
      public InputStream bytes() {
        return new Arriving();
      }

      @Override
      public void close() {
        // nothing is held
      }
    };
  }

  @Override
  public SourceEvent.Wholeness firstLine() {
    return new TcpLink("localhost", 1).firstLine();
  }

  private final class Arriving extends InputStream {
    private boolean broken;

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] target, int from, int length) throws IOException {
      if (broken) {
        return -1;
      }
      Piece now = open == null ? pieces.poll() : open;
      if (now == null) {
        source.close();
        return -1;
      }
      if (open == null) {
        time.pause(now.pause());
        at = 0;
      }
      byte[] bytes = now.text().getBytes(StandardCharsets.UTF_8);
      int count = Math.min(length, bytes.length - at);
      System.arraycopy(bytes, at, target, from, count);
      at += count;
      boolean done = at == bytes.length;
      open = done ? null : now;
      broken = done && now.cut();
      return count == 0 ? read(target, from, length) : count;
    }
  }
}
