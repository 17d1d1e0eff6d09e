package faintwind.files.table;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLStreamException;

/** Tells which kind of sheet a packed file holds, and reads its first sheet that is not empty. */
final class Sheets {
  /** What one part of a packed sheet may unpack to; more is no table of readings. */
  private static final int LARGEST_PART_BYTES = 512 << 20;

  private Sheets() {}

  /** The lines of the sheet. */
  static Checked<byte[]> lines(byte[] packed, String name) throws IOException {
    try {
      Map<String, byte[]> parts = parts(packed);
      if (parts.containsKey("content.xml")) {
        return OpenSheet.lines(parts, name);
      }
      return parts.containsKey("xl/workbook.xml")
          ? Workbook.lines(packed, name)
          : Checked.refused(Problem.error("table.not-a-sheet", Where.file(name), ""));
    } catch (XMLStreamException | SheetXml.TooLargeException e) {
      return Checked.refused(Problem.error("table.sheet-damaged", Where.file(name), ""));
    }
  }

  /** The parts that tell the kind, and those of an open document. */
  private static Map<String, byte[]> parts(byte[] packed) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String part = entry.getName();
        if (part.equals("content.xml") || part.equals(OpenSheet.MANIFEST)) {
          byte[] bytes = zip.readNBytes(LARGEST_PART_BYTES + 1);
          if (bytes.length > LARGEST_PART_BYTES) {
            throw new SheetXml.TooLargeException();
          }
          parts.put(part, bytes);
        } else if (part.equals("xl/workbook.xml")) {
          parts.put(part, part.getBytes(StandardCharsets.UTF_8));
        }
      }
    }
    return parts;
  }
}
