package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.HeaterLimits;
import faintwind.calibration.speed.state.PreparedRow;
import faintwind.calibration.speed.state.PreparedRow.Kind;
import faintwind.calibration.speed.state.UsualStep;
import java.util.Optional;

/**
 * Makes the rows of a log ready, one after the other: time must increase, breaks and impossible
 * jumps are told, air and supply are smoothed. For one log and one thread.
 */
final class LogPreparation {
  private final FieldAir air;
  private final FieldSupply supply;
  private final UsualStep usual = new UsualStep();
  private final double fastest_1_s;
  private final double heating_K_s;
  private final double perKelvin;
  private final double noise;
  private boolean begun;
  private double last_s;
  private double lastSignal;
  private double lastAir_K;
  private double sinceSignal_s;
  private int spikes;

  LogPreparation(Calibration calibration, FieldFormula formula, SpeedSettings settings) {
    air = new FieldAir(settings.air(), calibration.formula().referenceAir());
    heating_K_s = formula.path().heating_K_s();
    supply = new FieldSupply(heating_K_s, calibration.signal());
    HeaterLimits limits = HeaterLimits.of(calibration, formula);
    fastest_1_s = limits.greatestLoss_1_s();
    perKelvin = Math.abs(calibration.signal().perKelvin());
    noise = calibration.performance().noise();
  }

  /** The row made ready; empty where it cannot be used. */
  Optional<PreparedRow> next(LogSample sample, FieldFormula formula) {
    if (!sample.knows(LogSample.TIME | LogSample.SIGNAL)) {
      return Optional.empty();
    }
    double time_s = sample.time;
    double signal = sample.signal;
    if (!Double.isFinite(time_s) || !Double.isFinite(signal) || (begun && time_s <= last_s)) {
      return Optional.empty();
    }
    double step_s = begun ? time_s - last_s : 0;
    Kind kind = begun ? kind(step_s, signal, formula) : Kind.FIRST;
    PreparedRow row =
        new PreparedRow(
            time_s,
            step_s,
            signal,
            air.next(sample, step_s),
            supply.next(sample, step_s),
            supply.supply(),
            kind);
    if (kind != Kind.SPIKE) {
      lastSignal = signal;
      lastAir_K = row.air().air_K();
      sinceSignal_s = 0;
    }
    begun = true;
    last_s = time_s;
    return Optional.of(row);
  }

  private Kind kind(double step_s, double signal, FieldFormula formula) {
    sinceSignal_s += step_s;
    boolean gap =
        usual.isKnown()
            && step_s > Math.max(OwnChoices.LEAST_GAP_S, OwnChoices.GAP_STEPS * usual.median_s());
    if (!gap) {
      usual.add(step_s);
    }
    if (step_s > OwnChoices.LONG_GAP_S) {
      spikes = 0;
      return Kind.AFTER_LONG_GAP;
    }
    double change = Math.abs(signal - lastSignal);
    if (change > allowed(0)
        && change > allowed(Math.abs(formula.delta_K(lastSignal, lastAir_K)))
        && spikes < OwnChoices.SPIKES_IN_A_ROW) {
      spikes++;
      return Kind.SPIKE;
    }
    boolean accepted = spikes >= OwnChoices.SPIKES_IN_A_ROW;
    spikes = 0;
    return gap || accepted ? Kind.AFTER_GAP : Kind.USUAL;
  }

  /** The greatest change of the signal since the last that a ball with this difference can make. */
  private double allowed(double delta_K) {
    double possible_K = (2 * heating_K_s + fastest_1_s * delta_K) * sinceSignal_s;
    return perKelvin * possible_K * OwnChoices.SPIKE_ALLOWANCE + OwnChoices.SPIKE_NOISES * noise;
  }
}
