package faintwind.calibration;

/**
 * What the runs covered.
 *
 * @param lowest_m_s lowest speed of a run
 * @param highest_m_s highest speed of a run
 * @param lowestSignal smallest signal of a heated run, offset taken off
 * @param highestSignal largest signal of a heated run, offset taken off
 * @param carriedAirShown whether recordings after a stop, or a stated share, show the carried air
 */
public record Coverage(
    double lowest_m_s,
    double highest_m_s,
    double lowestSignal,
    double highestSignal,
    boolean carriedAirShown) {}
