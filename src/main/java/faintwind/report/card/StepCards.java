package faintwind.report.card;

import faintwind.guide.Situation;
import faintwind.guide.checklist.Card;
import faintwind.message.Messages;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.DesignSheet;
import java.util.Optional;

/** Fills the cards that steps ask for. */
public final class StepCards {
  private final Messages messages;

  public StepCards(Messages messages) {
    this.messages = messages;
  }

  /** The card for a design in force; empty while there is none. */
  public Optional<StepCard> of(Card card, Situation situation) {
    Optional<DesignSheet> sheet = situation.sheet();
    Optional<Design> design = sheet.flatMap(DesignSheet::design);
    if (sheet.isEmpty() || design.isEmpty()) {
      return Optional.empty();
    }
    CardWords words = new CardWords(messages, sheet.get());
    return Optional.of(
        switch (card) {
          case DRILLING -> DrillingCard.of(design.get(), words);
          case WEIGHING -> WeighingCard.of(design.get(), situation, words);
          case PLATING_ORDER -> PlatingOrderCard.of(design.get(), words);
          case PLATING_BATH -> PlatingBathCard.of(design.get(), words);
          case WIRING -> WiringCard.of(design.get(), situation, words);
          case ARM -> ArmCard.of(design.get(), situation, words);
        });
  }
}
