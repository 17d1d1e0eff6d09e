package faintwind.calibration;

import faintwind.message.Numerals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a session's recordings showed of the arm and its room, each with its standard uncertainty:
 * knowledge for the next calibration on the same arm.
 *
 * @param carriedShare share of the arm's speed at which air is carried round
 * @param rise_s time constant with which it comes, at a turn of five seconds
 * @param decay_s time constant with which it goes
 * @param runUp_s time constant with which the arm comes to speed
 * @param draught_m_s draught of the room
 * @param asymmetry relative gain of clockwise speed, loss of the other; empty where the recordings
 *     hardly show it
 */
public record ArmShown(
    Parameter carriedShare,
    Parameter rise_s,
    Parameter decay_s,
    Parameter runUp_s,
    Parameter draught_m_s,
    Optional<Parameter> asymmetry) {

  /** All of them, in this order. */
  public List<Parameter> all() {
    List<Parameter> all =
        new ArrayList<>(List.of(carriedShare, rise_s, decay_s, runUp_s, draught_m_s));
    asymmetry.ifPresent(all::add);
    return all;
  }

  /** Share in per cent, rise and decay, each followed by its standard uncertainty, as text. */
  public List<String> carriedAir() {
    return List.of(
        Numerals.compact(100 * carriedShare.value(), 2),
        Numerals.compact(100 * carriedShare.u(), 2),
        Numerals.compact(rise_s.value(), 2),
        Numerals.compact(rise_s.u(), 1),
        Numerals.compact(decay_s.value(), 2),
        Numerals.compact(decay_s.u(), 1));
  }
}
