package faintwind.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** What a file seems to be, by its name and its first bytes. */
public enum FileKind {
  CALIBRATION,
  CHAIN,
  RUNS_TABLE,
  RUN_FILE,
  UNKNOWN;

  private static final int LOOKED_AT_BYTES = 4096;

  /** The word in bundle keys. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind; a file that could be anything is taken by its ending. */
  public static FileKind of(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      return UNKNOWN;
    }
    String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    if (name.equals(ChainFile.NAME)) {
      return CHAIN;
    }
    if (name.endsWith(".json")) {
      return CALIBRATION;
    }
    return name.equals("runs.csv") || firstRow(path).matches("(.*,)?\\s*kind\\s*(,.*)?")
        ? RUNS_TABLE
        : RUN_FILE;
  }

  private static String firstRow(Path path) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      String text = new String(in.readNBytes(LOOKED_AT_BYTES), StandardCharsets.UTF_8);
      return text.replace("\uFEFF", "")
          .lines()
          .filter(line -> !line.startsWith("#"))
          .findFirst()
          .orElse("");
    }
  }
}
