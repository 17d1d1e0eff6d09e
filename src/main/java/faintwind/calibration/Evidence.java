package faintwind.calibration;

import java.util.List;
import java.util.Optional;

/**
 * How well a calibration stands.
 *
 * @param residuals of all recordings
 * @param runs one outcome for each row of the runs table, in its order
 * @param leaveOneOut how well each run is foretold by the others
 * @param candidates the models tried, best first
 * @param monteCarlo the refits, where they were made
 * @param build whether the fit meets the build, where the record says enough
 */
public record Evidence(
    ResidualStatistics residuals,
    List<RunOutcome> runs,
    List<LeftOut> leaveOneOut,
    List<Candidate> candidates,
    Optional<MonteCarloSummary> monteCarlo,
    Optional<BuildAgreement> build) {
  public Evidence {
    runs = List.copyOf(runs);
    leaveOneOut = List.copyOf(leaveOneOut);
    candidates = List.copyOf(candidates);
  }

  /**
   * Residuals of the signal, in its own unit.
   *
   * @param rms root mean square of the averaged rows
   * @param noise standard deviation of a single row about its neighbours
   * @param slow standard deviation of the slow part: draught and misfit together
   * @param correlationTime_s time over which the slow part forgets itself, s
   * @param effectiveReadings number of independent readings the rows are worth
   * @param rows rows used
   */
  public record ResidualStatistics(
      double rms,
      double noise,
      double slow,
      double correlationTime_s,
      double effectiveReadings,
      int rows) {}

  /**
   * One run's speed as the arm gave it against the speed the formula reads from the run with the
   * run itself left out of the fit.
   *
   * @param run name
   * @param speed_m_s air speed by the arm
   * @param foretold_m_s air speed by the formula of the other runs
   * @param u_m_s standard uncertainty of the difference
   */
  public record LeftOut(String run, double speed_m_s, double foretold_m_s, double u_m_s) {}

  /**
   * A model that was tried.
   *
   * @param model id
   * @param aicc corrected Akaike criterion with the effective number of readings; lower is better
   * @param leaveOneOut_rms root mean square of the relative leave-one-out errors
   * @param chosen whether it is the one in the file
   */
  public record Candidate(String model, double aicc, double leaveOneOut_rms, boolean chosen) {}

  /**
   * Monte Carlo by refitting.
   *
   * @param refits number of refits that converged
   * @param failed number that did not
   * @param seed of the random numbers
   * @param ratio median over speeds of the standard uncertainty by refits to that by covariance
   */
  public record MonteCarloSummary(int refits, int failed, long seed, double ratio) {}
}
