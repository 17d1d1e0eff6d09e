package faintwind.calibration.virtual;

import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Series;

/**
 * A made-up field log and the speed that made it.
 *
 * @param recording as the logger wrote it
 * @param speed_m_s true speed at each row's time
 */
public record VirtualLog(Recording recording, Series speed_m_s) {}
