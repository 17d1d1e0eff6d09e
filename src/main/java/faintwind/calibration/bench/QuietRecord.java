package faintwind.calibration.bench;

import faintwind.calibration.run.Series;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Zero and noise of a recording with the heater off, in the signal's own unit.
 *
 * @param mean of the whole record
 * @param drift_per_s slope of the straight line of least squares
 * @param scatter standard deviation about that line
 * @param corner_Hz where 1/f noise equals white noise; empty where it does not stand out
 * @param pickUp a steady oscillation; empty where none stands out
 * @param blindTo mains frequencies, Hz, that this rate of rows cannot show
 * @param input what the signal says of the input it came through
 */
public record QuietRecord(
    double mean,
    double drift_per_s,
    double scatter,
    OptionalDouble corner_Hz,
    Optional<PickUp> pickUp,
    List<Integer> blindTo,
    Input input) {
  /** A record must be as long as this, s, and have as many rows: own rule. */
  public static final double LEAST_S = 60;

  public QuietRecord {
    blindTo = List.copyOf(blindTo);
  }

  /** What the signal says of the input. */
  public enum Input {
    STEADY,
    /**
     * It runs away far beyond its scatter: draught, warm joints, or no path for the input's
     * current.
     */
    WANDERS,
    /** It went to an end of the range and stays there: no path for the input's current. */
    AT_AN_END,
    /** It never changes by a single step: too coarse a logger, or no input is read. */
    STUCK
  }

  /** Works out a record; refused where it is too short. */
  public static Checked<QuietRecord> of(Series signal) {
    double length_s = signal.isEmpty() ? 0 : signal.last_s() - signal.first_s();
    if (signal.size() < OwnChoices.LEAST_ROWS || length_s < LEAST_S) {
      return Checked.refused(
          Problem.error(
              "bench.too-short",
              Where.NOWHERE,
              String.valueOf(Math.round(length_s)),
              String.valueOf(signal.size()),
              String.valueOf(Math.round(LEAST_S)),
              String.valueOf(OwnChoices.LEAST_ROWS)));
    }
    StraightLine line = StraightLine.through(signal);
    Series residual = line.residual(signal);
    Spectrum spectrum = Spectrum.of(residual);
    NoiseFloor all = NoiseFloor.of(spectrum);
    Optional<PickUp> pickUp = line.scatter() > 0 ? PickUp.in(spectrum, all) : Optional.empty();
    NoiseFloor floor = pickUp.map(p -> NoiseFloor.beside(spectrum, p.frequency_Hz())).orElse(all);
    double rate_Hz = spectrum.rate_Hz();
    double drift = Math.abs(line.slope_per_s()) * length_s;
    return Checked.ok(
        new QuietRecord(
            signal.mean(),
            line.slope_per_s(),
            line.scatter(),
            floor.corner_Hz(),
            pickUp,
            List.of(50, 60).stream()
                .filter(mains -> PickUp.isBlind(mains, rate_Hz, length_s))
                .toList(),
            input(signal, line, drift)));
  }

  private static Input input(Series signal, StraightLine line, double drift) {
    double[] values = signal.values();
    double low = Arrays.stream(values).min().orElseThrow();
    double high = Arrays.stream(values).max().orElseThrow();
    if (low == high) {
      return Input.STUCK;
    }
    double last = values[values.length - 1];
    int same = 0;
    while (same < values.length && values[values.length - 1 - same] == last) {
      same++;
    }
    boolean atEnd = (last == low || last == high) && same >= OwnChoices.STUCK_ROWS;
    if (atEnd && Arrays.stream(values).distinct().count() > OwnChoices.STUCK_ROWS) {
      return Input.AT_AN_END;
    }
    return drift > OwnChoices.WANDERS * line.scatter() ? Input.WANDERS : Input.STEADY;
  }
}
