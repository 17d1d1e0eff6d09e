package faintwind.report.card;

import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.physics.Interval;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import java.util.Optional;

/** Words and figures of a card. */
record CardWords(Messages messages, DesignSheet sheet) {
  private static final int DIGITS = 3;

  String text(String key, Object... arguments) {
    return messages.text(key, arguments);
  }

  /** A number with its unit. */
  String figure(double value, String unit) {
    return AmountText.quantity(value, unit, DIGITS, messages.locale());
  }

  /** From low to high. */
  String range(double low, double high, String unit) {
    String from = AmountText.number(low, DIGITS, messages.locale());
    return text("card.range", from, figure(high, unit));
  }

  /** Whether the sheet has a quantity. */
  boolean knows(OutcomeId id) {
    return sheet.quantity(id).isPresent();
  }

  /** A quantity of the sheet: its value, or its range where that is wider than a digit shows. */
  String value(OutcomeId id) {
    Optional<Outcome> quantity = sheet.quantity(id);
    if (quantity.isEmpty()) {
      return text("guide.value-not-known");
    }
    Interval value = quantity.get().value();
    String low = figure(value.low(), id.unit());
    String high = figure(value.high(), id.unit());
    return low.equals(high)
        ? figure(value.nominal(), id.unit())
        : range(value.low(), value.high(), id.unit());
  }

  /** The middle of a quantity of the sheet. */
  String nominal(OutcomeId id) {
    return sheet
        .quantity(id)
        .map(quantity -> figure(quantity.value().nominal(), id.unit()))
        .orElseGet(() -> text("guide.value-not-known"));
  }

  /** A row on a quantity of the sheet, named and explained as there. */
  StepCard.Row row(OutcomeId id) {
    return new StepCard.Row(
        text("quantity." + id.id()), value(id), text("quantity." + id.id() + ".why"));
  }

  /** A row of the card's own. */
  StepCard.Row row(String key, String value) {
    return new StepCard.Row(text(key), value, "");
  }

  /** A row with its reason under {@code KEY.why}. */
  StepCard.Row explained(String key, String value) {
    return new StepCard.Row(text(key), value, text(key + ".why"));
  }
}
