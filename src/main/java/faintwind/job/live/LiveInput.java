package faintwind.job.live;

import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.RecordClock.Arrival;
import faintwind.calibration.profile.LineReader;
import faintwind.device.SampleSource;
import java.util.Optional;

/**
 * A source that is ready to be recorded.
 *
 * @param source gives the readings
 * @param head what the recording will hold
 * @param lines reads its lines; empty where it gives readings
 * @param arrival whether readings arrive as they are made
 */
public record LiveInput(
    SampleSource source, LiveHead head, Optional<LineReader> lines, Arrival arrival) {}
