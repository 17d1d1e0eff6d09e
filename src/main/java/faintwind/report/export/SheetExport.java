package faintwind.report.export;

import faintwind.message.Messages;
import java.io.IOException;

/** stub */
public final class SheetExport {
  public SheetExport(ExportedFormula exported, Messages messages) {}

  public byte[] bytes() throws IOException {
    return new byte[0];
  }
}
