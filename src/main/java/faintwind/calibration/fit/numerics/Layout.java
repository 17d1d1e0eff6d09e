package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.track.Turn;
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

  /** Unknowns that the arm and its room give to all runs, carried air among them. */
  public static final int ARM = 11;

  /** The asymmetry of the directions among them. */
  public static final int ASYMMETRY = 5;

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
  public int carriedRise() {
    return formula() + 1;
  }

  /** Time constant with which it goes. */
  public int carriedDecay() {
    return formula() + 2;
  }

  /** Usual time constant with which the arm comes to speed. */
  public int runUp() {
    return formula() + 3;
  }

  /** Belief that turns were counted from the start of the motion. */
  int fromRest() {
    return formula() + 4;
  }

  /** Relative gain of clockwise speed, loss of the other. */
  public int asymmetry() {
    return formula() + ASYMMETRY;
  }

  /** Draught of the room. */
  public int draught() {
    return formula() + 6;
  }

  /** Power with which the decay of the carried air slows as it does. */
  int carriedSlowing() {
    return formula() + 7;
  }

  /** Power with which the rise of the carried air goes with the time of a turn. */
  int carriedByTurn() {
    return formula() + 8;
  }

  /** Usual time constant with which the arm comes to rest. */
  int runDown() {
    return formula() + 9;
  }

  /** How late the clock of starts and stops is. */
  int clock() {
    return formula() + 10;
  }

  /** Where a turn finds what all runs of the arm share. */
  public Turn.Arm arm() {
    return new Turn.Arm(runUp(), fromRest(), asymmetry(), runDown(), clock());
  }

  public int shared() {
    return formula() + ARM;
  }
}
