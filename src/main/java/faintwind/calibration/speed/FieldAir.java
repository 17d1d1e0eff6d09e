package faintwind.calibration.speed;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.speed.state.Decay;
import faintwind.calibration.speed.state.PreparedRow.RowAir;
import faintwind.physics.AirState;
import java.util.OptionalDouble;

/**
 * The air's state along a log: the row's own numbers first, then what was given for the whole log,
 * then the calibration's. Temperature is smoothed over the past minute, since a thermometer's noise
 * is no change of the air. For one log and one thread.
 */
final class FieldAir {
  private static final double PRESSURE_STEP_PA = 20;
  private static final double HUMIDITY_STEP = 0.02;

  private final LogSample given;
  private final AirState reference;
  private AirState state;
  private AirPoint point;
  private double temperature_K;
  private boolean begun;
  private boolean temperatureSeen;
  private boolean pressureSeen;
  private double jumpFor_s;
  private final Decay decay = new Decay(OwnChoices.AIR_SMOOTHING_S);

  FieldAir(LogAir given, AirState reference) {
    OptionalDouble none = OptionalDouble.empty();
    this.given = new LogSample(none, none, given, none);
    this.reference = reference;
    this.state = reference;
    this.point = AirPoint.of(reference);
  }

  RowAir next(LogSample row, double step_s) {
    double last_K = begun ? temperature_K : reference.temperature_K();
    double read_K = first(LogSample.TEMPERATURE, row, row.temperature, given.temperature, last_K);
    smooth(read_K, step_s);
    double pressure_Pa =
        first(LogSample.PRESSURE, row, row.pressure, given.pressure, state.pressure_Pa());
    double humidity =
        first(LogSample.HUMIDITY, row, row.humidity, given.humidity, state.relativeHumidity());
    boolean changed =
        Math.abs(pressure_Pa - state.pressure_Pa()) > PRESSURE_STEP_PA
            || Math.abs(humidity - state.relativeHumidity()) > HUMIDITY_STEP
            || Math.abs(temperature_K - state.temperature_K()) > 2;
    if (changed) {
      state = new AirState(temperature_K, pressure_Pa, humidity);
      point = AirPoint.of(state);
    }
    point = point.withTemperature(temperature_K);
    temperatureSeen |= isKnown(LogSample.TEMPERATURE, row);
    pressureSeen |= isKnown(LogSample.PRESSURE, row);
    return new RowAir(
        point,
        temperatureSeen ? 0 : OwnChoices.U_AIR_UNRECORDED_K,
        pressureSeen ? 0 : OwnChoices.U_PRESSURE_UNRECORDED);
  }

  private boolean isKnown(int bit, LogSample row) {
    return row.knows(bit) || given.knows(bit);
  }

  /** The row's own number where it has one, else what was given for the log, else another. */
  private double first(int bit, LogSample row, double own, double ofLog, double otherwise) {
    return row.knows(bit) ? own : given.knows(bit) ? ofLog : otherwise;
  }

  private void smooth(double read_K, double step_s) {
    if (!begun) {
      temperature_K = read_K;
      begun = true;
      return;
    }
    // a sensor's error code must not bend the speed; a new room may
    jumpFor_s = Math.abs(read_K - temperature_K) > OwnChoices.AIR_JUMP_K ? jumpFor_s + step_s : 0;
    if (jumpFor_s > OwnChoices.AIR_JUMP_STANDS_S) {
      temperature_K = read_K;
    } else if (jumpFor_s <= 0) {
      temperature_K += (read_K - temperature_K) * decay.share(step_s);
    }
  }
}
