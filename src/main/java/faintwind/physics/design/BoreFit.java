package faintwind.physics.design;

import faintwind.physics.Interval;
import faintwind.physics.part.ThermocoupleType;

/**
 * What has to go into the heated ball's hole beside one another: the resistor's body, one lead
 * folded back along it in its isolating coat, and the coated thermocouple junction (geometry). Body
 * and lead side by side need the sum of their diameters; the junction lies in the space left beside
 * both, or, where it is larger than that space, in place of the lead.
 */
public final class BoreFit {
  private BoreFit() {}

  /** Diameter that a hole must have, m. */
  public static Interval needed_m(HeaterDesign heater, ThermocoupleType.Gauge gauge) {
    double coats = 2 * heater.coat_m();
    double lead =
        heater.style().body().lead_m() > 0
            ? heater.style().body().lead_m()
            : heater.leads().outer_m();
    double beside = lead + coats;
    double junction = 2 * gauge.diameter_m() + coats; // two wires twisted or soldered side by side
    return heater.style().body().diameter_m().rising(body -> body + widest(body, beside, junction));
  }

  private static double widest(double body, double beside, double junction) {
    return junction <= space_m(body, beside) ? beside : Math.max(beside, junction);
  }

  /**
   * Largest round thing that goes into the space beside two touching circles within the circle
   * around both: r = R1·R2·(R1 + R2)/(R1² + R1·R2 + R2²) (Descartes' circle theorem), as a
   * diameter.
   */
  static double space_m(double first_m, double second_m) {
    double a = first_m / 2;
    double b = second_m / 2;
    return 2 * a * b * (a + b) / (a * a + a * b + b * b);
  }

  /** Length that the resistor takes in the hole, m: its body and the bend of its folded lead. */
  public static double length_m(HeaterDesign heater) {
    return heater.style().body().length_m() + 3 * heater.style().body().lead_m();
  }
}
