package faintwind.job;

import faintwind.files.AtomicFile;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;

/**
 * How a person wants the window: kept beside the instruments in {@code window.properties}.
 *
 * @param textPct text size in per cent
 * @param theme name of the set of colours
 * @param lessMotion whether moving things jump instead
 * @param who the name that entries are signed with; may be empty
 * @param language code of the language of the words; empty for the system's
 */
public record WindowChoices(
    int textPct, String theme, boolean lessMotion, String who, String language) {
  private static final String FILE = "window.properties";
  private static final int LEAST_PCT = 100;
  private static final int MOST_PCT = 200;

  /**
   * The choices kept in a folder; empty where none were made yet. A file that cannot be understood
   * counts as none: it holds nothing that could be lost.
   */
  public static Optional<WindowChoices> read(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    Properties kept = new Properties();
    try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      kept.load(in);
      int pct = Integer.parseInt(kept.getProperty("text_pct", ""));
      return Optional.of(
          new WindowChoices(
              Math.max(LEAST_PCT, Math.min(MOST_PCT, pct)),
              kept.getProperty("theme", "light"),
              Boolean.parseBoolean(kept.getProperty("less_motion")),
              kept.getProperty("who", ""),
              kept.getProperty("language", "")));
    } catch (IllegalArgumentException notUnderstood) {
      return Optional.empty();
    }
  }

  /** Keeps the choices; the folder is made where it is missing. */
  public void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    Properties kept = new Properties();
    kept.setProperty("text_pct", String.valueOf(textPct));
    kept.setProperty("theme", theme);
    kept.setProperty("less_motion", String.valueOf(lessMotion));
    kept.setProperty("who", who);
    kept.setProperty("language", language);
    StringWriter text = new StringWriter();
    kept.store(text, "how the window looks");
    AtomicFile.write(folder.resolve(FILE), text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
