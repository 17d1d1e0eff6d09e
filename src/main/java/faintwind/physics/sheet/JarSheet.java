package faintwind.physics.sheet;

import faintwind.physics.AirState;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.design.Detection;
import faintwind.physics.design.Spread;
import java.util.List;

/**
 * What to expect of the instrument at rest in a closed jar, as long as nothing calibrated it;
 * afterwards {@code calibration.bench.JarCheck} does.
 */
public final class JarSheet {
  /** Time constants until less than a hundredth is left to go, e⁻⁵ = 0.7 %. */
  public static final double SETTLED = 5;

  private static final double STEP_K = 5;
  private static final double STEP_PA = 5000;
  private static final double MIDDLE_PA = 75_000;

  private JarSheet() {}

  /** By how much the pressure is changed to see what it does, Pa: towards the middle of all. */
  public static double pressureStep_Pa(AirState air) {
    return air.pressure_Pa() > MIDDLE_PA ? -STEP_PA : STEP_PA;
  }

  static List<Outcome> of(Design design, Spread spread) {
    Interval still = spread.of(m -> m.delta_K(0));
    AirState air = design.air();
    double warmer = Detection.still_K(design, air.withTemperature(air.temperature_K() + STEP_K));
    double slope = (warmer - still.nominal()) / STEP_K;
    double step_Pa = pressureStep_Pa(air);
    double other = Detection.still_K(design, air.withPressure(air.pressure_Pa() + step_Pa));
    double byPressure = (other - still.nominal()) / (step_Pa / 100);
    Interval tau_s = spread.of(m -> m.timeConstant_s(0));
    return List.of(
        Outcome.plain(OutcomeId.JAR_DELTA, still),
        Outcome.plain(OutcomeId.JAR_AIR, air.temperature_K() - Constants.ZERO_C_K),
        Outcome.plain(OutcomeId.JAR_SLOPE, slope),
        Outcome.plain(OutcomeId.JAR_PRESSURE, air.pressure_Pa() / 100),
        Outcome.plain(OutcomeId.JAR_PRESSURE_SLOPE, byPressure),
        Outcome.plain(OutcomeId.JAR_TIME, SETTLED * tau_s.high() / 60));
  }
}
