package faintwind.physics.part;

import java.util.OptionalDouble;

/**
 * What a pack is made of and what guards it, as its file says.
 *
 * @param chemistry what the cells are
 * @param isProtected whether the pack itself switches off at a short, an overload and when empty
 * @param sleepsBelow_A current below which the pack switches itself off, A; empty where it never
 *     does
 * @param most_A largest steady current, A; empty where the file does not say
 */
public record Cells(
    Chemistry chemistry, boolean isProtected, OptionalDouble sleepsBelow_A, OptionalDouble most_A) {

  /** What the cells are. */
  public enum Chemistry {
    ALKALINE,
    ZINC_CARBON,
    NICKEL_METAL_HYDRIDE,
    LEAD_ACID,
    LITHIUM_ION,
    LITHIUM_POLYMER,
    LITHIUM_IRON_PHOSPHATE,
    /** Lithium cells that cannot be charged. */
    LITHIUM_PRIMARY,
    /** The file does not say. */
    NOT_RECORDED;

    /** Whether the cells can catch fire when they are shorted, crushed or charged wrongly. */
    public boolean isLithium() {
      return switch (this) {
        case LITHIUM_ION, LITHIUM_POLYMER, LITHIUM_IRON_PHOSPHATE, LITHIUM_PRIMARY -> true;
        case ALKALINE, ZINC_CARBON, NICKEL_METAL_HYDRIDE, LEAD_ACID, NOT_RECORDED -> false;
      };
    }
  }
}
