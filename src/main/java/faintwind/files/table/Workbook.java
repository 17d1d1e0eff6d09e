package faintwind.files.table;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.SAXException;

/** The first sheet of an .xlsx workbook that is not empty, read as a stream of cells. */
final class Workbook {
  private static final String PIVOT =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/pivotTable";

  private Workbook() {}

  static Checked<byte[]> lines(byte[] packed, String name) throws IOException, XMLStreamException {
    try (OPCPackage opened = OPCPackage.open(new ByteArrayInputStream(packed))) {
      XSSFReader reader = new XSSFReader(opened);
      WorkbookCells cells =
          new WorkbookCells(
              new ReadOnlySharedStringsTable(opened), reader.getStylesTable(), epoch(reader));
      return first(reader, cells, name);
    } catch (OpenXML4JException | OpenXML4JRuntimeException | SAXException e) {
      return Checked.refused(Problem.error("table.sheet-damaged", Where.file(name), ""));
    }
  }

  private static Checked<byte[]> first(XSSFReader reader, WorkbookCells cells, String name)
      throws IOException, OpenXML4JException, XMLStreamException {
    XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
    Optional<Checked<byte[]>> found = Optional.empty();
    List<String> names = new ArrayList<>();
    while (sheets.hasNext()) {
      try (InputStream part = sheets.next()) {
        names.add(sheets.getSheetName());
        if (found.isEmpty()) {
          found = sheet(part, sheets.getSheetPart(), cells, name);
        }
      }
    }
    if (found.isEmpty()) {
      return Checked.refused(Problem.error("file.empty", Where.file(name), ""));
    }
    List<Problem> notes = SheetNames.notes(names, name);
    return found.get().then(lines -> Checked.ok(lines, notes));
  }

  /** A sheet's lines; nothing where it is empty. */
  private static Optional<Checked<byte[]>> sheet(
      InputStream part, PackagePart about, WorkbookCells cells, String name)
      throws IOException, OpenXML4JException, XMLStreamException {
    WorkbookCells.Sheet sheet = cells.read(part);
    if (sheet.text().isEmpty()) {
      return Optional.empty();
    }
    List<Problem> problems = new ArrayList<>();
    sheet.merged().forEach(at -> problems.add(Problem.error("table.merged", Where.file(name), at)));
    if (about.getRelationshipsByType(PIVOT).size() > 0) {
      problems.add(Problem.error("table.pivot", Where.file(name), sheet.firstCell()));
    }
    return Optional.of(
        problems.isEmpty()
            ? Checked.ok(sheet.text().bytes())
            : Checked.refused(List.of(problems.get(problems.size() - 1))));
  }

  /** Whether days are counted from 1904, as one old kind of machine did. */
  private static WorkbookCells.Epoch epoch(XSSFReader reader)
      throws IOException, OpenXML4JException, XMLStreamException {
    try (InputStream part = reader.getWorkbookData()) {
      return WorkbookCells.epoch(part);
    }
  }
}
