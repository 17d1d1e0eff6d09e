package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.util.List;

/** What every exported file says of itself: whose calibration, which file, range, due date. */
final class ExportHead {
  private ExportHead() {}

  static List<String> lines(ExportedFormula exported, Messages messages) {
    Calibration calibration = exported.calibration();
    List<String> range = calibration.validRange();
    return List.of(
        messages.text("export.head", calmed(calibration.origin().instrumentId())),
        messages.text(
            "export.file",
            calmed(exported.file()),
            calibration.origin().created().toLocalDate().toString(),
            exported.sha256()),
        messages.text(
            "export.range",
            range.get(0),
            range.get(1),
            range.get(4),
            Numerals.compact(calibration.performance().floor_m_s(), 2)),
        messages.text("export.air", range.get(5), range.get(6)),
        messages.text("export.due", exported.due().toString()),
        messages.text("export.by", calibration.origin().softwareVersion()));
  }

  /** People's text where a language could take it for something else: one line, no marks of it. */
  static String calmed(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]", " ")
        .replace("*/", "* /")
        .replace("/*", "/ *")
        .replace("\\", "/")
        .replace("\"", "'")
        .replace("???", "...");
  }
}
