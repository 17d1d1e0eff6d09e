package faintwind.files.instrument;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The right to write to an instrument's folder for as long as a window or a command works on it:
 * one holder at a time, of one machine or of two that share the folder. The operating system gives
 * it back when its holder dies. {@code writer.lock} names the holder for whoever comes second; the
 * file stays when the lock is given back and means nothing then.
 */
public final class WriterLock implements Closeable {
  private static final int NAME_BYTES = 400;

  /** Locks are of a byte far behind the name, so that others can read the name. */
  private static final long LOCKED_BYTE = 1L << 30;

  private final FileChannel channel;
  private final FileLock lock;

  private WriterLock(FileChannel channel, FileLock lock) {
    this.channel = channel;
    this.lock = lock;
  }

  /**
   * Takes the lock.
   *
   * @param holder who and on which machine, for whoever comes second
   * @return empty where somebody else holds it
   * @throws IOException where the folder cannot be written to
   */
  public static Optional<WriterLock> take(Path folder, String holder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    FileChannel channel =
        FileChannel.open(
            folder.resolve(FolderCheck.LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
      if (lock != null) {
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(holder.getBytes(StandardCharsets.UTF_8)), 0);
        return Optional.of(new WriterLock(channel, lock));
      }
    } catch (OverlappingFileLockException e) {
      // another window of this very program holds it
    } catch (IOException e) {
      channel.close();
      throw e;
    }
    channel.close();
    return Optional.empty();
  }

  /** Who took the lock last, as they named themselves; empty where nobody did. */
  public static String holder(Path folder) throws IOException {
    Path file = folder.resolve(FolderCheck.LOCK);
    if (!Files.isRegularFile(file)) {
      return "";
    }
    byte[] bytes = Files.readAllBytes(file);
    return new String(bytes, 0, Math.min(bytes.length, NAME_BYTES), StandardCharsets.UTF_8).strip();
  }

  /**
   * Who holds the lock now, as they named themselves; empty where nobody does, or where a folder
   * that cannot be written to does not tell.
   */
  public static Optional<String> heldBy(Path folder) throws IOException {
    Path file = folder.resolve(FolderCheck.LOCK);
    if (!Files.isRegularFile(file) || !Files.isWritable(file)) {
      return Optional.empty();
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
        FileLock free = channel.tryLock(LOCKED_BYTE, 1, false)) {
      return free == null ? Optional.of(holder(folder)) : Optional.empty();
    } catch (OverlappingFileLockException ofThisProgram) {
      return Optional.of(holder(folder));
    }
  }

  /** Gives the right back. */
  @Override
  public void close() throws IOException {
    if (lock.isValid()) {
      lock.release();
    }
    channel.close();
  }
}
