package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.part.Wire;

/**
 * What the materials around the resistor's body bear. The limits are common practice, no source:
 * the data sheet of what is bought counts.
 */
final class MaterialSheet {
  /** Epoxy that cures at room temperature softens from about here. */
  private static final double EPOXY_SOFT_C = 80;

  /** Epoxy filled with metal, as its makers usually rate it. */
  private static final double EPOXY_C = 120;

  /** Air-drying insulating varnish and enamel that can be soldered through, class 130. */
  private static final double VARNISH_C = 130;

  /** Plastic covering of ordinary wire. */
  private static final double PLASTIC_C = 70;

  /** A covering thicker than this is plastic, a thinner one enamel. */
  private static final double ENAMEL_M = 0.1e-3;

  private MaterialSheet() {}

  /** The hottest place inside the ball: what touches the resistor's body. */
  static Outcome resistor(Design design, Interval body_C) {
    Wire leads = design.heater().leads();
    boolean plastic = leads.outer_m() - leads.core_m() > ENAMEL_M;
    if (plastic && body_C.high() > PLASTIC_C) {
      return stop(body_C, "design.covering-softens", PLASTIC_C, leads.label().name());
    }
    if (body_C.high() > VARNISH_C) {
      return stop(body_C, "design.varnish-burns", VARNISH_C, "");
    }
    if (body_C.high() > EPOXY_C) {
      return stop(body_C, "design.epoxy-fails", EPOXY_C, "");
    }
    if (body_C.high() > EPOXY_SOFT_C) {
      return Judged.improve(
          OutcomeId.RESISTOR_TEMPERATURE,
          body_C,
          "design.epoxy-softens",
          Numerals.digits(body_C.high()),
          Numerals.digits(EPOXY_SOFT_C));
    }
    return Outcome.plain(OutcomeId.RESISTOR_TEMPERATURE, body_C);
  }

  private static Outcome stop(Interval body_C, String reason, double limit_C, String part) {
    return Judged.stop(
        OutcomeId.RESISTOR_TEMPERATURE,
        body_C,
        reason,
        Numerals.digits(body_C.high()),
        Numerals.digits(limit_C),
        part);
  }
}
