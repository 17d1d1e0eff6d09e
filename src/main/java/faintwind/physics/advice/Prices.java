package faintwind.physics.advice;

import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Prices that a person typed, each for one piece or one metre.
 *
 * @param currency as typed, such as "€"; may be empty
 * @param each price by {@link PartNeed#key()}
 */
public record Prices(String currency, Map<String, Double> each) {

  public static final Prices NONE = new Prices("", Map.of());

  /** The price of one piece or metre. */
  public static final Field PRICE = Field.number("prices", 0, 1e6);

  public Prices {
    each = Map.copyOf(each);
  }

  /** The same in another currency. */
  public Prices in(String other) {
    return new Prices(other, each);
  }

  /** The same with another price of a part, as typed; an empty text takes it away. */
  public Checked<Prices> with(String key, String price) {
    Optional<Problem> trouble = PRICE.trouble(price, Where.NOWHERE);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    Map<String, Double> other = new HashMap<>(each);
    other.remove(key);
    if (!price.isBlank()) {
      other.put(key, Double.valueOf(price));
    }
    return Checked.ok(new Prices(currency, other));
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
