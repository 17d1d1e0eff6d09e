package faintwind.report.picture;

import java.io.StringWriter;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws a picture as an SVG element, for the report; text stays text. */
public final class PictureSvg {
  private static final String SVG = "http://www.w3.org/2000/svg";

  private PictureSvg() {}

  /**
   * The {@code svg} element with view box, title and description, without an XML declaration, ready
   * to stand inside a page.
   */
  public static String of(Picture picture, PictureSize size, PictureStyle style) {
    Document document =
        GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment("");
    context.setPrecision(2);
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    picture.draw(g, size, style);
    Element root = g.getRoot();
    root.setAttributeNS(null, "viewBox", "0 0 " + size.width() + " " + size.height());
    root.setAttributeNS(null, "width", String.valueOf(size.width()));
    root.setAttributeNS(null, "height", String.valueOf(size.height()));
    root.setAttributeNS(null, "role", "img");
    root.insertBefore(element(document, "desc", picture.description()), root.getFirstChild());
    root.insertBefore(element(document, "title", picture.title()), root.getFirstChild());
    return text(g, root);
  }

  private static Element element(Document document, String name, String text) {
    Element element = document.createElementNS(SVG, name);
    element.setTextContent(text);
    return element;
  }

  private static String text(SVGGraphics2D g, Element root) {
    StringWriter writer = new StringWriter();
    try {
      g.stream(root, writer, true, false);
    } catch (SVGGraphics2DIOException e) {
      throw new IllegalStateException("SVG could not be written to memory", e);
    }
    String whole = writer.toString();
    return whole.substring(whole.indexOf("<svg"));
  }
}
