package faintwind.files.instrument;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
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
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;

/**
 * The append-only journal of one instrument, {@code journal.jsonl}: one entry a line. An entry is
 * on disk (written and forced) before {@link #append} returns. A last line that a crash tore is not
 * an entry: reading reports it, and the next append moves it to {@code journal.torn} before it
 * writes. Two writers, of one program or of two, are kept apart by a lock on the file; a writer
 * that cannot get it within five seconds gives up with an IOException.
 *
 * @param file the journal
 */
public record Journal(Path file) {
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
   * @param problems a torn last line is a warning; a line in the middle that is not an entry, or an
   *     id that comes twice, is an error
   */
  public record Content(List<JournalEntry> entries, List<Problem> problems) {
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
    byte[] bytes = Files.readAllBytes(file);
    List<JournalEntry> entries = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    Where here = Where.file(String.valueOf(file.getFileName()));
    int start = 0;
    for (int number = 1; start < bytes.length; number++) {
      int end = lineEnd(bytes, start);
      String line = new String(bytes, start, end - start, StandardCharsets.UTF_8);
      Where where = here.atLine(number);
      Checked<JournalEntry> read = JournalLine.read(line, where);
      if (read instanceof Checked.Ok<JournalEntry> ok) {
        if (!ids.add(ok.value().id())) {
          problems.add(Problem.error("journal.id-twice", where.atColumn("id"), ok.value().id()));
        }
        entries.add(ok.value());
      } else if (end == bytes.length) {
        problems.add(Problem.warning("journal.torn", where, JournalRules.shortened(line)));
      } else if (!line.isBlank()) {
        problems.addAll(read.problems());
      }
      start = end + 1;
    }
    return new Content(entries, problems);
  }

  private static int lineEnd(byte[] bytes, int start) {
    int end = start;
    while (end < bytes.length && bytes[end] != '\n') {
      end++;
    }
    return end;
  }

  /**
   * Writes entries at the end and forces them to disk, all or none.
   *
   * @throws IOException where the file cannot be written or another writer holds it; then the file
   *     is as it was
   */
  public void append(List<JournalEntry> entries) throws IOException {
    StringBuilder text = new StringBuilder();
    for (JournalEntry entry : entries) {
      text.append(JournalLine.write(entry)).append('\n');
    }
    try (FileChannel channel =
            FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE);
        FileLock lock = lock(channel)) {
      String joint = setAsideTornLine(channel);
      long before = channel.size();
      try {
        writeAll(channel, before, (joint + text).getBytes(StandardCharsets.UTF_8));
        channel.force(true);
      } catch (IOException e) {
        channel.truncate(before);
        throw e;
      }
      if (!lock.isValid()) {
        throw new IOException("the lock on " + file + " was lost");
      }
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

  /**
   * Moves a last line that is not an entry to journal.torn; gives the text that must precede the
   * next line: a line end where the last entry is whole and only its line end was lost.
   */
  private String setAsideTornLine(FileChannel channel) throws IOException {
    long size = channel.size();
    if (size == 0) {
      return "";
    }
    byte[] bytes = readAll(channel, size);
    int start = bytes.length;
    while (start > 0 && bytes[start - 1] != '\n') {
      start--;
    }
    if (start == bytes.length) {
      return "";
    }
    String tail = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
    if (JournalLine.read(tail, Where.NOWHERE).isOk()) {
      return "\n";
    }
    try (FileChannel torn =
        FileChannel.open(
            file.resolveSibling("journal.torn"),
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE)) {
      writeAll(torn, torn.size(), (tail + "\n").getBytes(StandardCharsets.UTF_8));
      torn.force(true);
    }
    channel.truncate(start);
    return "";
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
