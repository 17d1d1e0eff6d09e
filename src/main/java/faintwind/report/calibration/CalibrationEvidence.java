package faintwind.report.calibration;

import faintwind.calibration.Evidence;
import faintwind.calibration.Evidence.Candidate;
import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.Evidence.MonteCarloSummary;
import faintwind.calibration.fit.judging.ModelChoice;
import faintwind.message.Numerals;
import faintwind.report.page.Chapter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why the chosen formula stands: the others tried, runs foretold by the rest, refits. */
final class CalibrationEvidence {
  private final Chapter to;

  CalibrationEvidence(Chapter to) {
    this.to = to;
  }

  /** The formulas tried, and why each was or was not taken. */
  void choice(Evidence evidence) {
    to.say(
        "calibration-page.choice.text",
        Numerals.compact(ModelChoice.CLEARLY, 2),
        Numerals.compact(100 * (1 - ModelChoice.BETTER_FORETOLD), 2));
    Optional<Candidate> chosen =
        evidence.candidates().stream().filter(Candidate::chosen).findFirst();
    if (chosen.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Candidate candidate : evidence.candidates()) {
      rows.add(
          List.of(
              candidate.model(),
              Numerals.compact(candidate.aicc(), 6),
              Numerals.signed(candidate.aicc() - chosen.get().aicc(), 1),
              Numerals.compact(100 * candidate.leaveOneOut_rms(), 2),
              reason(candidate, chosen.get())));
    }
    to.table(
        List.of(
            "calibration-page.candidate",
            "calibration-page.aicc",
            "calibration-page.aicc-more",
            "calibration-page.left-out-rms",
            "calibration-page.reason"),
        rows);
    to.html()
        .list(
            evidence.candidates().stream()
                .map(c -> c.model() + ": " + to.words().text("model." + c.model() + ".equation"))
                .toList());
  }

  private String reason(Candidate candidate, Candidate chosen) {
    if (candidate.chosen()) {
      return to.words().text("calibration-page.chosen");
    }
    List<String> reasons = new ArrayList<>();
    if (candidate.aicc() >= chosen.aicc() - ModelChoice.CLEARLY) {
      reasons.add(to.words().text("calibration-page.not-likelier"));
    }
    if (candidate.leaveOneOut_rms() >= ModelChoice.BETTER_FORETOLD * chosen.leaveOneOut_rms()) {
      reasons.add(to.words().text("calibration-page.not-foretold"));
    }
    return String.join("; ", reasons);
  }

  /** The refits, or that there were none. */
  void refits(Evidence evidence, Optional<Duration> took) {
    evidence
        .monteCarlo()
        .ifPresentOrElse(study -> said(study, took), () -> to.say("calibration-page.refits.none"));
  }

  private void said(MonteCarloSummary study, Optional<Duration> took) {
    to.say(
        "calibration-page.refits",
        String.valueOf(study.refits()),
        String.valueOf(study.seed()),
        String.valueOf(study.failed()),
        Numerals.compact(study.ratio(), 3));
    took.filter(time -> time.toSeconds() > 0)
        .ifPresent(
            time -> to.say("calibration-page.refits.took", String.valueOf(time.toSeconds())));
  }

  /** Each run by the formula of the others. */
  void foretold(Evidence evidence) {
    if (evidence.leaveOneOut().isEmpty()) {
      return;
    }
    to.say("calibration-page.foretold");
    List<List<String>> rows = new ArrayList<>();
    for (LeftOut run : evidence.leaveOneOut()) {
      double apart = run.foretold_m_s() - run.speed_m_s();
      rows.add(
          List.of(
              run.run(),
              Numerals.compact(run.speed_m_s(), 4),
              Numerals.compact(run.foretold_m_s(), 4),
              Numerals.signed(100 * apart / run.speed_m_s(), 2),
              Numerals.compact(run.u_m_s(), 2)));
    }
    to.table(
        List.of(
            "calibration-page.run",
            "calibration-page.air-speed",
            "calibration-page.foretold.speed",
            "calibration-page.foretold.apart",
            "calibration-page.foretold.u"),
        rows);
  }
}
