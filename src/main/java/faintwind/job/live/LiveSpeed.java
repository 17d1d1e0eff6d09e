package faintwind.job.live;

import faintwind.calibration.Calibration;
import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SignalMatch;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.run.RunFileWriter;
import faintwind.files.run.SpeedWriter;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Constants;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Air speed as it comes, filtered over the past only; one speed a row. For one recording. */
public final class LiveSpeed {
  private static final String NAMES = "time_s,speed_m_s,u95_m_s,flag";

  private final SignalMatch match;
  private final SpeedEstimator estimator;
  private final boolean compensated;

  private LiveSpeed(SignalMatch match, SpeedEstimator estimator, boolean compensated) {
    this.match = match;
    this.estimator = estimator;
    this.compensated = compensated;
  }

  /**
   * Speeds by a calibration.
   *
   * @param calibration the calibration in force
   * @param head what the recording holds
   * @param settings averaging and air
   * @return refused where the recording is in a unit that nothing on record links to the
   *     calibration's, or lacks the terminal temperature that its meter needs
   */
  public static Checked<LiveSpeed> of(
      Calibration calibration, LiveHead head, SpeedSettings settings) {
    Where where = Where.file(head.source());
    Optional<SignalMatch> match = SignalMatch.of(head.unit(), calibration.signal());
    if (match.isEmpty()) {
      return Checked.refused(
          Problem.error(
              "convert.unit-differs",
              where,
              head.unit().column(),
              calibration.signal().unit().column()));
    }
    boolean compensated = calibration.signal().chain().input() == SignalChain.Input.COMPENSATED_C;
    if (compensated && !head.columns().contains(LiveColumn.TERMINAL)) {
      return Checked.refused(
          Problem.error("file.terminal-missing", where, "", LiveColumn.TERMINAL.column()));
    }
    SpeedEstimator estimator = SpeedEstimator.filtering(calibration, settings);
    return Checked.ok(new LiveSpeed(match.get(), estimator, compensated));
  }

  /** The head of a table of {@link #cells}: what is made up says so in a line of its own. */
  public static List<String> head(LiveHead head) {
    return head.provenance() == Provenance.REHEARSAL
        ? List.of(SpeedWriter.rehearsal(), NAMES)
        : List.of(NAMES);
  }

  /** A row's time and air speed as cells of a table, without an end of line. */
  public static String cells(LiveRow row, SpeedRow speed) {
    return RunFileWriter.time(row) + "," + SpeedWriter.cells(speed);
  }

  /** The speed of the next row. */
  SpeedRow next(LiveRow row) {
    OptionalDouble signal = signal(row);
    OptionalDouble matched =
        signal.isPresent() ? OptionalDouble.of(match.apply(signal.getAsDouble())) : signal;
    LogAir air = row.air();
    LogSample sample = new LogSample(OptionalDouble.of(row.time_s()), matched, air, row.supply_V());
    SpeedRow[] found = {SpeedRow.BAD};
    estimator.accept(sample, speed -> found[0] = speed);
    return found[0];
  }

  private OptionalDouble signal(LiveRow row) {
    if (!compensated || row.signal().isEmpty()) {
      return row.signal();
    }
    return row.terminal_K().isPresent()
        ? OptionalDouble.of(
            row.signal().getAsDouble() - (row.terminal_K().getAsDouble() - Constants.ZERO_C_K))
        : OptionalDouble.empty();
  }
}
