package faintwind.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Columns of a reference table: comment lines, a header, rows. */
record FitColumns(List<String> header, List<String[]> rows) {

  static FitColumns read(String name) {
    Path path = Path.of("src/test/resources/published", name);
    try {
      List<String> lines =
          Files.readAllLines(path).stream().filter(line -> !line.startsWith("#")).toList();
      return new FitColumns(
          List.of(lines.get(0).split(",")),
          lines.stream().skip(1).map(line -> line.split(",", -1)).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double number(String cell) {
    return cell.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(cell);
  }

  double[] numbers(String column) {
    int index = header.indexOf(column);
    return rows.stream().mapToDouble(row -> number(row[index])).toArray();
  }
}
