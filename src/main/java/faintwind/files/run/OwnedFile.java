package faintwind.files.run;

import faintwind.files.AtomicFile;
import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A file with one owner for as long as it is open: made by this and by nobody else, locked against
 * a second, and known again, so that one that was deleted or replaced is found out. {@link #isOurs}
 * may be asked from any thread.
 */
public final class OwnedFile implements Closeable {
  private final Path path;
  private final FileChannel channel;
  private final Optional<Object> key;

  /** Somebody else writes to the file. */
  public static final class TakenException extends FileSystemException {
    private static final long serialVersionUID = 1;

    TakenException(Path path) {
      super(path.toString(), null, "another recording writes to it");
    }
  }

  /** The file was deleted or replaced; what it held stands in another. */
  public static final class LostException extends FileSystemException {
    private static final long serialVersionUID = 1;

    LostException(Path path, Path kept) {
      super(path.toString(), kept.toString(), "deleted or replaced; kept as " + kept);
    }
  }

  /** What to do with a file that is there. */
  public enum Existing {
    KEEP,
    /** Its content goes, unless somebody writes to it. */
    REPLACE
  }

  private OwnedFile(Path path, FileChannel channel) throws IOException {
    this.path = path;
    this.channel = channel;
    this.key = key();
  }

  /**
   * Makes the file, empty.
   *
   * @throws IOException where it is there, or somebody writes to it, or the folder is missing or
   *     cannot be written
   */
  public static OwnedFile take(Path path, Existing existing) throws IOException {
    StandardOpenOption create =
        existing == Existing.KEEP ? StandardOpenOption.CREATE_NEW : StandardOpenOption.CREATE;
    FileChannel channel =
        FileChannel.open(path, create, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      if (!isLocked(channel)) {
        throw new TakenException(path);
      }
      channel.truncate(0);
      AtomicFile.syncFolder(AtomicFile.folderOf(path.toAbsolutePath()));
      return new OwnedFile(path, channel);
    } catch (IOException e) {
      channel.close();
      throw e;
    }
  }

  private static boolean isLocked(FileChannel channel) throws IOException {
    try {
      @Nullable FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false; // by this very program
    }
  }

  FileChannel channel() {
    return channel;
  }

  /** Whether its name still leads to it. */
  public boolean isOurs() throws IOException {
    return key().equals(key);
  }

  private Optional<Object> key() throws IOException {
    try {
      BasicFileAttributes found = Files.readAttributes(path, BasicFileAttributes.class);
      // a system without keys does not let an open file be deleted
      return Optional.of(Optional.ofNullable(found.fileKey()).orElse(""));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /**
   * Keeps what the file holds under a name of its own, for one that is no longer ours.
   *
   * @return what to tell
   */
  public LostException rescued() throws IOException {
    String name = String.valueOf(path.getFileName());
    int dot = name.lastIndexOf('.');
    String plain = dot > 0 ? name.substring(0, dot) : name;
    String ending = dot > 0 ? name.substring(dot) : "";
    Path kept = path.resolveSibling(plain + "-kept-1" + ending);
    for (int i = 2; Files.exists(kept); i++) {
      kept = path.resolveSibling(plain + "-kept-" + i + ending);
    }
    try (FileChannel target =
        FileChannel.open(kept, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      for (long at = 0; at < channel.size(); ) {
        at += channel.transferTo(at, channel.size() - at, target);
      }
      target.force(true);
    }
    return new LostException(path, kept);
  }

  /** Takes the empty file away again; one that is not ours stays. */
  public void delete() throws IOException {
    if (isOurs()) {
      Files.delete(path);
    }
  }

  @Override
  public void close() throws IOException {
    if (channel.isOpen()) {
      channel.force(true);
      channel.close();
    }
  }
}
