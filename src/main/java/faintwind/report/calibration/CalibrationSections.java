package faintwind.report.calibration;

import faintwind.calibration.Calibration;
import faintwind.calibration.Iso7726;
import faintwind.calibration.Performance;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.report.figure.BandPlots;
import faintwind.report.page.Chapter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One calibration in words, tables and plots, in the order in which its numbers came about: the
 * recordings, the fit, the choice, the straight line beside it, the band, the use.
 */
public final class CalibrationSections {
  private final Chapter to;

  public CalibrationSections(Chapter to) {
    this.to = to;
  }

  /**
   * Writes them.
   *
   * @param look what the calibration was drawn from; refused where its recordings are not at hand
   * @param refitting how long the refits took, where it was measured
   */
  public void write(Calibration c, Checked<FitLook> look, Optional<Duration> refitting) {
    to.html().element("p", "verdict", verdict(c));
    to.say("calibration-page.how");
    warnings(c);
    CalibrationRecordings recordings = new CalibrationRecordings(to);
    to.head("calibration-page.recordings");
    recordings.write(c, look);
    to.head("calibration-page.fit");
    new CalibrationFit(to).write(c, look);
    to.head("calibration-page.build");
    new BuildMeetingTable(to).write(c);
    to.head("calibration-page.choice");
    CalibrationEvidence evidence = new CalibrationEvidence(to);
    evidence.choice(c.evidence());
    to.head("calibration-page.straight");
    recordings.straightLine(c, look);
    to.head("calibration-page.band");
    new CalibrationBand(to).write(c);
    evidence.refits(c.evidence(), refitting);
    evidence.foretold(c.evidence());
    new CalibrationBand(to).covariance(c);
    to.head("calibration-page.use");
    use(c);
    to.head("calibration-page.inputs");
    inputs(c);
  }

  private String verdict(Calibration c) {
    double lowest = Math.max(c.coverage().lowest_m_s(), c.performance().floor_m_s());
    double worst =
        c.performance().speeds().stream()
            .filter(s -> s.speed_m_s() >= 0.99 * lowest)
            .filter(s -> s.speed_m_s() <= 1.01 * c.coverage().highest_m_s())
            .mapToDouble(s -> 100 * s.u95_m_s() / s.speed_m_s())
            .max()
            .orElse(0);
    return to.words()
        .text(
            "calibration-page.verdict",
            Numerals.compact(lowest, 2),
            Numerals.compact(c.coverage().highest_m_s(), 2),
            Numerals.compact(worst, 2),
            Numerals.compact(c.performance().floor_m_s(), 2));
  }

  private void warnings(Calibration c) {
    to.head("calibration-page.warnings");
    if (c.warnings().isEmpty()) {
      to.say("calibration-page.no-warnings");
      return;
    }
    List<String> lines = new ArrayList<>();
    for (Problem warning : c.warnings()) {
      String run = warning.where().run().map(name -> name + ": ").orElse("");
      lines.add(run + to.words().messages().note(warning));
    }
    to.html().list(lines);
  }

  private void use(Calibration c) {
    Performance performance = c.performance();
    to.say(
        "calibration-page.use.text",
        Numerals.compact(performance.floor_m_s(), 2),
        Numerals.compact(performance.noise(), 2),
        c.signal().unit().symbol(),
        Numerals.compact(performance.rowStep_s(), 3));
    to.plot(new BandPlots(to.words().messages()).response(c));
    to.say("calibration-page.iso7726");
    List<String> grades = new ArrayList<>();
    for (Iso7726 grade : Iso7726.values()) {
      grades.add(
          to.words()
              .text(
                  "calibration-page.iso7726." + grade.name().toLowerCase(Locale.ROOT),
                  String.valueOf(grade.within(performance.speeds()).size()),
                  String.valueOf(grade.inRange(performance.speeds()).size())));
    }
    double quickest_s = performance.speeds().stream().mapToDouble(AtSpeed::rise_s).min().orElse(0);
    grades.add(
        to.words()
            .text(
                "calibration-page.iso7726.response",
                Numerals.compact(Iso7726.RESPONSE_S, 1),
                Numerals.compact(quickest_s, 2)));
    to.html().list(grades);
  }

  private void inputs(Calibration c) {
    to.say("calibration-page.inputs.text");
    to.html()
        .table(
            "hashes",
            List.of(to.words().text("calibration-page.file-name"), "SHA-256"),
            c.origin().inputSha256().entrySet().stream()
                .map(input -> List.of(input.getKey(), input.getValue()))
                .toList());
  }
}
