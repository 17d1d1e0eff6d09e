package faintwind.job;

import faintwind.files.AtomicFile;
import faintwind.report.page.Pdf;
import faintwind.report.page.WebFonts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

/** A page for reading or printing, put in a file's place. */
public final class PaperFile {
  private PaperFile() {}

  /**
   * Writes a page, whole or not at all.
   *
   * @param target {@code .pdf} gives PDF, anything else HTML
   * @throws IOException where the disk or a permission fails
   */
  public static void write(Path target, String xhtml) throws IOException {
    if (String.valueOf(target.getFileName()).toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      Pdf.write(xhtml, bytes);
      AtomicFile.write(target, bytes.toByteArray());
    } else {
      AtomicFile.write(target, WebFonts.in(xhtml).getBytes(StandardCharsets.UTF_8));
    }
  }
}
