package faintwind.job;

import faintwind.calibration.live.LiveHead;
import faintwind.device.SampleSource;

/**
 * A source that is ready to be recorded.
 *
 * @param source gives the readings
 * @param head what the recording will hold
 */
public record LiveInput(SampleSource source, LiveHead head) {}
