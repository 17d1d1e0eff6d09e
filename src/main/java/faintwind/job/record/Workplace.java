package faintwind.job.record;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A folder of instruments, and the names of the folders in it. */
public final class Workplace {
  /** Most file systems end a name at 255 bytes; room is left for a number and for saving. */
  private static final int NAME_BYTES = 120;

  private Workplace() {}

  /** A folder that is not there yet, named after an instrument. */
  public static Path freeFolder(Path into, String name) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-+|-+$", "");
    String start = plain.isEmpty() ? "instrument" : shortened(plain);
    Path path = into.resolve(start);
    for (int i = 2; Files.exists(path); i++) {
      path = into.resolve(start + "-" + i);
    }
    return path;
  }

  private static String shortened(String name) {
    String text = name;
    while (text.getBytes(StandardCharsets.UTF_8).length > NAME_BYTES) {
      text = text.substring(0, text.offsetByCodePoints(text.length(), -1));
    }
    return text;
  }
}
