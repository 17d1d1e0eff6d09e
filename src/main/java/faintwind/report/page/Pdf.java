package faintwind.report.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Turns a page of XHTML into PDF with the bundled Lato and DejaVu Sans; nothing is loaded from
 * elsewhere. The PDF is tagged: headings, tables and lists keep their structure for a screen
 * reader, and every plot carries its title and summary.
 */
public final class Pdf {
  private static final String FONTS = "/faintwind/assets/fonts/";
  private static final String FAMILY = "DejaVu Sans";
  private static final int TABLE_RECORDS = 12;
  private static final int TABLE_RECORD = 16;
  private static final String SVG = "http://www.w3.org/2000/svg";

  private Pdf() {}

  /**
   * Writes the page.
   *
   * @throws IOException where it cannot be written
   * @throws IllegalArgumentException where the page is not well-formed XML
   */
  public static void write(String xhtml, OutputStream out) throws IOException {
    XRLog.setLoggingEnabled(false);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    use(builder, "Lato-Regular.ttf", "Lato", 400);
    use(builder, "Lato-Bold.ttf", "Lato", 700);
    builder.useFont(() -> font("Lato-Italic.ttf"), "Lato", 400, FontStyle.ITALIC, true);
    // the strong face of the plots, which names itself so
    use(builder, "Lato-Semibold.ttf", "Lato Semibold", 400);
    use(builder, "DejaVuSansMono.ttf", "DejaVu Sans Mono", 400);
    use(builder, "DejaVuSans.ttf", FAMILY, 400);
    use(builder, "DejaVuSans-Bold.ttf", FAMILY, 700);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.usePdfUaAccessibility(true);
    Document page = parsed(xhtml);
    describePictures(page);
    builder.withW3cDocument(page, null);
    builder.toStream(out);
    builder.run();
  }

  /** A face for the text and for the plots, which are drawn with what they were measured with. */
  private static void use(PdfRendererBuilder builder, String file, String family, int weight) {
    builder.useFont(
        () -> font(file),
        family,
        weight,
        FontStyle.NORMAL,
        true,
        EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG));
  }

  private static Document parsed(String xhtml) throws IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    try {
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
    } catch (SAXException e) {
      throw new IllegalArgumentException("page is not well-formed: " + e.getMessage(), e);
    } catch (ParserConfigurationException e) {
      // the plainest parser there is; every Java platform has it
      throw new IllegalStateException(e);
    }
  }

  /** Gives drawings the text that stands for them; those that only repeat a word get a blank. */
  private static void describePictures(Document page) {
    NodeList drawings = page.getElementsByTagNameNS(SVG, "svg");
    for (int i = 0; i < drawings.getLength(); i++) {
      Element drawing = (Element) drawings.item(i);
      String said = (text(drawing, "title") + " " + text(drawing, "desc")).strip();
      drawing.setAttribute("alt", said.isEmpty() ? " " : said);
    }
  }

  private static String text(Element drawing, String name) {
    NodeList found = drawing.getElementsByTagNameNS(SVG, name);
    return found.getLength() == 0 ? "" : found.item(0).getTextContent().strip();
  }

  /**
   * A font without its ligatures: the library draws them without saying which letters they stand
   * for, so that a word could not be searched, copied or read aloud.
   */
  private static InputStream font(String name) {
    try (InputStream font = Pdf.class.getResourceAsStream(FONTS + name)) {
      if (font == null) {
        throw new IllegalStateException("no font " + FONTS + name);
      }
      return new ByteArrayInputStream(withoutSubstitution(font.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Gives the table of glyph substitution a name that nobody looks for (OpenType, table records).
   */
  private static byte[] withoutSubstitution(byte[] font) {
    int tables = ((font[4] & 0xFF) << 8) | (font[5] & 0xFF);
    for (int i = 0; i < tables; i++) {
      int at = TABLE_RECORDS + TABLE_RECORD * i;
      if (new String(font, at, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
        font[at] = 'x';
      }
    }
    return font;
  }
}
