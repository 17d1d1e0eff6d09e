package faintwind.calibration.speed;

import java.util.OptionalDouble;

/**
 * One row of a field log, as far as it could be read. Plain numbers, with a bit for each that says
 * whether it is known: a log has millions of them.
 */
public final class LogSample {
  public static final int TIME = 1;
  public static final int SIGNAL = 2;
  public static final int TEMPERATURE = 4;
  public static final int PRESSURE = 8;
  public static final int HUMIDITY = 16;
  public static final int SUPPLY = 32;

  private final int known;

  /** On the log's clock, s. */
  public final double time;

  /** In the calibration's unit and polarity. */
  public final double signal;

  /** Of the air, K. */
  public final double temperature;

  /** Of the air, Pa. */
  public final double pressure;

  final double humidity;

  /** Of the heater, V. */
  public final double supply;

  /**
   * What is known, by the bits of its quantities; the other numbers do not count.
   *
   * @param time on the log's clock, s
   * @param signal in the calibration's unit and polarity
   * @param temperature of the air, K
   * @param pressure of the air, Pa
   * @param humidity relative, 0 to 1
   * @param supply of the heater, V
   */
  @SuppressWarnings("TooManyParameters")
  public LogSample(
      int known,
      double time,
      double signal,
      double temperature,
      double pressure,
      double humidity,
      double supply) {
    this.known = known;
    this.time = time;
    this.signal = signal;
    this.temperature = temperature;
    this.pressure = pressure;
    this.humidity = humidity;
    this.supply = supply;
  }

  /**
   * The same of numbers that may be missing.
   *
   * @param time_s time on the log's clock, s
   * @param signal in the calibration's unit and polarity
   * @param air what the row says of the air
   * @param supply_V heater supply, V
   */
  public LogSample(
      OptionalDouble time_s, OptionalDouble signal, LogAir air, OptionalDouble supply_V) {
    this(
        bit(time_s, TIME)
            | bit(signal, SIGNAL)
            | bit(air.temperature_K(), TEMPERATURE)
            | bit(air.pressure_Pa(), PRESSURE)
            | bit(air.relativeHumidity(), HUMIDITY)
            | bit(supply_V, SUPPLY),
        time_s.orElse(0),
        signal.orElse(0),
        air.temperature_K().orElse(0),
        air.pressure_Pa().orElse(0),
        air.relativeHumidity().orElse(0),
        supply_V.orElse(0));
  }

  private static int bit(OptionalDouble number, int bit) {
    return number.isPresent() ? bit : 0;
  }

  /** The same with its signal in the calibration's unit. */
  public LogSample matched(SignalMatch match) {
    return match.isSame()
        ? this
        : new LogSample(known, time, match.apply(signal), temperature, pressure, humidity, supply);
  }

  /** Whether all quantities with these bits are known. */
  public boolean knows(int bits) {
    return (known & bits) == bits;
  }

  private OptionalDouble number(int bit, double value) {
    return knows(bit) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  public OptionalDouble time_s() {
    return number(TIME, time);
  }

  public OptionalDouble signal() {
    return number(SIGNAL, signal);
  }

  public LogAir air() {
    return new LogAir(
        number(TEMPERATURE, temperature), number(PRESSURE, pressure), number(HUMIDITY, humidity));
  }

  public OptionalDouble supply_V() {
    return number(SUPPLY, supply);
  }
}
