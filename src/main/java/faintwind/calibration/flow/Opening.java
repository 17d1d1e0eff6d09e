package faintwind.calibration.flow;

import faintwind.message.Field;
import java.util.Optional;

/**
 * An opening that air goes through.
 *
 * @param shape what it looks like
 * @param width_m its diameter, or its width; of a gap its length
 * @param height_m its height; of a gap how far it is open; of a round one the diameter again
 * @param u_size_m standard uncertainty of each of the two
 */
public record Opening(Shape shape, double width_m, double height_m, double u_size_m) {
  /** Diameter, width, or length of a gap. */
  public static final Field WIDTH = Field.number("opening.width_mm", 5, 20_000);

  /** Height, or how far a gap is open. */
  public static final Field HEIGHT = Field.number("opening.height_mm", 2, 20_000);

  /** Standard uncertainty of both. */
  public static final Field U_SIZE = Field.number("opening.u_size_mm", 0, 100);

  public Opening {
    WIDTH.require(1000 * width_m);
    HEIGHT.require(1000 * height_m);
    U_SIZE.require(1000 * u_size_m);
  }

  /** What an opening looks like. */
  public enum Shape {
    /** A duct, pipe or hole. */
    ROUND,
    /** A duct, grille or window. */
    RECTANGLE,
    /** Beside a door or a window: long and narrow. */
    GAP,
    /** The entrance of a hive: a slot that is long and low. */
    HIVE;

    /** The shape of a word in a file or on the command line. */
    public static Optional<Shape> named(String word) {
      for (Shape shape : values()) {
        if (Field.word(shape).equals(word)) {
          return Optional.of(shape);
        }
      }
      return Optional.empty();
    }

    /** Whether there is room for one row of points only. */
    public boolean isSlot() {
      return this == GAP || this == HIVE;
    }
  }

  /** Of a round duct. */
  public static Opening round(double diameter_m, double u_m) {
    return new Opening(Shape.ROUND, diameter_m, diameter_m, u_m);
  }

  /** Its area. */
  public double area_m2() {
    return shape == Shape.ROUND ? Math.PI / 4 * width_m * width_m : width_m * height_m;
  }

  /** Relative standard uncertainty of the area. */
  public double u_area() {
    return shape == Shape.ROUND
        ? 2 * u_size_m / width_m
        : Math.hypot(u_size_m / width_m, u_size_m / height_m);
  }

  /** Its smaller side. */
  public double narrow_m() {
    return Math.min(width_m, height_m);
  }
}
