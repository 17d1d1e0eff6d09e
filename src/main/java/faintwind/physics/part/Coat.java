package faintwind.physics.part;

import faintwind.physics.Interval;
import java.util.List;

/**
 * The outer surface of the balls.
 *
 * @param label id, name, source
 * @param emissivity thermal emissivity, 0 to 1
 * @param solarAbsorptance share of sunlight taken up, 0 to 1
 * @param kind how it is made
 * @param metals ids of the metals it is for; empty for any
 */
public record Coat(
    Label label, Interval emissivity, Interval solarAbsorptance, Kind kind, List<String> metals) {

  public Coat {
    metals = List.copyOf(metals);
  }

  /** How a surface is made. */
  public enum Kind {
    /** The metal itself, polished or left alone. */
    BARE,
    /** Deposited from a bath. */
    PLATED,
    /** Painted or lacquered. */
    PAINTED,
    /** Grown from the metal, such as anodising. */
    GROWN
  }

  public boolean suits(Metal metal) {
    return metals.isEmpty() || metals.contains(metal.label().id());
  }
}
