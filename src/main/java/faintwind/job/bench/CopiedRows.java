package faintwind.job.bench;

import faintwind.job.bench.BenchRow.Kind;
import faintwind.job.bench.BenchRow.Need;
import faintwind.message.Messages;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Rows of copies: each says so, whatever else it needs. What was archived is left out, as is a row
 * whose journal cannot be read, which it says already.
 */
final class CopiedRows {
  private CopiedRows() {}

  static List<BenchRow> told(List<BenchRow> rows, Messages words) {
    Map<BenchRow, List<BenchRow>> copies = Copies.of(rows, CopiedRows::beginning);
    return rows.stream()
        .map(row -> copies.containsKey(row) ? told(row, copies.get(row), words) : row)
        .toList();
  }

  private static BenchRow told(BenchRow row, List<BenchRow> others, Messages words) {
    String folders =
        others.stream()
            .map(other -> String.valueOf(other.folder().getFileName()))
            .collect(Collectors.joining(", "));
    String why = words.text("bench-list.copy", folders);
    return BenchRow.bare(row.folder(), row.name(), new Need(Kind.COPIED, "", "", why));
  }

  /** The first line of its journal. */
  private static String beginning(BenchRow row) {
    if (row.need().kind() == Kind.ARCHIVED
        || !Files.isRegularFile(BenchFolder.journal(row.folder()))) {
      return "";
    }
    try (BufferedReader journal = Files.newBufferedReader(BenchFolder.journal(row.folder()))) {
      return Objects.requireNonNullElse(journal.readLine(), "");
    } catch (IOException unread) {
      return "";
    }
  }
}
