package faintwind.calibration.survey;

import faintwind.calibration.field.StretchMean;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One stay at a place.
 *
 * @param place its name; the first place may come again at the end
 * @param speed after settling; empty where the stay was too short for that
 * @param settled_s time from the arrival until the speed counts; empty where it was typed
 * @param steady whether the two halves of what was left agree
 */
public record Visit(
    String place, Optional<StretchMean> speed, OptionalDouble settled_s, boolean steady) {

  /** A speed that a person wrote down. */
  public static Visit typed(String place, double speed_m_s, double u95_m_s) {
    StretchMean mean = StretchMean.typed(speed_m_s, u95_m_s);
    return new Visit(place, Optional.of(mean), OptionalDouble.empty(), true);
  }
}
