package faintwind.report.log;

import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.ChecklistChosen;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.Event.RehearsalBegun;
import faintwind.record.Standing;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.List;

/** Notes, files and calibrations of the journal, by date. */
final class BuildLogLedger {
  private BuildLogLedger() {}

  static void write(Html html, LogWords words, BuildLogContent content) {
    List<Standing<? extends Event>> lines =
        content.situation().state().lines().stream()
            .filter(line -> BuildLog.isPlain(line.event()))
            .toList();
    html.element("h3", words.text("build-log.ledger"));
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.when"),
            words.text("build-log.who"),
            words.text("build-log.what")));
    for (Standing<? extends Event> line : lines) {
      String text = text(words, line.event());
      String shown =
          line.strike()
              .map(
                  strike ->
                      Html.struck(text)
                          + " "
                          + Html.escaped(
                              words.text(
                                  "build-log.struck",
                                  words.whoWhen(strike.who(), strike.at()),
                                  strike.why())))
              .orElse(Html.escaped(text));
      html.markupRow(
          List.of(Html.escaped(LogWords.time(line.at())), Html.escaped(line.who()), shown));
    }
    html.closeTable();
  }

  private static String text(LogWords words, Event event) {
    if (event instanceof NoteWritten e) {
      return e.text();
    } else if (event instanceof FileAdded e) {
      return words.text("build-log.file", e.file(), e.sha256());
    } else if (event instanceof CalibrationMade e) {
      return words.text("build-log.calibration-made", e.file(), e.sha256());
    } else if (event instanceof CalibrationPutInForce e) {
      return words.text("build-log.in-force", e.file());
    } else if (event instanceof ChecklistChosen e) {
      return words.text("build-log.checklist-chosen", e.checklist(), e.version(), e.sha256());
    } else if (event instanceof RehearsalBegun) {
      return words.text("build-log.rehearsal.sentence");
    } else if (event instanceof MeterChosen e) {
      return words.text("build-log.meter", e.meter());
    } else if (event instanceof OwnFileNoted e) {
      return words.text("build-log.own-file." + e.kind(), e.file(), e.sha256(), e.refused());
    } else if (event instanceof InstrumentCreated e) {
      return words.text("build-log.created", e.name());
    }
    throw new IllegalArgumentException("no words for " + event.getClass().getSimpleName());
  }
}
