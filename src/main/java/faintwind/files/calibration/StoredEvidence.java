package faintwind.files.calibration;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import faintwind.calibration.Evidence;
import faintwind.calibration.RunOutcome;
import faintwind.message.Messages;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a calibration rests on, with the keys of its file. */
record StoredEvidence(
    Residuals residuals,
    List<StoredRun> runs,
    List<Evidence.LeftOut> leaveOneRunOut,
    List<Evidence.Candidate> candidates,
    Optional<Evidence.MonteCarloSummary> monteCarlo,
    Optional<StoredAgreement> buildAgreement) {

  record Residuals(@JsonUnwrapped Evidence.ResidualStatistics statistics, String unit) {}

  record StoredRun(
      String run,
      @JsonInclude(JsonInclude.Include.ALWAYS) OptionalDouble speed_m_s,
      @JsonInclude(JsonInclude.Include.ALWAYS) OptionalDouble u_speed_m_s,
      double residual,
      String residualUnit,
      boolean used,
      @JsonUnwrapped Reason reason) {}

  record Reason(String why, String whyCode) {}

  static StoredEvidence of(Evidence evidence, String unit, Messages messages) {
    return new StoredEvidence(
        new Residuals(evidence.residuals(), unit),
        evidence.runs().stream().map(run -> run(run, unit, messages)).toList(),
        evidence.leaveOneOut(),
        evidence.candidates(),
        evidence.monteCarlo(),
        evidence.build().map(agreement -> StoredAgreement.of(agreement, unit)));
  }

  private static StoredRun run(RunOutcome run, String unit, Messages messages) {
    return new StoredRun(
        run.run(),
        run.speed_m_s(),
        run.u_speed_m_s(),
        run.residual(),
        run.speed_m_s().isPresent() ? "1" : unit,
        run.used(),
        new Reason(run.why().isEmpty() ? "" : messages.text(run.why()), run.why()));
  }

  Evidence toModel() {
    return new Evidence(
        residuals.statistics(),
        runs.stream().map(StoredEvidence::outcome).toList(),
        leaveOneRunOut,
        candidates,
        monteCarlo,
        buildAgreement.map(StoredAgreement::toModel));
  }

  private static RunOutcome outcome(StoredRun run) {
    return new RunOutcome(
        run.run(),
        run.speed_m_s(),
        run.u_speed_m_s(),
        run.residual(),
        run.used(),
        run.reason().whyCode());
  }
}
