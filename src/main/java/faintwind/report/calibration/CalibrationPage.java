package faintwind.report.calibration;

import faintwind.calibration.Calibration;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.report.page.Chapter;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.time.Duration;
import java.util.Optional;

/** One calibration as a page that stands alone: no file beside it is needed to read or print it. */
public final class CalibrationPage {
  private CalibrationPage() {}

  /**
   * The page, XHTML so that it can also become a PDF.
   *
   * @param look what the calibration was drawn from
   * @param refitting how long the refits took, where it was measured
   */
  public static String of(
      Calibration calibration, FitLook look, Optional<Duration> refitting, Messages messages) {
    String title = messages.text("calibration-page.title", calibration.origin().instrumentId());
    LogWords words = new LogWords(messages);
    String label = calibration.rehearsal() ? messages.text("build-log.rehearsal") : "";
    return new Page(words, title, label, "")
        .html(
            html -> {
              html.element("h1", title);
              Chapter chapter = new Chapter(html, words, 2);
              chapter.say(
                  "calibration-page.made",
                  words.time(calibration.origin().created()),
                  calibration.origin().softwareVersion(),
                  calibration.signal().unit().column());
              if (calibration.rehearsal()) {
                html.element("p", "made-up", messages.text("build-log.rehearsal.sentence"));
              }
              new CalibrationSections(chapter).write(calibration, Checked.ok(look), refitting);
            });
  }
}
