package faintwind.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The first lines of a text file, to be looked at. */
public final class FirstLines {
  private FirstLines() {}

  /**
   * Reads them; a byte-order mark is taken off, a line is cut at 400 characters.
   *
   * @throws IOException where the file is not there, or the disk or a permission fails
   */
  public static List<String> of(Path file, int count) throws IOException {
    List<String> first = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file)) {
      TextLines lines = new TextLines(in);
      while (first.size() < count && lines.next()) {
        String text = lines.text();
        first.add(text.length() <= 400 ? text : text.substring(0, 400));
      }
    }
    return first;
  }
}
