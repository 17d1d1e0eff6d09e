package faintwind.report.log;

import faintwind.guide.InForceGate;
import faintwind.record.Event;
import faintwind.record.Event.AlterationAccepted;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.ChainBegun;
import faintwind.record.Event.ChecklistChosen;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.HandedOver;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.LinesLost;
import faintwind.record.Event.LogConverted;
import faintwind.record.Event.MeterChosen;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.OwnFileNoted;
import faintwind.record.Event.Rechecked;
import faintwind.record.Event.RehearsalBegun;
import faintwind.record.Event.Repaired;
import faintwind.record.Event.Retired;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Notes, files and calibrations of the journal, by date: what stands in no table of its own. */
final class BuildLogLedger {
  private BuildLogLedger() {}

  static void write(Chapter to, InstrumentState state) {
    List<List<String>> rows = new ArrayList<>();
    for (Standing<? extends Event> line : state.lines()) {
      text(to.words(), line.event())
          .ifPresent(
              text ->
                  rows.add(
                      List.of(
                          Html.escaped(to.words().time(line.at())),
                          Html.escaped(line.who()),
                          to.words().entry(line, text))));
    }
    to.markupTable("wide", List.of("build-log.when", "build-log.who", "build-log.what"), rows);
  }

  private static Optional<String> text(LogWords words, Event event) {
    if (event instanceof NoteWritten e) {
      return Optional.of(e.text());
    } else if (event instanceof FileAdded e) {
      return Optional.of(words.text("build-log.file", e.file(), e.sha256()));
    } else if (event instanceof CalibrationMade e) {
      return Optional.of(words.text("build-log.calibration-made", e.file(), e.sha256()));
    } else if (event instanceof CalibrationPutInForce e) {
      return Optional.of(words.text("build-log.in-force", e.file()));
    } else if (event instanceof ChecklistChosen e) {
      return Optional.of(
          words.text("build-log.checklist-chosen", e.checklist(), e.version(), e.sha256()));
    } else if (event instanceof RehearsalBegun) {
      return Optional.of(words.text("build-log.rehearsal.sentence"));
    } else if (event instanceof MeterChosen e) {
      return Optional.of(words.text("build-log.meter", e.meter()));
    } else if (event instanceof OwnFileNoted e) {
      return Optional.of(
          words.text("build-log.own-file." + e.kind(), e.file(), e.sha256(), e.refused()));
    } else if (event instanceof InstrumentCreated e) {
      return Optional.of(words.text("build-log.created", e.name()));
    }
    return fate(words, event);
  }

  private static Optional<String> fate(LogWords words, Event event) {
    if (event instanceof Waived e && e.what().startsWith(InForceGate.EXPLAINED)) {
      String file = e.what().substring(InForceGate.EXPLAINED.length());
      return Optional.of(words.text("build-log.explained", file, e.reason()));
    }
    if (event instanceof LogConverted e) {
      return Optional.of(
          words.text(
              "build-log.converted",
              e.log(),
              e.speeds(),
              e.calibration(),
              e.sha256(),
              e.software().map(version -> ", Faintwind " + version).orElse("")));
    } else if (event instanceof Rechecked e) {
      String key = e.agrees() ? "build-log.recheck-stands" : "build-log.recheck-due";
      return Optional.of(words.text(key, e.calibration(), e.text(), e.runs(), e.sha256()));
    } else if (event instanceof Repaired e) {
      return Optional.of(words.text("build-log.repair", e.text()));
    } else if (event instanceof HandedOver e) {
      return Optional.of(words.text("build-log.hand-over", e.to(), e.text()));
    } else if (event instanceof Retired e) {
      return Optional.of(words.text("build-log.retired", e.why()));
    } else if (event instanceof ChainBegun e) {
      return Optional.of(words.text("build-log.chain", String.valueOf(e.lines()), e.sha256()));
    } else if (event instanceof LinesLost e) {
      String lost = String.valueOf(e.lines() - e.left());
      return Optional.of(
          words.text("build-log.lines-lost", lost, String.valueOf(e.lines()), e.head()));
    } else if (event instanceof AlterationAccepted e) {
      return Optional.of(words.text("build-log.accepted", e.place(), e.reason(), e.sha256()));
    }
    return Optional.empty();
  }
}
