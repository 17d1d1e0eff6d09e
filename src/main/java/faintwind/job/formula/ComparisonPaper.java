package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.Comparison;
import faintwind.job.PaperFile;
import faintwind.message.Messages;
import faintwind.report.calibration.ComparisonPage;
import faintwind.report.calibration.ComparisonTables;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A comparison of two calibrations, as lines of text or as a page. */
public final class ComparisonPaper {
  private static final int COLUMN = 14;

  private final ComparisonTables tables;

  public ComparisonPaper(
      Calibration earlier, Calibration later, Comparison comparison, Messages messages) {
    this.tables = new ComparisonTables(earlier, later, comparison, messages);
  }

  /** Verdict, causes and tables, one line each. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(tables.verdict());
    lines.add(tables.which());
    lines.addAll(tables.causes());
    lines.add(row(heads(ComparisonTables.speedHeads())));
    tables.speeds().forEach(cells -> lines.add(row(cells)));
    lines.add(row(heads(ComparisonTables.changeHeads())));
    tables.changes().forEach(cells -> lines.add(row(cells)));
    return lines;
  }

  private List<String> heads(List<String> keys) {
    return keys.stream().map(key -> tables.messages().text(key)).toList();
  }

  private static String row(List<String> cells) {
    return cells.stream()
        .map(cell -> cell + " ".repeat(Math.max(1, COLUMN - cell.length())))
        .collect(Collectors.joining(" "))
        .stripTrailing();
  }

  /**
   * Puts the page in a file's place, whole or not at all.
   *
   * @param target {@code .pdf} gives PDF, anything else HTML
   * @throws IOException where the disk or a permission fails
   */
  public void write(Path target) throws IOException {
    PaperFile.write(target, ComparisonPage.of(tables));
  }
}
