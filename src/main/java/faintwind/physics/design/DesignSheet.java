package faintwind.physics.design;

import java.util.List;
import java.util.Optional;

/**
 * Every quantity that follows from a design. A quantity that the design says nothing about (a
 * battery where there is none, plating where the balls stay bare) is absent.
 *
 * @param quantities in the order of {@link QuantityId}
 */
public record DesignSheet(List<Quantity> quantities) {

  public DesignSheet {
    quantities = List.copyOf(quantities);
  }

  /** Every name that a step may use, whatever the design. */
  public static List<String> ids() {
    return QuantityId.ids();
  }

  /** A quantity by its name, such as {@code heater_ohm}; empty where this design has none. */
  public Optional<Quantity> quantity(String id) {
    return quantities.stream().filter(q -> q.id().id().equals(id)).findFirst();
  }

  public Optional<Quantity> quantity(QuantityId id) {
    return quantities.stream().filter(q -> q.id() == id).findFirst();
  }
}
