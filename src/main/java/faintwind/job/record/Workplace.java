package faintwind.job.record;

import faintwind.job.FreeName;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

/** A folder of instruments, and the names of the folders in it. */
public final class Workplace {
  /** Most file systems end a name at 255 bytes; room is left for a number and for saving. */
  private static final int NAME_BYTES = 120;

  private Workplace() {}

  /** A folder that is not there yet, named after an instrument. */
  public static Path freeFolder(Path into, String name) {
    String plain = folderName(name);
    return FreeName.in(into, plain.isEmpty() ? "instrument" : plain);
  }

  /** A name that every disk takes for a folder; empty where no letter or digit is in it. */
  public static String folderName(String name) {
    return shortened(
        name.toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-+|-+$", ""));
  }

  private static String shortened(String name) {
    String text = name;
    while (text.getBytes(StandardCharsets.UTF_8).length > NAME_BYTES) {
      text = text.substring(0, text.offsetByCodePoints(text.length(), -1));
    }
    return text;
  }
}
