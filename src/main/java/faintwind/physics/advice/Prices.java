package faintwind.physics.advice;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Prices that a person typed, each for one piece or one metre.
 *
 * @param currency as typed, such as "€"; may be empty
 * @param each price by {@link PartNeed#key()}
 */
public record Prices(String currency, Map<String, Double> each) {

  public static final Prices NONE = new Prices("", Map.of());

  public Prices {
    each = Map.copyOf(each);
  }

  /** Price of one piece or metre of a part; empty where none was typed. */
  public OptionalDouble of(PartNeed part) {
    Double price = each.get(part.key());
    return price == null ? OptionalDouble.empty() : OptionalDouble.of(price);
  }

  /** What the parts cost that have a price, and how many have none. */
  public Cost of(List<PartNeed> parts) {
    double sum = 0;
    int without = 0;
    for (PartNeed part : parts) {
      OptionalDouble price = of(part);
      sum += price.orElse(0) * part.buy();
      without += price.isPresent() ? 0 : 1;
    }
    return new Cost(sum, without);
  }

  /**
   * A sum of prices.
   *
   * @param sum in the currency typed
   * @param without how many parts have no price, and are not in the sum
   */
  public record Cost(double sum, int without) {}
}
