package faintwind.files.design;

import faintwind.files.AtomicFile;
import faintwind.files.RowText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** A parts list as CSV (RFC 4180), whole or not at all. */
public final class PartsFile {
  private PartsFile() {}

  /**
   * Writes the rows, the first being the header.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static void write(Path target, List<List<String>> rows) throws IOException {
    String text =
        rows.stream()
            .map(row -> row.stream().map(RowText::harmless).collect(Collectors.joining(",")))
            .collect(Collectors.joining("\n", "", "\n"));
    AtomicFile.write(target, text.getBytes(StandardCharsets.UTF_8));
  }
}
