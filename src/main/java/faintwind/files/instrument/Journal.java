package faintwind.files.instrument;

import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

/**
 * The append-only journal of one instrument, {@code journal.jsonl}: one entry a line, each carrying
 * the hash of the line before it ({@link ChainedLines}). An entry is on disk (written and forced)
 * before {@link #append} returns. A last line that a crash tore is not an entry: reading reports
 * it, and the next append moves it to {@code journal.torn} and says so before it writes. Two
 * writers, of one program or of two, are kept apart by a lock on the file; a writer that cannot get
 * it within five seconds gives up with an IOException.
 *
 * @param file the journal
 */
public record Journal(Path file) {
  /** Who writes what the program does of its own. */
  public static final String PROGRAM = "faintwind";

  private static final String TORN = "journal.torn";
  private static final int LOCK_TRIES = 500;
  private static final long LOCK_PAUSE_ns = 10_000_000;

  /** The journal of a folder. */
  public static Journal in(Path folder) {
    return new Journal(folder.resolve("journal.jsonl"));
  }

  /**
   * What a journal holds.
   *
   * @param entries every line that is an entry, in order
   * @param problems a torn last line is a warning; a line in the middle that is not an entry, an id
   *     that comes twice, or a broken chain is an error
   * @param lines how many lines there are, a torn last one not counted
   * @param head hash of the last of them; empty where there is none
   */
  public record Content(
      List<JournalEntry> entries, List<Problem> problems, int lines, String head) {
    public Content {
      entries = List.copyOf(entries);
      problems = List.copyOf(problems);
    }
  }

  /**
   * All entries; refused, naming every such line, where an entry in the middle cannot be read.
   *
   * @throws IOException where the file cannot be read
   */
  public Checked<List<JournalEntry>> read() throws IOException {
    Content content = content();
    return content.problems().stream().anyMatch(Problem::isError)
        ? Checked.refused(content.problems())
        : Checked.ok(content.entries(), content.problems());
  }

  /**
   * Whatever can be read, with all that cannot.
   *
   * @throws IOException where the file cannot be read
   */
  public Content content() throws IOException {
    return content(new Seal(Optional.empty(), 0, Optional.empty()));
  }

  /** How many lines have their end. */
  int endedLines() throws IOException {
    int ended = 0;
    for (byte each : Files.readAllBytes(file)) {
      ended += each == '\n' ? 1 : 0;
    }
    return ended;
  }

  /** Whatever can be read, compared with what the folder's summary knows of it. */
  Content content(Seal seal) throws IOException {
    String name = String.valueOf(file.getFileName());
    JournalReading read = JournalReading.of(Files.readAllBytes(file), seal, name);
    ChainedLines lines = read.whole();
    return new Content(read.entries(), read.problems(), lines.lines().size(), lines.head());
  }

  /**
   * Writes entries at the end and forces them to disk, all or none.
   *
   * @throws IOException where the file cannot be written or another writer holds it; then the file
   *     is as it was
   */
  public void append(List<JournalEntry> entries) throws IOException {
    if (entries.isEmpty()) {
      return;
    }
    try (FileChannel channel =
            FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE);
        FileLock lock = lock(channel)) {
      byte[] bytes = readAll(channel, channel.size());
      JournalEntry first = entries.get(0);
      List<JournalEntry> all = new ArrayList<>();
      byte[] kept = bytes;
      String joint = "";
      int start = lastLineStart(bytes);
      if (start < bytes.length) {
        String tail = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
        if (JournalLine.read(tail, Where.NOWHERE).isOk()) {
          joint = "\n"; // the entry is whole, only its line end was lost
        } else {
          all.add(
              byProgram(first, "torn", setAside(Arrays.copyOfRange(bytes, start, bytes.length))));
          kept = Arrays.copyOf(bytes, start);
        }
      }
      ChainedLines lines = ChainedLines.of(kept);
      if (!lines.lines().isEmpty() && !lines.chained()) {
        all.add(0, byProgram(first, "chain", chainBegun(lines, kept, joint)));
      }
      all.addAll(entries);
      write(channel, bytes, kept.length, joint + text(lines, all));
      if (!lock.isValid()) {
        throw new IOException("the lock on " + file + " was lost");
      }
    }
  }

  private static Event chainBegun(ChainedLines lines, byte[] kept, String joint) {
    byte[] end = joint.getBytes(StandardCharsets.UTF_8);
    byte[] before = Arrays.copyOf(kept, kept.length + end.length);
    System.arraycopy(end, 0, before, kept.length, end.length);
    return new Event.ChainBegun(lines.lines().size(), Sha256.of(before));
  }

  private static JournalEntry byProgram(JournalEntry like, String what, Event event) {
    return new JournalEntry(like.id() + "-" + what, like.at(), PROGRAM, Optional.empty(), event);
  }

  private static String text(ChainedLines before, List<JournalEntry> entries) {
    StringBuilder text = new StringBuilder();
    String prev = before.lines().isEmpty() ? ChainedLines.START : before.head();
    for (JournalEntry entry : entries) {
      ChainedLines.Line line = ChainedLines.after(prev, JournalLine.write(entry));
      text.append(line.text()).append('\n');
      prev = line.sha256();
    }
    return text.toString();
  }

  private static int lastLineStart(byte[] bytes) {
    int start = bytes.length;
    while (start > 0 && bytes[start - 1] != '\n') {
      start--;
    }
    return start;
  }

  /**
   * Keeps a torn line in a file of its own, on disk before it is taken out of the journal. A file
   * that is there is never written to: it may be entered; one that holds this very line is what a
   * crash of this step left.
   */
  private Event setAside(byte[] tail) throws IOException {
    byte[] line = Arrays.copyOf(tail, tail.length + 1);
    line[tail.length] = '\n';
    String name = TORN;
    Path aside = file.resolveSibling(name);
    for (int i = 2; Files.exists(aside) && !Arrays.equals(Files.readAllBytes(aside), line); i++) {
      name = "journal-" + i + ".torn";
      aside = file.resolveSibling(name);
    }
    AtomicFile.write(aside, line);
    return new Event.FileAdded(Event.FileRole.TORN_LINE, name, Sha256.of(line));
  }

  /** Writes behind what is kept of the journal; where that fails, the journal is as it was. */
  private static void write(FileChannel channel, byte[] before, int kept, String text)
      throws IOException {
    try {
      channel.truncate(kept);
      writeAll(channel, kept, text.getBytes(StandardCharsets.UTF_8));
      channel.force(true);
    } catch (IOException e) {
      channel.truncate(kept);
      writeAll(channel, kept, Arrays.copyOfRange(before, kept, before.length));
      throw e;
    }
  }

  private FileLock lock(FileChannel channel) throws IOException {
    for (int i = 0; i < LOCK_TRIES; i++) {
      try {
        FileLock lock = channel.tryLock();
        if (lock != null) {
          return lock;
        }
      } catch (OverlappingFileLockException e) {
        // the other writer is in this very program; it is waited for in the same way
      }
      LockSupport.parkNanos(LOCK_PAUSE_ns);
    }
    throw new IOException(file + ": another writer holds it");
  }

  private static byte[] readAll(FileChannel channel, long size) throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate(Math.toIntExact(size));
    while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) >= 0) {
      // read on until the buffer is full or the file ends
    }
    return Arrays.copyOf(buffer.array(), buffer.position());
  }

  private static void writeAll(FileChannel channel, long at, byte[] bytes) throws IOException {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    while (buffer.hasRemaining()) {
      channel.write(buffer, at + buffer.position());
    }
  }
}
