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
  private MaterialSheet() {}

  /** The hottest place inside the ball: what touches the resistor's body. */
  static Outcome resistor(Design design, Interval body_C) {
    Wire leads = design.heater().leads();
    boolean plastic = leads.outer_m() - leads.core_m() > OwnChoices.ENAMEL_M;
    if (plastic && body_C.high() > OwnChoices.PLASTIC_C) {
      return stop(body_C, "design.covering-softens", OwnChoices.PLASTIC_C, leads.label().name());
    }
    if (body_C.high() > OwnChoices.VARNISH_C) {
      return stop(body_C, "design.varnish-burns", OwnChoices.VARNISH_C, "");
    }
    if (body_C.high() > OwnChoices.EPOXY_C) {
      return stop(body_C, "design.epoxy-fails", OwnChoices.EPOXY_C, "");
    }
    if (body_C.high() > OwnChoices.EPOXY_SOFT_C) {
      return Judged.improve(
          OutcomeId.RESISTOR_TEMPERATURE,
          body_C,
          "design.epoxy-softens",
          Numerals.digits(body_C.high()),
          Numerals.digits(OwnChoices.EPOXY_SOFT_C));
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
