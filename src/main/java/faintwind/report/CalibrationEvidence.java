package faintwind.report;

import faintwind.calibration.Evidence;
import faintwind.calibration.Evidence.Candidate;
import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.Evidence.MonteCarloSummary;
import java.util.List;

/** Why the chosen formula stands: the others tried, runs foretold by the rest, refits. */
final class CalibrationEvidence {
  private final LogWords words;

  CalibrationEvidence(LogWords words) {
    this.words = words;
  }

  void write(Html html, Evidence evidence) {
    candidates(html, evidence.candidates());
    foretold(html, evidence.leaveOneOut());
    String refits =
        evidence.monteCarlo().map(this::refits).orElse(words.text("build-log.monte-carlo.none"));
    html.element("p", refits);
  }

  private String refits(MonteCarloSummary study) {
    return words.text(
        "build-log.monte-carlo",
        String.valueOf(study.refits()),
        String.valueOf(study.seed()),
        String.valueOf(study.failed()),
        LogWords.figures(study.ratio(), 3));
  }

  private void candidates(Html html, List<Candidate> candidates) {
    if (candidates.isEmpty()) {
      return;
    }
    html.element("h4", words.text("build-log.candidates"));
    html.element("p", words.text("build-log.candidates.text"));
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.candidate"),
            "AICc",
            words.text("build-log.left-out-rms"),
            words.text("build-log.chosen")));
    for (Candidate candidate : candidates) {
      html.row(
          List.of(
              candidate.model(),
              LogWords.figures(candidate.aicc(), 6),
              LogWords.figures(100 * candidate.leaveOneOut_rms(), 2),
              words.text(candidate.chosen() ? "build-log.yes" : "build-log.no")));
    }
    html.closeTable();
  }

  private void foretold(Html html, List<LeftOut> runs) {
    if (runs.isEmpty()) {
      return;
    }
    html.element("h4", words.text("build-log.foretold"));
    html.openTable(
        "wide",
        List.of(
            words.text("build-log.run"),
            words.text("build-log.speed"),
            words.text("build-log.foretold.speed"),
            words.text("build-log.foretold.u")));
    for (LeftOut run : runs) {
      html.row(
          List.of(
              run.run(),
              LogWords.figures(run.speed_m_s(), 4),
              LogWords.figures(run.foretold_m_s(), 4),
              LogWords.figures(run.u_m_s(), 2)));
    }
    html.closeTable();
  }
}
