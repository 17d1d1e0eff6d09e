package faintwind.files.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** How the parts of a sheet are read. */
final class SheetXml {
  private SheetXml() {}

  /** An XML reader that follows nothing outside the part and expands no entities. */
  static XMLStreamReader open(InputStream part) throws XMLStreamException {
    try {
      return reader().createXMLStreamReader(decoded(part));
    } catch (IOException e) {
      throw new XMLStreamException(e);
    }
  }

  /** UTF-8 or, by its mark, UTF-16: left to itself, the parser prints what does not decode. */
  private static Reader decoded(InputStream part) throws IOException {
    PushbackInputStream in = new PushbackInputStream(part, 2);
    byte[] mark = in.readNBytes(2);
    in.unread(mark);
    int both = mark.length < 2 ? 0 : (mark[0] & 0xFF) << 8 | (mark[1] & 0xFF);
    boolean wide = both == 0xFEFF || both == 0xFFFE;
    Charset charset = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    return new InputStreamReader(in, charset.newDecoder());
  }

  private static XMLInputFactory reader() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  /** A part that unpacks to more than any table has. */
  static final class TooLargeException extends IOException {
    private static final long serialVersionUID = 1;
  }
}
