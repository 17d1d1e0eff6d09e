package faintwind.files;

import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** What can be said of an input before its first byte is read. */
public final class InputFile {
  private InputFile() {}

  /** Why the file cannot be an input, if so: not there, a folder, a pipe, larger than it may be. */
  public static Optional<Problem> trouble(Path path, String name, long largest_bytes)
      throws IOException {
    Where where = Where.file(name);
    if (!Files.exists(path)) {
      return Optional.of(Problem.error("file.missing", where, name));
    }
    if (Files.isDirectory(path)) {
      return Optional.of(Problem.error("file.is-folder", where, name));
    }
    if (!Files.isRegularFile(path)) {
      return Optional.of(Problem.error("file.not-plain", where, name));
    }
    long size_bytes = Files.size(path);
    if (size_bytes > largest_bytes) {
      String found = String.valueOf(size_bytes >> 20);
      String allowed = String.valueOf(largest_bytes >> 20);
      return Optional.of(Problem.error("file.too-large", where, found, allowed));
    }
    return Optional.empty();
  }
}
