package faintwind.bench;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.nio.file.Path;

/**
 * Merely parses the numbers of a table with FastCSV and writes its rows again, with three cells
 * more.
 */
public final class CopyCsv {
  private CopyCsv() {}

  /** The table and the copy. */
  public static void main(String[] arguments) throws IOException {
    double sum = 0;
    try (CsvReader<CsvRecord> in = CsvReader.builder().ofCsvRecord(Path.of(arguments[0]));
        CsvWriter out = CsvWriter.builder().build(Path.of(arguments[1]))) {
      boolean head = true;
      for (CsvRecord row : in) {
        String[] cells = row.getFields().toArray(new String[row.getFieldCount() + 3]);
        for (int i = 0; !head && i < row.getFieldCount(); i++) {
          sum += JavaDoubleParser.parseDouble(cells[i]);
        }
        cells[cells.length - 3] = head ? "speed_m_s" : "0.12345";
        cells[cells.length - 2] = head ? "u95_m_s" : "0.01234";
        cells[cells.length - 1] = head ? "flag" : "";
        out.writeRecord(cells);
        head = false;
      }
    }
    System.err.println(sum);
  }
}
