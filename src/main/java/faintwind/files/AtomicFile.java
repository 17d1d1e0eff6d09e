package faintwind.files;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file that appears whole or not at all. What is written goes to a hidden file in the same
 * folder; {@link #commit} brings it to the disk, moves it over the target in one step and brings
 * the folder to the disk. Closed without a commit, nothing of it stays. A process that dies before
 * the move leaves the old target untouched.
 *
 * <p>Not safe for two threads.
 */
public final class AtomicFile implements Closeable {

  private static final String PART = ".part";

  /** Bytes of a name that leave room for a dot, a process and an ending. */
  private static final int LONGEST_NAME = 220;

  /** Called before each step, so that a test can make that step fail. */
  @FunctionalInterface
  interface Before {
    void step(Step step) throws IOException;
  }

  /** The steps of a save, in their order. */
  enum Step {
    CREATE,
    WRITE,
    SYNC,
    MOVE,
    SYNC_FOLDER
  }

  private final Path target;
  private final Path part;
  private final Before before;
  private final FileChannel channel;
  private final OutputStream stream;
  private boolean moved;

  private AtomicFile(Path target, Path part, FileChannel channel, Before before) {
    this.target = target;
    this.part = part;
    this.channel = channel;
    this.before = before;
    this.stream = new BufferedOutputStream(new Watched(Channels.newOutputStream(channel)), 1 << 16);
  }

  /**
   * Starts a file that will stand at {@code target}, replacing what is there. A symbolic link is
   * followed: the file it names is replaced, the link stays.
   *
   * @throws IOException where the folder is missing or cannot be written, or the target is
   *     something other than a plain file (a folder, a device)
   */
  public static AtomicFile begin(Path target) throws IOException {
    return begin(target, step -> {});
  }

  static AtomicFile begin(Path target, Before before) throws IOException {
    Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
    if (Files.exists(real) && !Files.isRegularFile(real)) {
      throw new FileSystemException(target.toString(), null, "not a plain file");
    }
    Path folder = folderOf(real);
    if (!Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    String name = "." + shortened(String.valueOf(real.getFileName())) + ".";
    Path part = folder.resolve(name + ProcessHandle.current().pid() + PART);
    before.step(Step.CREATE);
    Files.deleteIfExists(part);
    clean(folder, name);
    FileChannel channel =
        FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    return new AtomicFile(real, part, channel, before);
  }

  /** A name that has room for more behind it: file systems take 255 bytes. */
  private static String shortened(String name) {
    byte[] bytes = name.getBytes(StandardCharsets.UTF_8);
    return bytes.length <= LONGEST_NAME
        ? name
        : name.substring(0, Math.min(40, name.length())) + Sha256.of(bytes).substring(0, 16);
  }

  /** Takes away what processes left that died while they wrote the same file. */
  private static void clean(Path folder, String name) throws IOException {
    DirectoryStream.Filter<Path> left =
        file -> {
          String other = String.valueOf(file.getFileName());
          return other.startsWith(name) && other.endsWith(PART) && isLeft(name, other);
        };
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, left)) {
      for (Path part : parts) {
        Files.deleteIfExists(part);
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
  }

  private static boolean isLeft(String name, String part) {
    String pid = part.substring(name.length(), part.length() - PART.length());
    return pid.matches("\\d{1,18}") && ProcessHandle.of(Long.parseLong(pid)).isEmpty();
  }

  /** Writes all bytes and commits. */
  public static void write(Path target, byte[] bytes) throws IOException {
    write(target, bytes, step -> {});
  }

  static void write(Path target, byte[] bytes, Before before) throws IOException {
    try (AtomicFile file = begin(target, before)) {
      file.stream().write(bytes);
      file.commit();
    }
  }

  /** Where the content goes; buffered. Closed by {@link #close}. */
  public OutputStream stream() {
    return stream;
  }

  /** Puts the content in the target's place. To be called once, at the end. */
  public void commit() throws IOException {
    stream.flush();
    before.step(Step.SYNC);
    channel.force(true);
    channel.close();
    before.step(Step.MOVE);
    Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    moved = true;
    before.step(Step.SYNC_FOLDER);
    syncFolder(folderOf(target));
  }

  /** Takes away what was not committed. */
  @Override
  public void close() throws IOException {
    channel.close();
    if (!moved) {
      Files.deleteIfExists(part);
    }
  }

  /**
   * Brings a folder's entries to the disk, so that a new name survives a power cut. Does nothing on
   * Windows, where a folder cannot be opened and its entries are kept by the file system's own
   * journal.
   */
  public static void syncFolder(Path folder) throws IOException {
    if (File.separatorChar == '/') {
      try (FileChannel entries = FileChannel.open(folder, StandardOpenOption.READ)) {
        entries.force(true);
      }
    }
  }

  public static Path folderOf(Path file) {
    Path parent = file.getParent();
    return parent == null ? file : parent;
  }

  /** Tells {@link Before} of each write that reaches the disk. */
  private final class Watched extends OutputStream {
    private final OutputStream out;

    Watched(OutputStream out) {
      this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
      before.step(Step.WRITE);
      out.write(b);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      before.step(Step.WRITE);
      out.write(bytes, from, length);
    }
  }
}
