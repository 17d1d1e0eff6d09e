package faintwind.device;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * The raw stream beside a recording: every byte that arrived, with its time; format in
 * docs/formats/raw.md. It begins with the first byte. A part that has grown to its full length is
 * compressed and the next begun; the last is compressed when the log is closed. Not safe for two
 * threads.
 */
public final class RawLog implements Closeable {
  static final String MAGIC = "# faintwind-raw/1";
  static final String SOURCE = "# source: ";
  static final String PART = "# part: ";
  private static final String ENDING = ".raw";
  private static final long FULL_BYTES = 1 << 22;
  private static final Duration LONGEST_UNSYNCED = Duration.ofSeconds(1);

  private final Path file;
  private final String source;
  private final long full_bytes;
  private @Nullable FileChannel channel;
  private Instant synced = Instant.EPOCH;
  private String key = "";
  private int part = 1;

  /**
   * A log without a byte.
   *
   * @param file see {@link #beside}; nothing of the kind is there
   * @param source where the bytes come from, as {@code listen} spells it
   */
  public RawLog(Path file, String source) {
    this(file, source, FULL_BYTES);
  }

  RawLog(Path file, String source, long full_bytes) {
    this.file = file;
    this.source = source.replaceAll("\\p{Cntrl}", " ");
    this.full_bytes = full_bytes;
  }

  /** The raw stream of a recording: {@code NAME.raw} beside {@code NAME.csv}. */
  public static Path beside(Path recording) {
    String name = String.valueOf(recording.getFileName());
    String plain = name.endsWith(".csv") ? name.substring(0, name.length() - 4) : name;
    return recording.resolveSibling(plain + ENDING);
  }

  static Path packed(Path file, int part) {
    return file.resolveSibling(file.getFileName() + "." + part + ".gz");
  }

  /** What there is of a raw stream, in its order. */
  public static List<Path> parts(Path file) {
    List<Path> all = new ArrayList<>();
    for (int part = 1; Files.exists(packed(file, part)); part++) {
      all.add(packed(file, part));
    }
    if (Files.exists(file)) {
      all.add(file);
    }
    return all;
  }

  /** Nothing of it stays. */
  public static void delete(Path file) throws IOException {
    for (Path one : parts(file)) {
      Files.delete(one);
    }
  }

  void append(RawPiece piece) throws IOException {
    byte[] bytes = piece.bytes().getBytes(StandardCharsets.ISO_8859_1);
    String count = bytes.length == 0 ? "" : " " + bytes.length;
    FileChannel open = channel == null ? begin() : channel;
    write(
        open,
        ("@" + piece.at() + " " + piece.kind().word() + count + "\n")
            .getBytes(StandardCharsets.UTF_8));
    if (bytes.length > 0) {
      write(open, bytes);
      write(open, new byte[] {'\n'});
    }
    if (Duration.between(synced, piece.at()).compareTo(LONGEST_UNSYNCED) >= 0) {
      open.force(false);
      synced = piece.at();
    }
    if (open.position() >= full_bytes) {
      pack();
    }
  }

  private FileChannel begin() throws IOException {
    FileChannel open =
        FileChannel.open(
            file, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
    key = key();
    channel = open;
    String head = MAGIC + "\n" + SOURCE + source + "\n" + PART + part + "\n";
    write(open, head.getBytes(StandardCharsets.UTF_8));
    return open;
  }

  private static void write(FileChannel to, byte[] bytes) throws IOException {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    while (buffer.hasRemaining()) {
      to.write(buffer);
    }
  }

  /** The packed part is there, whole, before the plain one goes. */
  private void pack() throws IOException {
    FileChannel open = channel;
    channel = null;
    if (open == null) {
      return;
    }
    open.force(true);
    Path packed = packed(file, part++);
    Path unfinished = file.resolveSibling("." + packed.getFileName() + ".part");
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(unfinished))) {
      open.position(0);
      Channels.newInputStream(open).transferTo(out);
    }
    try (FileChannel whole = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
      whole.force(true);
    }
    Files.move(unfinished, packed, StandardCopyOption.ATOMIC_MOVE);
    open.close();
    if (!key.isEmpty() && key().equals(key)) {
      Files.delete(file);
    }
  }

  /** What stands under the name; empty for nothing. */
  private String key() throws IOException {
    return Files.exists(file)
        ? "key " + Files.readAttributes(file, BasicFileAttributes.class).fileKey()
        : "";
  }

  /** Compresses what is open. */
  @Override
  public void close() throws IOException {
    pack();
  }
}
