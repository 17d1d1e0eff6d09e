package faintwind.files;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Folders that ship with the program, whether it runs from a jar or from compiled classes. The
 * folder can be listed, which a class path resource cannot.
 */
public final class ShippedFolder {
  private ShippedFolder() {}

  /** Reads something from a shipped folder. */
  @FunctionalInterface
  public interface Reading<T> {
    T read(Path folder) throws IOException;
  }

  /**
   * Opens a shipped folder for the time of one reading; paths must not be kept after it.
   *
   * @param name such as {@code assets}, {@code checklists} or {@code demo-projects}
   * @param reading what to read
   * @return what was read
   * @throws IOException where the program's own files cannot be read
   */
  public static <T> T with(String name, Reading<T> reading) throws IOException {
    Path home = home();
    if (Files.isDirectory(home)) {
      return reading.read(existing(home.resolve("faintwind").resolve(name)));
    }
    try (FileSystem jar = FileSystems.newFileSystem(home)) {
      return reading.read(existing(jar.getPath("/faintwind", name)));
    }
  }

  private static Path existing(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    return folder;
  }

  private static Path home() throws IOException {
    try {
      return Path.of(
          ShippedFolder.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IOException(e);
    }
  }
}
