package faintwind.job.formula;

import faintwind.calibration.Measured;
import faintwind.calibration.Measured.Basis;
import faintwind.calibration.Measured.By;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person says of the measurement of runs.
 *
 * @param on when it was, for recordings that do not say so themselves
 * @param by operator, place, arm, meter, logger
 */
public record MeasuredWhen(Optional<OffsetDateTime> on, Map<By, String> by) {
  /** Nothing was said. */
  public static final MeasuredWhen NOT_SAID = new MeasuredWhen(Optional.empty(), Map.of());

  public MeasuredWhen {
    by = Map.copyOf(by);
  }

  /**
   * When and with what runs were measured: by their recordings where these carry a start, else as
   * was said; empty where neither says when.
   *
   * @param onRecord what the instrument's record knows; what was said counts before it
   */
  Optional<Measured> of(List<Run> runs, Map<By, String> onRecord) {
    Map<By, String> all = new EnumMap<>(By.class);
    all.putAll(onRecord);
    all.putAll(by);
    Optional<OffsetDateTime> first =
        runs.stream().flatMap(run -> begin(run).stream()).min(OffsetDateTime::compareTo);
    Optional<OffsetDateTime> last =
        runs.stream().flatMap(run -> end(run).stream()).max(OffsetDateTime::compareTo);
    return first.isPresent() && last.isPresent()
        ? Optional.of(new Measured(first.get(), last.get(), Basis.RECORDINGS, all))
        : on.map(when -> new Measured(when, when, Basis.STATED, all));
  }

  private static Optional<OffsetDateTime> begin(Run run) {
    Recording recording = run.recording();
    return recording.signal().isEmpty()
        ? Optional.empty()
        : recording.start().map(s -> after(s, recording.signal().time_s(0)));
  }

  private static Optional<OffsetDateTime> end(Run run) {
    Recording recording = run.recording();
    int size = recording.signal().size();
    return recording.signal().isEmpty()
        ? Optional.empty()
        : recording.start().map(s -> after(s, recording.signal().time_s(size - 1)));
  }

  private static OffsetDateTime after(OffsetDateTime start, double time_s) {
    return start.plus(Duration.ofSeconds(Math.round(time_s)));
  }
}
