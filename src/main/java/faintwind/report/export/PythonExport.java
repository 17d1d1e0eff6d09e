package faintwind.report.export;

import faintwind.message.Messages;
import java.util.stream.Collectors;

/** The executable reader with a calibration in it, as one file of Python. */
public final class PythonExport {
  private static final String END_OF_READER = "if __name__ == \"__main__\":";

  private PythonExport() {}

  /**
   * As one file.
   *
   * @param reader text of the reader
   * @param tail what gives it uncertainty, flags and a beginning
   * @param json the calibration
   */
  public static String text(
      ExportedFormula exported, Messages messages, String reader, String tail, String json) {
    String head =
        ExportHead.lines(exported, messages).stream()
            .map(line -> "# " + line)
            .collect(Collectors.joining("\n"));
    String body = reader.substring(0, reader.indexOf(END_OF_READER)).stripTrailing();
    String hash = body.lines().findFirst().orElse("");
    return hash
        + "\n"
        + head
        + "\n# "
        + messages.text("export.python")
        + body.substring(hash.length())
        + "\n\n\nCALIBRATION = json.loads(r'''"
        + json
        + "''')\n\n\n"
        + tail;
  }
}
