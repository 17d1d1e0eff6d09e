package faintwind.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * A file that the program keeps for itself to be quicker the next time. Whatever is wrong with it,
 * it counts as not there: nothing is lost with it.
 */
public final class KeptFile {
  private KeptFile() {}

  /** What was kept; empty where there is nothing that can be used. */
  public static <T> Optional<T> read(Path file, Class<T> type) {
    try {
      return Files.isRegularFile(file)
          ? Optional.of(new JsonForm(Map.of()).read(JsonFile.object(Files.readString(file)), type))
          : Optional.empty();
    } catch (IOException | IllegalArgumentException unusable) {
      return Optional.empty();
    }
  }

  /** Keeps a record; tells whether the disk took it. */
  public static boolean write(Path file, Object value) {
    try {
      String text = new JsonForm(Map.of()).write(value).toString();
      AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
      return true;
    } catch (IOException full) {
      return false;
    }
  }
}
