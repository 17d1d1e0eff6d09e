package faintwind.calibration.bench;

import faintwind.calibration.Calibration;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.sheet.JarSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a calibrated instrument shows at rest in a closed jar: delta in still air by the formula in
 * force, and how it changes with the temperature and the pressure of the air in the jar. A change
 * of the weather by 20 hPa moves delta by less than a hundredth; a mountain of 2000 m by some 5 %.
 */
public final class JarCheck {
  /**
   * Half width of the band: a jar's own walls, one kelvin of its thermometer, half a per cent of
   * the supply (common practice, no source).
   */
  private static final double BAND = 0.04;

  private JarCheck() {}

  /**
   * The quantities of the sheet that the calibration knows better than the design; none where the
   * signal's scale in kelvin is not on record.
   */
  public static List<Outcome> of(Calibration calibration) {
    return of(calibration.formula(), calibration.signal());
  }

  /** The same of its formula and what the numbers of its signal are. */
  public static List<Outcome> of(FormulaFit fit, SignalPath signal) {
    if (!isInKelvin(signal)) {
      return List.of();
    }
    Formula formula = Formula.of(fit, signal);
    AirState air = fit.referenceAir();
    double still = still_K(formula, air);
    double warmer =
        still_K(formula, air.withTemperature(air.temperature_K() + OwnChoices.JAR_STEP_K));
    double step_Pa = JarSheet.pressureStep_Pa(air);
    double other = still_K(formula, air.withPressure(air.pressure_Pa() + step_Pa));
    return List.of(
        Outcome.plain(OutcomeId.JAR_DELTA, Interval.share(still, BAND)),
        Outcome.plain(OutcomeId.JAR_AIR, air.temperature_K() - Constants.ZERO_C_K),
        Outcome.plain(OutcomeId.JAR_SLOPE, (warmer - still) / OwnChoices.JAR_STEP_K),
        Outcome.plain(OutcomeId.JAR_PRESSURE, air.pressure_Pa() / 100),
        Outcome.plain(OutcomeId.JAR_PRESSURE_SLOPE, (other - still) / (step_Pa / 100)));
  }

  /** Whether the size of a kelvin in the signal is on record. */
  static boolean isInKelvin(SignalPath signal) {
    return signal.unit() == SignalUnit.DELTA_K
        || (signal.unit() != SignalUnit.SIGNAL_COUNTS
            && signal.thermocouple().isPresent()
            && signal.chain().gain().isPresent());
  }

  private static double still_K(Formula formula, AirState air) {
    return formula.steadyDelta_K(0, OptionalDouble.empty(), AirPoint.of(air));
  }
}
