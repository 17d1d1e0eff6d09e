package faintwind.calibration.fit.health;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/** The usual slips in writing down how fast the arm turned: speed as written over true speed. */
public enum Slip {
  THOUSANDTH("thousandth", 1e-3),
  INCH("inch", 1 / 25.4),
  SIXTIETH("sixtieth", 1 / 60.0),
  TENTH("tenth", 0.1),
  HALF("half", 0.5),
  TWICE("twice", 2),
  TEN("ten", 10),
  SIXTY("sixty", 60),
  THOUSAND("thousand", 1e3);

  private final String id;
  private final double factor;

  Slip(String id, double factor) {
    this.id = id;
    this.factor = factor;
  }

  /** Last part of its bundle keys. */
  public String id() {
    return id;
  }

  /** Speed as written over true speed. */
  public double factor() {
    return factor;
  }

  /** Whether two speeds, or two factors, are near enough to be the same but for the fit's error. */
  public static boolean isNear(double one, double other) {
    return Math.abs(Math.log(one / other)) < OwnChoices.NEAR;
  }

  /** The slip that explains this factor, where one does. */
  public static Optional<Slip> near(double writtenOverTrue) {
    return Arrays.stream(values())
        .filter(s -> isNear(writtenOverTrue, s.factor))
        .min(Comparator.comparingDouble(s -> Math.abs(Math.log(writtenOverTrue / s.factor))));
  }
}
