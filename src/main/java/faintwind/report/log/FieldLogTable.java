package faintwind.report.log;

import faintwind.message.Numerals;
import faintwind.record.Event.LogConverted;
import faintwind.report.figure.LogShape;
import faintwind.report.log.BuildLogContent.FieldLog;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.List;

/** The field logs that were kept: when, with which hash, by which calibration, and their shape. */
final class FieldLogTable {
  private FieldLogTable() {}

  static void write(Chapter to, List<FieldLog> logs) {
    if (logs.isEmpty()) {
      to.say("build-log.logs.none");
      return;
    }
    to.markupTable(
        "wide",
        List.of("build-log.logs.when", "build-log.logs.speeds", "build-log.logs.file"),
        logs.stream().map(log -> row(log, to.words())).toList());
  }

  private static List<String> row(FieldLog log, LogWords words) {
    return List.of(
        Html.escaped(words.time(log.from()))
            + "<br/>"
            + Html.escaped(words.text("build-log.logs.to", words.time(log.to()))),
        log.shape().map(shape -> shape(shape, words)).orElse(""),
        Html.span("mono", log.name())
            + "<br/>"
            + Html.span("mono hash", log.sha256())
            + log.converted()
                .map(made -> speeds(made, words))
                .orElseGet(
                    () -> "<br/>" + Html.escaped(words.text("build-log.logs.not-converted"))));
  }

  private static String speeds(LogConverted made, LogWords words) {
    return "<br/>"
        + Html.span("mono", made.speeds())
        + "<br/>"
        + Html.escaped(words.text("build-log.logs.by", made.calibration()));
  }

  private static String shape(LogShape shape, LogWords words) {
    String highest = Numerals.places(shape.top_m_s(), 2);
    return shape.svg(Html.escaped(words.text("build-log.logs.shape", highest)))
        + "<br/>"
        + Html.span("soft", words.text("build-log.logs.shape", highest));
  }
}
