package faintwind.device;

import faintwind.calibration.live.LiveGap;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;

/**
 * A raw stream read again: the lines, cuts and times are those of the first time. What a crash cut
 * off at the end of a part is passed over.
 */
public final class RawSource implements SampleSource {
  private static final int LONGEST_HEAD = 1 << 12;
  private static final int LONGEST_PIECE = 1 << 20;

  private final Queue<Path> parts;
  private InputStream part = InputStream.nullInputStream();
  private @Nullable InputStream bytes;
  private ByteLines lines = new ByteLines(new Given());
  private RawPiece.Kind kind = RawPiece.Kind.BYTES;
  private boolean tornFirst;
  private Instant at = Instant.EPOCH;
  private int number;
  private volatile boolean closed;

  RawSource(Path file) {
    parts = new ArrayDeque<>(RawLog.parts(file));
  }

  /**
   * Where the bytes came from the first time, as {@code listen} spells it.
   *
   * @throws IOException where there is no raw stream of that name
   */
  public static String origin(Path file) throws IOException {
    RawSource source = new RawSource(file);
    Path first = source.parts.peek();
    if (first == null) {
      throw new NoSuchFileException(file.toString());
    }
    try (InputStream in = stream(first)) {
      if (!line(in).equals(Optional.of(RawLog.MAGIC))) {
        throw new IOException(file + ": not a raw stream");
      }
      String origin = line(in).orElse("");
      return origin.startsWith(RawLog.SOURCE) ? origin.substring(RawLog.SOURCE.length()) : "";
    }
  }

  @Override
  public SourceEvent next() throws IOException {
    while (!closed) {
      Optional<String> text = lines.next();
      if (text.isPresent()) {
        boolean torn = tornFirst || kind == RawPiece.Kind.HEAD;
        tornFirst &= kind == RawPiece.Kind.HEAD;
        return new SourceEvent.Line(
            text.get(),
            torn ? SourceEvent.Wholeness.PERHAPS_TORN : SourceEvent.Wholeness.WHOLE,
            at);
      }
      Optional<RawPiece> piece = piece();
      if (piece.isEmpty()) {
        break;
      }
      Optional<SourceEvent> event = taken(piece.get());
      if (event.isPresent()) {
        return event.get();
      }
    }
    part.close();
    return new SourceEvent.Ended(at);
  }

  private Optional<SourceEvent> taken(RawPiece piece) {
    at = piece.at();
    switch (piece.kind()) {
      case BYTES, HEAD -> {
        if (kind == RawPiece.Kind.HEAD && piece.kind() != kind) {
          lines = new ByteLines(new Given());
        }
        kind = piece.kind();
        bytes = new ByteArrayInputStream(piece.bytes().getBytes(StandardCharsets.ISO_8859_1));
        return Optional.empty();
      }
      case CONNECTED, CONNECTED_TORN -> {
        lines = new ByteLines(new Given());
        tornFirst = piece.kind() == RawPiece.Kind.CONNECTED_TORN;
        return Optional.of(new SourceEvent.Connected(at));
      }
      case CUT -> {
        return Optional.of(new SourceEvent.Lost(LiveGap.CUT, at));
      }
      default -> {
        lines = new ByteLines(new Given());
        return Optional.of(new SourceEvent.Lost(LiveGap.REPLACED, at));
      }
    }
  }

  /** The next entry of this part or the next; empty at the end of all. */
  private Optional<RawPiece> piece() throws IOException {
    while (true) {
      Optional<RawPiece> found = pieceHere();
      if (found.isPresent()) {
        return found;
      }
      part.close();
      Path next = parts.poll();
      if (next == null) {
        return Optional.empty();
      }
      part = stream(next);
      line(part);
      line(part);
      String expected = RawLog.PART + (number + 1);
      // a crash may leave a part both packed and plain
      if (line(part).equals(Optional.of(expected))) {
        number++;
      } else {
        part.close();
        part = InputStream.nullInputStream();
      }
    }
  }

  private Optional<RawPiece> pieceHere() throws IOException {
    Optional<String> head = line(part);
    String[] words = head.orElse("").split(" ", -1);
    Optional<RawPiece.Kind> found =
        words.length < 2 ? Optional.empty() : RawPiece.Kind.of(words[1]);
    if (found.isEmpty() || !words[0].startsWith("@")) {
      return Optional.empty();
    }
    try {
      Instant then = Instant.parse(words[0].substring(1));
      int count = words.length > 2 ? Integer.parseInt(words[2]) : 0;
      byte[] read = part.readNBytes(Math.min(count, LONGEST_PIECE));
      boolean whole = read.length == count && (count == 0 || part.read() == '\n');
      String text = new String(read, StandardCharsets.ISO_8859_1);
      return whole ? Optional.of(new RawPiece(found.get(), then, text)) : Optional.empty();
    } catch (DateTimeException | IllegalArgumentException e) {
      // torn in the middle of the entry's head
      return Optional.empty();
    }
  }

  private static InputStream stream(Path part) throws IOException {
    InputStream in = new BufferedInputStream(Files.newInputStream(part));
    return part.toString().endsWith(".gz") ? new BufferedInputStream(new GZIPInputStream(in)) : in;
  }

  private static Optional<String> line(InputStream in) throws IOException {
    StringBuilder text = new StringBuilder();
    int one = in.read();
    while (one >= 0 && one != '\n' && text.length() < LONGEST_HEAD) {
      text.append((char) one);
      one = in.read();
    }
    return one == '\n' ? Optional.of(text.toString()) : Optional.empty();
  }

  @Override
  public void close() {
    closed = true;
  }

  /** The bytes of the entry that is read; their end is not an end for good. */
  private final class Given extends InputStream {
    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] target, int from, int length) throws IOException {
      return bytes == null ? -1 : bytes.read(target, from, length);
    }
  }
}
