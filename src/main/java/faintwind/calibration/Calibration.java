package faintwind.calibration;

import faintwind.calibration.run.SignalPath;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import java.util.List;

/**
 * One calibration of one instrument, as the calibration file carries it.
 *
 * @param origin whose, when, by which program, from which files
 * @param signal what the numbers of a log are
 * @param formula the fitted formula with its covariance
 * @param coverage what the runs covered
 * @param evidence how well it stands: residuals, runs, runners-up
 * @param performance what it can do in use
 * @param warnings what a person should know
 */
public record Calibration(
    Origin origin,
    SignalPath signal,
    FormulaFit formula,
    Coverage coverage,
    Evidence evidence,
    Performance performance,
    List<Problem> warnings) {
  /** Id of the note that a run file or a calibration comes from the virtual instrument. */
  public static final String REHEARSAL = "file.rehearsal";

  public Calibration {
    warnings = List.copyOf(warnings);
  }

  /**
   * What its formula holds for, as text: lowest and highest speed, smallest and largest signal with
   * its unit, temperature and pressure of the air.
   */
  public List<String> validRange() {
    AirState air = formula.referenceAir();
    return List.of(
        Numerals.compact(coverage.lowest_m_s(), 3),
        Numerals.compact(coverage.highest_m_s(), 3),
        Numerals.compact(coverage.lowestSignal(), 3),
        Numerals.compact(coverage.highestSignal(), 3),
        signal.unit().symbol(),
        Numerals.compact(air.temperature_K() - Constants.ZERO_C_K, 3),
        Numerals.compact(air.pressure_Pa() / 100, 4));
  }

  /** Whether it comes from a rehearsal: then it may be looked at, and nothing else. */
  public boolean rehearsal() {
    return warnings.stream().anyMatch(w -> w.id().equals(REHEARSAL));
  }
}
