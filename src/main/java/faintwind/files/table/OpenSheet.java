package faintwind.files.table;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * The first table of an .ods document that is not empty (OASIS OpenDocument 1.2 part 1, 9.1),
 * unpacked and read as a stream. Rows and cells that are said to repeat are repeated only where
 * something stands in them.
 */
final class OpenSheet {
  static final String MANIFEST = "META-INF/manifest.xml";
  private static final int MOST_COLUMNS = 16_384;

  private final XMLStreamReader xml;
  private final WorkbookLines text = new WorkbookLines();
  private final List<String> cells = new ArrayList<>();
  private Optional<Problem> merged = Optional.empty();
  private final Where where;
  private int row;

  private OpenSheet(XMLStreamReader xml, Where where) {
    this.xml = xml;
    this.where = where;
  }

  static Checked<byte[]> lines(Map<String, byte[]> parts, String name) throws XMLStreamException {
    Where where = Where.file(name);
    byte[] manifest = parts.getOrDefault(MANIFEST, new byte[0]);
    if (new String(manifest, StandardCharsets.UTF_8).contains("encryption-data")) {
      return Checked.refused(Problem.error("table.password", where, ""));
    }
    byte[] content = parts.getOrDefault("content.xml", new byte[0]);
    XMLStreamReader xml = SheetXml.open(new ByteArrayInputStream(content));
    Optional<Checked<byte[]>> found = Optional.empty();
    List<String> names = new ArrayList<>();
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      if (xml.getLocalName().equals("table")) {
        names.add(String.valueOf(attribute(xml, "name")));
        OpenSheet sheet = new OpenSheet(xml, where);
        sheet.read();
        found = found.isPresent() || sheet.text.isEmpty() ? found : Optional.of(sheet.result());
      } else if (xml.getLocalName().equals("data-pilot-table")) {
        String at = String.valueOf(attribute(xml, "target-range-address"));
        if (!names.isEmpty() && at.contains(names.get(0))) {
          return Checked.refused(Problem.error("table.pivot", where, at));
        }
      }
    }
    return found
        .orElseGet(() -> Checked.refused(Problem.error("file.empty", where, "")))
        .then(lines -> Checked.ok(lines, SheetNames.notes(names, name)));
  }

  private Checked<byte[]> result() {
    return merged.isPresent() ? Checked.refused(merged.get()) : Checked.ok(text.bytes());
  }

  /** From the start of a table to its end. */
  private void read() throws XMLStreamException {
    int repeated = 1;
    while (xml.hasNext()) {
      int event = xml.next();
      String local = event == XMLStreamConstants.CHARACTERS ? "" : name();
      if (event == XMLStreamConstants.START_ELEMENT) {
        if (local.equals("table-row")) {
          repeated = count("number-rows-repeated");
        } else if (local.equals("table-cell") || local.equals("covered-table-cell")) {
          cell();
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && local.equals("table-row")) {
        row(repeated);
      } else if (event == XMLStreamConstants.END_ELEMENT && local.equals("table")) {
        return;
      }
    }
  }

  private String name() {
    return xml.hasName() ? xml.getLocalName() : "";
  }

  private void row(int repeated) {
    boolean blank = cells.stream().allMatch(String::isBlank);
    for (int i = 0; !blank && i < repeated; i++) {
      text.row(row + 1 + i, cells);
    }
    row += repeated;
    cells.clear();
  }

  private void cell() throws XMLStreamException {
    int repeated = Math.min(count("number-columns-repeated"), MOST_COLUMNS - cells.size());
    int columns = count("number-columns-spanned");
    int rows = count("number-rows-spanned");
    if ((columns > 1 || rows > 1) && merged.isEmpty()) {
      String from = WorkbookLines.cell(row + 1, cells.size() + 1);
      String to = WorkbookLines.cell(row + rows, cells.size() + columns);
      merged = Optional.of(Problem.error("table.merged", where, from + ":" + to));
    }
    String shown = shown();
    for (int i = 0; i < repeated; i++) {
      cells.add(shown);
    }
  }

  private String shown() throws XMLStreamException {
    @Nullable String type = attribute(xml, "value-type");
    @Nullable String number = attribute(xml, "value");
    @Nullable String date = attribute(xml, "date-value");
    @Nullable String time = attribute(xml, "time-value");
    String words = words();
    try {
      if (type != null && number != null) {
        return WorkbookLines.number(Double.parseDouble(number));
      }
      if (date != null) {
        return date.contains("T") ? WorkbookLines.moment(LocalDateTime.parse(date)) : date;
      }
      return time == null ? words : WorkbookLines.clock(Duration.parse(time).toMillis());
    } catch (DateTimeException | NumberFormatException e) {
      return words;
    }
  }

  /** The paragraphs of a cell; notes stuck to it are passed over. */
  private String words() throws XMLStreamException {
    StringBuilder words = new StringBuilder();
    int depth = 1;
    int note = 0;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        depth++;
        note = note == 0 && xml.getLocalName().equals("annotation") ? depth : note;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        note = note == depth ? 0 : note;
        depth--;
      } else if (event == XMLStreamConstants.CHARACTERS && note == 0) {
        words.append(xml.getText());
      }
    }
    return words.toString().strip();
  }

  private int count(String key) {
    @Nullable String text = attribute(xml, key);
    return text != null && text.matches("\\d{1,8}") ? Math.max(1, Integer.parseInt(text)) : 1;
  }

  private static @Nullable String attribute(XMLStreamReader xml, String key) {
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals(key)) {
        return xml.getAttributeValue(i);
      }
    }
    return null;
  }
}
