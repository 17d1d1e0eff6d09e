package faintwind.job.live;

import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.RecordClock.Arrival;
import faintwind.calibration.profile.LineReader;
import faintwind.device.RawTap;
import faintwind.device.SampleSource;
import java.util.Optional;

/**
 * A source that is ready to be recorded.
 *
 * @param source gives the readings
 * @param head what the recording will hold
 * @param lines reads its lines; empty where it gives readings
 * @param arrival whether readings arrive as they are made
 * @param raw where its bytes can be had; empty where it has none, or nobody wants them kept
 */
public record LiveInput(
    SampleSource source,
    LiveHead head,
    Optional<LineReader> lines,
    Arrival arrival,
    Optional<RawTap> raw) {

  /** Readings that are made here, not read from lines. */
  static LiveInput ofReadings(SampleSource source, LiveHead head) {
    return new LiveInput(source, head, Optional.empty(), Arrival.LIVE, Optional.empty());
  }

  /** The same without its bytes. */
  LiveInput withoutRaw() {
    raw.ifPresent(RawTap::off);
    return new LiveInput(source, head, lines, arrival, Optional.empty());
  }
}
