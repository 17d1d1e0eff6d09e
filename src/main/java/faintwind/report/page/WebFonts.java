package faintwind.report.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Puts the program's own faces into a page, so that it looks the same everywhere and loads nothing:
 * of each face only the letters that the page uses.
 */
public final class WebFonts {
  private static final String FONTS = "/faintwind/assets/fonts/";
  private static final String END = "</style>";

  /** Without the tables that speak of glyphs by numbers which a subset does not keep. */
  private static final List<String> TABLES =
      List.of(
          "OS/2", "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name",
          "post", "prep");

  private static final List<Face> FACES =
      List.of(
          new Face("Lato-Regular.ttf", "Lato", 400, "normal"),
          new Face("Lato-Bold.ttf", "Lato", 700, "normal"),
          new Face("Lato-Italic.ttf", "Lato", 400, "italic"),
          new Face("Lato-Semibold.ttf", "Lato Semibold", 400, "normal"),
          new Face("DejaVuSansMono.ttf", "DejaVu Sans Mono", 400, "normal"));

  private WebFonts() {}

  private record Face(String file, String family, int weight, String style) {}

  /**
   * The same page with its faces.
   *
   * @param xhtml a page with a style element
   */
  public static String in(String xhtml) throws IOException {
    StringBuilder rules = new StringBuilder();
    for (Face face : FACES) {
      rules
          .append("@font-face { font-family: \"")
          .append(face.family())
          .append("\"; font-weight: ")
          .append(face.weight())
          .append("; font-style: ")
          .append(face.style())
          .append("; src: url(data:font/ttf;base64,")
          .append(Base64.getEncoder().encodeToString(subset(face.file(), xhtml)))
          .append(") format(\"truetype\"); }\n");
    }
    int at = xhtml.indexOf(END);
    return at < 0 ? xhtml : xhtml.substring(0, at) + rules + xhtml.substring(at);
  }

  private static byte[] subset(String file, String text) throws IOException {
    try (InputStream in = WebFonts.class.getResourceAsStream(FONTS + file)) {
      if (in == null) {
        throw new IllegalStateException("no font " + FONTS + file);
      }
      try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
        TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
        subsetter.addAll(text.codePoints().boxed().collect(Collectors.toSet()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        subsetter.writeToStream(bytes);
        return bytes.toByteArray();
      }
    }
  }
}
