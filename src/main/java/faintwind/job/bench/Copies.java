package faintwind.job.bench;

import faintwind.job.bench.BenchRow.Kind;
import faintwind.job.bench.BenchRow.Need;
import faintwind.message.Messages;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Of two folders whose journals begin with the same line one is a copy of the other: each row says
 * so, whatever else it needs, since nobody can tell which one goes on. What was archived is left
 * out.
 */
final class Copies {
  private Copies() {}

  static List<BenchRow> told(List<BenchRow> rows, Messages words) {
    Map<String, List<BenchRow>> byBeginning = new HashMap<>();
    for (BenchRow row : rows) {
      String begins = row.need().kind() == Kind.ARCHIVED ? "" : beginning(row);
      if (!begins.isBlank()) {
        byBeginning.computeIfAbsent(begins, line -> new ArrayList<>()).add(row);
      }
    }
    Map<BenchRow, String> others = new HashMap<>();
    byBeginning.values().stream()
        .filter(same -> same.size() > 1)
        .forEach(same -> same.forEach(row -> others.put(row, others(row, same))));
    return rows.stream()
        .map(row -> others.containsKey(row) ? told(row, others.get(row), words) : row)
        .toList();
  }

  private static String others(BenchRow row, List<BenchRow> same) {
    return same.stream()
        .filter(other -> !other.equals(row))
        .map(other -> String.valueOf(other.folder().getFileName()))
        .collect(Collectors.joining(", "));
  }

  private static BenchRow told(BenchRow row, String others, Messages words) {
    String why = words.text("bench-list.copy", others);
    Need need = new Need(Kind.COPIED, "", "", why);
    return new BenchRow(
        row.folder(), row.name(), need, Optional.empty(), Optional.empty(), List.of(), 0);
  }

  /** The first line of the journal; empty where it cannot be read, which its row says already. */
  private static String beginning(BenchRow row) {
    try (BufferedReader journal = Files.newBufferedReader(BenchFolder.journal(row.folder()))) {
      return Objects.requireNonNullElse(journal.readLine(), "");
    } catch (IOException unread) {
      return "";
    }
  }
}
