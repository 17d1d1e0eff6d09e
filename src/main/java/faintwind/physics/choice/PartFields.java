package faintwind.physics.choice;

import faintwind.physics.design.Design;
import java.util.List;

/** Fields of a part, a hole or a layer that a design may do without. */
public final class PartFields {
  /** What is said of balls that are plated. */
  static final List<DesignField> PLATING =
      List.of(
          DesignField.PLATED_BY,
          DesignField.NICKEL,
          DesignField.NICKEL_CURRENT,
          DesignField.GOLD,
          DesignField.GOLD_CURRENT,
          DesignField.ROOM);

  /** What a person says who describes a logger. */
  static final List<DesignField> OWN_LOGGER =
      List.of(
          DesignField.LOGGER_NAME,
          DesignField.LOGGER_LOW,
          DesignField.LOGGER_HIGH,
          DesignField.LOGGER_BITS,
          DesignField.LOGGER_NOISE,
          DesignField.LOGGER_OFFSET);

  private static final List<DesignField> OTHERS =
      List.of(
          DesignField.REFERENCE_DEPTH,
          DesignField.CABLE_LENGTH,
          DesignField.DROPOUT,
          DesignField.OWN_CURRENT,
          DesignField.EFFICIENCY);

  private PartFields() {}

  /** Whether a number means something for a design: a cable's length only where there is one. */
  public static boolean applies(DesignField field, Design design) {
    return !(PLATING.contains(field) || OWN_LOGGER.contains(field) || OTHERS.contains(field))
        || field.field().range().isEmpty()
        || !field.of(design).isEmpty();
  }
}
