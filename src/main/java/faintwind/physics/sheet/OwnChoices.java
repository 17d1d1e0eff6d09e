package faintwind.physics.sheet;

/**
 * Limits of the design sheet. Each is our own choice, no source. A test that is named fails where
 * one of its group is doubled or halved; "none" means no quick test of the package.
 */
final class OwnChoices {
  // BallSheet: everyRowIsAsWorkedByHand of WorkedSheetTest; none shows SCALE_AGREEMENT_g

  /** Two blanks agree within this share: common practice. */
  static final double BLANK_AGREEMENT = 0.005;

  /** And no less, g: a scale of 0.01 g shows no less than two steps. */
  static final double SCALE_AGREEMENT_g = 0.02;

  // HeatSheet, SignalSheet: none

  /** Heat of the sun over that of the heater that needs no word. */
  static final double MOST_SUN_SHARE = 0.02;

  /** Twice a reading's standard uncertainty, as a share of the still-air signal. */
  static final double COARSE = 0.01;

  // HeaterSheet, TouchSheet: everyRowIsAsWorkedByHand of WorkedSheetTest,
  // adviceInHotAirIsAUsefulHeaterAndAGuard of DesignSheetTest; none shows NO_CABLE_OHM

  /** Resistance end to end of leads without a cable, Ω, at most. */
  static final double NO_CABLE_OHM = 1;

  /** A fuse bears this many times the current. */
  static final double FUSE_SHARE = 1.5;

  /** Less heat than this gives no signal worth reading, W. */
  static final double LEAST_W = 0.03;

  // SourceSheet: none

  /** Heat that a linear regulator without a heat sink bears, W: common practice. */
  static final double BARE_REGULATOR_W = 1;

  // MaterialSheet, common practice; the data sheet of what is bought counts:
  // theHottestEdgeIsJudgedByWhatTouchesIt of MaterialSheetTest; none shows ENAMEL_M

  /** Epoxy that cures at room temperature softens from about here, °C. */
  static final double EPOXY_SOFT_C = 80;

  /** Epoxy filled with metal, as its makers usually rate it, °C. */
  static final double EPOXY_C = 120;

  /** Air-drying insulating varnish and enamel that can be soldered through, class 130, °C. */
  static final double VARNISH_C = 130;

  /** Plastic covering of ordinary wire, °C. */
  static final double PLASTIC_C = 70;

  /** A covering thicker than this is plastic, a thinner one enamel, m. */
  static final double ENAMEL_M = 0.1e-3;

  private OwnChoices() {}
}
