package faintwind.job.live;

import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.RecordClock.Arrival;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.run.Possible;
import faintwind.device.RawTap;
import faintwind.device.SampleSource;
import java.util.List;
import java.util.Optional;

/**
 * A source that is ready to be recorded.
 *
 * @param source gives the readings
 * @param head what the recording will hold
 * @param lines reads its lines; empty where it gives readings
 * @param arrival whether readings arrive as they are made
 * @param possible what a reading can hold
 * @param raw where its bytes can be had; empty where it has none, or nobody wants them kept
 */
public record LiveInput(
    SampleSource source,
    LiveHead head,
    Optional<LineReader> lines,
    Arrival arrival,
    Possible possible,
    Optional<RawTap> raw) {

  /** Readings that are made here, not read from lines. */
  static LiveInput ofReadings(SampleSource source, LiveHead head) {
    Possible possible = Possible.of(head.unit());
    return new LiveInput(source, head, Optional.empty(), Arrival.LIVE, possible, Optional.empty());
  }

  /** The same with columns that pass through. */
  LiveInput passing(List<String> others) {
    LiveHead with =
        new LiveHead(head.unit(), head.columns(), head.provenance(), head.source(), others);
    return new LiveInput(source, with, lines, arrival, possible, raw);
  }

  /** The same with other bounds of what a reading can hold. */
  LiveInput within(Possible other) {
    return new LiveInput(source, head, lines, arrival, other, raw);
  }

  /** The same without its bytes. */
  LiveInput withoutRaw() {
    raw.ifPresent(RawTap::off);
    return new LiveInput(source, head, lines, arrival, possible, Optional.empty());
  }
}
