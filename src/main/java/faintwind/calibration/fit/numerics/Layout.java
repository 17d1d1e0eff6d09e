package faintwind.calibration.fit.numerics;

import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.ThermalPath;

/**
 * Where the shared unknowns stand: the loss parameters first, then the thermal path, then the
 * carried air. What belongs to one run or one file comes after.
 *
 * @param model the response model
 * @param losses number of its parameters
 * @param bend known second-order coefficient of the thermocouple, 1/K²
 * @param perKelvin nominal signal per kelvin
 * @param reference_K reference air temperature
 */
public record Layout(
    ResponseModel model, int losses, double bend, double perKelvin, double reference_K) {

  /** Unknowns of the carried air. */
  public static final int CARRIED = 3;

  public int path(int which) {
    return losses + which;
  }

  /** Number of parameters that belong to the formula. */
  public int formula() {
    return losses + ThermalPath.SLOPE + 1;
  }

  /** Share of the arm's speed at which air is carried round. */
  public int carriedShare() {
    return formula();
  }

  /** Time constant with which it comes. */
  int carriedRise() {
    return formula() + 1;
  }

  /** Time constant with which it goes. */
  int carriedDecay() {
    return formula() + 2;
  }

  public int shared() {
    return formula() + CARRIED;
  }
}
