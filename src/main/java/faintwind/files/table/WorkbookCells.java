package faintwind.files.table;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.jspecify.annotations.Nullable;

/**
 * Reads the cells of a worksheet part (ECMA-376 part 1, 18.3.1). Numbers with a date's format
 * become dates; a formula is what it came to when the workbook was saved.
 *
 * @param strings texts that cells share
 * @param styles formats of cells; a small workbook has none
 * @param epoch day 0
 */
record WorkbookCells(SharedStrings strings, Optional<StylesTable> styles, Epoch epoch) {
  private static final double DAY_MS = 86_400_000;

  /** Sheets have this many columns at most. */
  private static final int MOST_COLUMNS = 16_384;

  /** From where days are counted. */
  enum Epoch {
    Y1900(LocalDate.of(1899, 12, 30)),
    Y1904(LocalDate.of(1904, 1, 1));

    private final LocalDate day0;

    Epoch(LocalDate day0) {
      this.day0 = day0;
    }
  }

  /**
   * What a sheet holds.
   *
   * @param text its rows
   * @param merged ranges of merged cells
   * @param firstCell the first cell that is not empty
   */
  record Sheet(WorkbookLines text, List<String> merged, String firstCell) {}

  Sheet read(InputStream part) throws XMLStreamException, IOException {
    XMLStreamReader xml = SheetXml.open(part);
    WorkbookLines text = new WorkbookLines();
    List<String> merged = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    String first = "";
    int row = 0;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "row" -> row = number(xml.getAttributeValue(null, "r"), row + 1);
          case "c" -> {
            String at = cell(xml, cells);
            first = first.isEmpty() && !cells.get(cells.size() - 1).isEmpty() ? at : first;
          }
          case "mergeCell" -> merged.add(String.valueOf(xml.getAttributeValue(null, "ref")));
          default -> {
            // layout
          }
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row")) {
        text.row(row, cells);
        cells.clear();
      }
    }
    return new Sheet(text, merged, first);
  }

  /** Adds a cell in its column; its name. */
  private String cell(XMLStreamReader xml, List<String> cells) throws XMLStreamException {
    @Nullable String at = xml.getAttributeValue(null, "r");
    int column = at == null ? cells.size() : new CellReference(at).getCol();
    while (cells.size() < Math.min(column, MOST_COLUMNS)) {
      cells.add("");
    }
    @Nullable String type = xml.getAttributeValue(null, "t");
    int style = number(xml.getAttributeValue(null, "s"), 0);
    String value = value(xml);
    cells.add(shown(value, type == null ? "n" : type, style));
    return String.valueOf(at);
  }

  /** The text of v, or of is; a formula's own text is passed over. */
  private static String value(XMLStreamReader xml) throws XMLStreamException {
    StringBuilder value = new StringBuilder();
    String inside = "";
    while (true) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        inside = xml.getLocalName();
      } else if (event == XMLStreamConstants.CHARACTERS
          && (inside.equals("v") || inside.equals("t"))) {
        value.append(xml.getText());
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        inside = "";
        if (xml.getLocalName().equals("c")) {
          return value.toString();
        }
      }
    }
  }

  private String shown(String value, String type, int style) {
    if (value.isEmpty()) {
      return "";
    }
    return switch (type) {
      case "s" -> strings.getItemAt(Integer.parseInt(value)).getString();
      case "n" -> number(Double.parseDouble(value), style);
      default -> value;
    };
  }

  private String number(double value, int style) {
    Optional<XSSFCellStyle> format =
        styles.filter(all -> style < all.getNumCellStyles()).map(all -> all.getStyleAt(style));
    boolean date =
        format
            .filter(f -> DateUtil.isADateFormat(f.getDataFormat(), f.getDataFormatString()))
            .isPresent();
    if (!date || value < 0) {
      return WorkbookLines.number(value);
    }
    String letters = String.valueOf(format.orElseThrow().getDataFormatString());
    long time_ms = Math.round(value * DAY_MS);
    if (value < 1 || letters.startsWith("[h")) {
      return WorkbookLines.clock(time_ms);
    }
    LocalDateTime at =
        LocalDateTime.of(epoch.day0, LocalTime.MIDNIGHT).plus(time_ms, ChronoUnit.MILLIS);
    boolean dayOnly = time_ms % (long) DAY_MS == 0 && !letters.contains("h");
    return dayOnly ? at.toLocalDate().toString() : WorkbookLines.moment(at);
  }

  private static int number(@Nullable String text, int otherwise) {
    return text == null ? otherwise : Integer.parseInt(text);
  }

  /** From where the days of a workbook are counted. */
  static Epoch epoch(InputStream workbook) throws XMLStreamException {
    XMLStreamReader xml = SheetXml.open(workbook);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT
          && xml.getLocalName().equals("workbookPr")) {
        @Nullable String late = xml.getAttributeValue(null, "date1904");
        return "1".equals(late) || "true".equals(late) ? Epoch.Y1904 : Epoch.Y1900;
      }
    }
    return Epoch.Y1900;
  }
}
