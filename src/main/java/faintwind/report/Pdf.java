package faintwind.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/**
 * Turns a page of XHTML into PDF with the bundled DejaVu Sans; nothing is loaded from elsewhere.
 */
public final class Pdf {
  private static final String FONTS = "/faintwind/assets/fonts/";
  private static final String FAMILY = "DejaVu Sans";

  private Pdf() {}

  /**
   * Writes the page.
   *
   * @throws IOException where it cannot be written
   */
  public static void write(String xhtml, OutputStream out) throws IOException {
    XRLog.setLoggingEnabled(false);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFont(() -> font("DejaVuSans.ttf"), FAMILY, 400, FontStyle.NORMAL, true);
    builder.useFont(() -> font("DejaVuSans-Bold.ttf"), FAMILY, 700, FontStyle.NORMAL, true);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.withHtmlContent(xhtml, null);
    builder.toStream(out);
    builder.run();
  }

  private static InputStream font(String name) {
    InputStream font = Pdf.class.getResourceAsStream(FONTS + name);
    if (font == null) {
      throw new IllegalStateException("no font " + FONTS + name);
    }
    return font;
  }
}
