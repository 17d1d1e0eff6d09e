package faintwind.calibration.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Both ways to spend the time, side by side.
 *
 * @param staircase the default
 * @param separate a fresh warm-up before each speed, for the straight-line look; empty where the
 *     time or the way off the arm does not carry it
 */
public record PlanChoice(Plan staircase, Optional<Plan> separate) {
  /** Both, as far as there are two. */
  public List<Plan> plans() {
    return Stream.concat(Stream.of(staircase), separate.stream()).toList();
  }

  /** The plan of that form, where there is one. */
  public Optional<Plan> of(Plan.Form form) {
    return form == Plan.Form.STAIRCASE ? Optional.of(staircase) : separate;
  }
}
