package faintwind.physics.advice;

import faintwind.message.Problem;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.DesignSheet;
import java.util.List;

/**
 * A design that answers a wish.
 *
 * @param design the design
 * @param sheet everything that follows from it
 * @param reasons why it is proposed, and what it does not reach; words in the message bundle
 */
public record Suggestion(Design design, DesignSheet sheet, List<Problem> reasons) {
  public Suggestion {
    reasons = List.copyOf(reasons);
  }
}
