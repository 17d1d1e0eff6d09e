package faintwind.files.instrument;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;

/**
 * The hashes of a journal's lines in their order. Two journals that begin with the same line are of
 * one instrument; one that holds the last line of another went on from it.
 *
 * @param lines hash of each line
 */
public record ChainHeads(List<String> lines) {

  public ChainHeads {
    lines = List.copyOf(lines);
  }

  /**
   * Of a journal.
   *
   * @throws IOException where it cannot be read
   */
  public static ChainHeads of(Journal journal) throws IOException {
    return new ChainHeads(
        ChainedLines.of(Files.readAllBytes(journal.file())).lines().stream()
            .map(ChainedLines.Line::sha256)
            .toList());
  }

  /** Hash of the first line; empty where there is none. */
  public String first() {
    return lines.isEmpty() ? "" : lines.get(0);
  }

  /** Hash of the last line; empty where there is none. */
  public String last() {
    return lines.isEmpty() ? "" : lines.get(lines.size() - 1);
  }

  /** Whether a line of that hash is among them. */
  public boolean has(String sha256) {
    return lines.contains(sha256);
  }
}
