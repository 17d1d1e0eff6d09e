package faintwind.report.export;

import faintwind.message.Messages;
import java.util.stream.Collectors;

/** The executable reader with a calibration in it, as one file of Python. */
public final class PythonExport {
  private static final String END_OF_READER = "if __name__ == \"__main__\":";

  private static final String WORDS = "\"\"\"";

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
    String code = body.substring(body.indexOf(WORDS, body.indexOf(WORDS) + 3) + 3);
    return body.lines().findFirst().orElse("")
        + "\n"
        + head
        + "\n"
        + WORDS
        + messages.text("export.python")
        + WORDS
        + code
        + "\n\n\nCALIBRATION = json.loads(r'''"
        + json
        + "''')\n\n\n"
        + tail;
  }
}
