package faintwind.calibration.fit.setup;

import faintwind.calibration.fit.numerics.Layout;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.Uncertain;
import java.util.List;
import java.util.Optional;

/**
 * What is known of an arm and its room before any run. The numbers are own choices from what
 * follows of the motion (no published figure was found); none is fitted to a bench.
 *
 * <ul>
 *   <li>The air in the ring is pushed once a turn, so it rises over the first turns: its time goes
 *       with a power between 0 and 1 of the time of a turn.
 *   <li>After the stop a swirl of some decimetres decays by its own turbulence: tens of seconds,
 *       the slower the slower it is.
 *   <li>The arm has one drive and one brake: run-up and run-down are much the same in all runs.
 *   <li>The clock of the noted starts and stops may be late as a whole; a single one is noted to
 *       half a second.
 * </ul>
 */
final class ArmPriors {
  /** Usual time constant with which an arm comes to speed, s. */
  static final double RUN_UP_S = 2;

  private static final double RUN_DOWN_S = 1.5;
  private static final double U_RUN = 0.7;
  private static final double U_RUN_OWN = 0.25;

  /** At a turn of five seconds. */
  private static final double RISE_S = 20;

  private static final double U_RISE = 0.5;
  private static final double BY_TURN = 0.5;
  private static final double U_BY_TURN = 0.3;
  private static final double DECAY_S = 25;
  private static final double U_DECAY = 0.4;
  private static final double SLOWING = 0.1;
  private static final double U_SLOWING = 0.2;
  private static final double U_CLOCK_S = 0.7;
  private static final double U_NOTED_S = 0.5;

  /** Half of what the two directions may differ by where nothing else is known. */
  private static final double ASYMMETRY = 0.005;

  /**
   * Draught of a quiet room, m/s, and the logarithms that the usual one of a session, and a run's
   * own, may be off by: no room is without, and 5 to 20 mm/s is common practice, no source. It is
   * the run's own that varies: recordings of a session contradict one another where all have the
   * same (docs/decisions/0006).
   */
  private static final double DRAUGHT_M_S = 0.01;

  private static final double U_DRAUGHT = 0.3;
  private static final double U_DRAUGHT_OWN = 0.6;

  private ArmPriors() {}

  /**
   * Share, rise and decay, in the order of {@link Layout}.
   *
   * @param known what earlier calibrations showed of the arm
   */
  static List<Unknown> carried(Uncertain share, Optional<ArmKnown> known) {
    return List.of(
        Unknown.soft("carried_share", share.value(), share.u().orElseThrow()),
        time("carried_rise", RISE_S, U_RISE, known.map(ArmKnown::rise_s)),
        time("carried_decay", DECAY_S, U_DECAY, known.map(ArmKnown::decay_s)));
  }

  /** A time constant before any run, sharper where the arm is known. */
  private static Unknown time(
      String name, double usual_s, double spread, Optional<Uncertain> known) {
    return known
        .map(k -> Unknown.log(name, k.value(), Math.min(spread, k.u().orElse(spread) / k.value())))
        .orElseGet(() -> Unknown.log(name, usual_s, spread));
  }

  /**
   * The rest of what all runs share, in the order of {@link Layout}.
   *
   * @param fromRest belief that turns were counted from the start of the motion
   * @param known what earlier calibrations showed of the arm
   */
  static List<Unknown> arm(double fromRest, Optional<ArmKnown> known) {
    double u = Math.max(0.02, Math.sqrt(fromRest * (1 - fromRest)));
    return List.of(
        time("run_up", RUN_UP_S, U_RUN, known.map(ArmKnown::runUp_s)),
        Unknown.linear("counted_from_rest", fromRest, u),
        asymmetry(known.flatMap(ArmKnown::asymmetry)),
        Unknown.log("draught", DRAUGHT_M_S, U_DRAUGHT),
        Unknown.soft("carried_slowing", SLOWING, U_SLOWING),
        Unknown.linear("carried_by_turn", BY_TURN, U_BY_TURN),
        Unknown.log("run_down", RUN_DOWN_S, U_RUN),
        Unknown.linear("clock", 0, U_CLOCK_S));
  }

  private static Unknown asymmetry(Optional<Uncertain> known) {
    return known
        .map(k -> Unknown.linear("asymmetry", k.value(), k.u().orElse(ASYMMETRY)))
        .orElseGet(() -> Unknown.linear("asymmetry", 0, ASYMMETRY));
  }

  /** How far one noted start or stop is off, s. */
  static Unknown noted(String name) {
    return Unknown.linear(name, 0, U_NOTED_S);
  }

  /** The draught of one run over that of the session. */
  static Unknown ownDraught(String run) {
    return Unknown.log("draught_own " + run, 1, U_DRAUGHT_OWN);
  }

  /** A run's own time constant over that of all runs. */
  static Unknown own(String name) {
    return Unknown.log(name, 1, U_RUN_OWN);
  }
}
