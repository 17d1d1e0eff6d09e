package faintwind.files.table;

import java.io.IOException;
import javax.xml.stream.XMLInputFactory;

/** How the parts of a sheet are read. */
final class SheetXml {
  private SheetXml() {}

  /** An XML reader that follows nothing outside the part and expands no entities. */
  static XMLInputFactory reader() {
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
