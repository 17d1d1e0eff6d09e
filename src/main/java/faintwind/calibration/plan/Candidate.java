package faintwind.calibration.plan;

import faintwind.calibration.run.Uncertain;

/**
 * A speed that the arm can be turned at.
 *
 * @param radius_m radius for it, m
 * @param beat beat for it
 * @param spin_s how long the arm turns, s
 */
record Candidate(Uncertain radius_m, Beat beat, double spin_s) {
  double speed_m_s() {
    return beat.speed_m_s(radius_m.value());
  }

  /** Turns from start to stop. */
  double turns() {
    return beat.turns_1_s() * spin_s;
  }
}
