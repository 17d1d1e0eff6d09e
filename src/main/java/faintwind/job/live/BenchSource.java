package faintwind.job.live;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.Response;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.SignalUnit;
import faintwind.guide.turntable.ExpectedCourse;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.time.Duration;
import java.util.Optional;

/** What a session at a table of metal starts from: a source of readings, and a plan. */
public final class BenchSource {
  /** About that of the usual types at room temperature, V/K; only the size of what is expected. */
  private static final double VOLTS_PER_KELVIN = 40e-6;

  /** Counts per kelvin differ by thousands; few, so that little is called nothing. */
  private static final double COUNTS_PER_KELVIN = 1;

  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private BenchSource() {}

  /**
   * Opens a source of lines as {@code listen} spells it.
   *
   * @param text such as {@code tcp:192.168.4.1:5000}
   * @param profile what its lines mean; empty where they are those of a run file
   * @return refused where it is misspelt, or is none of lines, or its lines are not understood
   * @throws IOException where it cannot be had
   */
  public static Checked<LiveInput> open(String text, Optional<ImportProfile> profile)
      throws IOException {
    Checked<SourceAddress> address = SourceText.read(text);
    if (!(address instanceof Checked.Ok<SourceAddress> ok)) {
      return Checked.refused(address.problems());
    }
    if (ok.value() instanceof SourceAddress.Typed || ok.value() instanceof SourceAddress.Virtual) {
      return Checked.refused(Problem.error("turntable.live.not-lines", Where.NOWHERE, text));
    }
    try {
      return OpenSource.linesWithin(PATIENCE, ok.value(), text, profile);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(text, e);
    }
  }

  /**
   * A plan with how the signal should go until the warm-up has shown it.
   *
   * @param response how the instrument answers as far as is known
   */
  public static LiveSession.Preparation prepare(Plan plan, Response response, SignalUnit unit) {
    double perKelvin =
        switch (unit) {
          case DELTA_K -> 1;
          case SIGNAL_V -> VOLTS_PER_KELVIN;
          case SIGNAL_MV -> 1e3 * VOLTS_PER_KELVIN;
          case SIGNAL_UV -> 1e6 * VOLTS_PER_KELVIN;
          case SIGNAL_COUNTS -> COUNTS_PER_KELVIN;
        };
    return new LiveSession.Preparation(plan, ExpectedCourse.before(response, perKelvin));
  }
}
