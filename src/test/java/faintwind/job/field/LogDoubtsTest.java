package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.ModelInstrument;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.run.LogColumns;
import faintwind.message.Problem;
import faintwind.physics.AirState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LogDoubtsTest {
  private static final int ROWS = 1000;
  private static final LogColumns COLUMNS =
      new LogColumns(List.of("time_s", "delta_K"), SignalUnit.DELTA_K, Optional.empty(), ',');

  private final ModelInstrument instrument = new ModelInstrument(0.01);
  private final Calibration calibration = instrument.calibration();
  private final AirState air = calibration.formula().referenceAir();
  private final double largest = calibration.coverage().highestSignal();

  private List<String> doubts(double signal, int rows, LogAir inLog, OptionalDouble supply_V) {
    LogDoubts doubts = new LogDoubts(calibration, new SpeedSettings(30, LogAir.UNKNOWN));
    for (int i = 0; i < ROWS; i++) {
      OptionalDouble read = OptionalDouble.of(i < rows ? signal : largest / 2);
      doubts.add(new LogSample(OptionalDouble.of(i), read, inLog, supply_V));
    }
    return doubts.problems("log.csv", COLUMNS).stream().map(Problem::id).toList();
  }

  private LogAir air(double warmer_K, double more_Pa) {
    return new LogAir(
        OptionalDouble.of(air.temperature_K() + warmer_K),
        OptionalDouble.of(air.pressure_Pa() + more_Pa),
        OptionalDouble.empty());
  }

  private List<String> ofAir(double warmer_K, double more_Pa) {
    return doubts(largest / 2, 0, air(warmer_K, more_Pa), OptionalDouble.empty());
  }

  @Test
  void weatherIsNoDoubtAndAnotherHeightIs() {
    assertThat(ofAir(0, 5900)).isEmpty();
    assertThat(ofAir(0, -5900)).isEmpty();
    assertThat(ofAir(0, 6100)).containsExactly("convert.other-pressure");
    assertThat(ofAir(0, -25_000)).containsExactly("convert.other-pressure");
  }

  @Test
  void theToldPressureCountsWhereTheLogHasNone() {
    LogAir told =
        new LogAir(OptionalDouble.empty(), OptionalDouble.of(76_000), OptionalDouble.empty());
    LogDoubts doubts = new LogDoubts(calibration, new SpeedSettings(30, told));
    assertThat(doubts.problems("log.csv", COLUMNS))
        .extracting(Problem::id)
        .containsExactly("convert.other-pressure");
  }

  @Test
  void aDryingRoomIsNoDoubtAndFahrenheitIs() {
    assertThat(ofAir(34, 0)).isEmpty();
    assertThat(ofAir(-34, 0)).isEmpty();
    assertThat(ofAir(36, 0)).containsExactly("convert.other-air");
  }

  @Test
  void aSignalThatTheBallCannotMakeIsADoubtWhereItLasts() {
    double offset = 0.1;
    assertThat(ofSignal(offset + 1.2 * largest, 200)).isEmpty();
    assertThat(ofSignal(offset + 1.3 * largest, 200)).containsExactly("convert.other-signal");
    assertThat(ofSignal(offset + 1.3 * largest, 19)).isEmpty();
  }

  private List<String> ofSignal(double signal, int rows) {
    return doubts(signal, rows, air(0, 0), OptionalDouble.empty());
  }

  @Test
  void aSupplyOnRecordExplainsALargerSignal() {
    double usual_V = calibration.signal().supply_V().orElseThrow();
    double signal = 0.1 + 1.4 * largest;
    OptionalDouble more_V = OptionalDouble.of(1.1 * usual_V);
    assertThat(doubts(signal, 200, air(0, 0), more_V)).isEmpty();
  }

  /** Kelvin where degrees Celsius, millivolts where volts are expected: the reader takes none. */
  @Test
  void aColumnOfWhichNothingWasUsedIsTold() {
    LogColumns both =
        new LogColumns(
            List.of("time_s", "delta_K", "air_C", "supply_V"),
            SignalUnit.DELTA_K,
            Optional.empty(),
            ',');
    LogDoubts doubts = new LogDoubts(calibration, new SpeedSettings(30, LogAir.UNKNOWN));
    assertThat(doubts.problems("log.csv", both)).isEmpty();
    OptionalDouble signal = OptionalDouble.of(largest / 2);
    doubts.add(new LogSample(OptionalDouble.of(0), signal, LogAir.UNKNOWN, OptionalDouble.of(5)));
    assertThat(doubts.problems("log.csv", both))
        .singleElement()
        .satisfies(told -> assertThat(told.found()).isEqualTo("air_C"));
  }

  /** Trembling in its last digits below a limit, at which it stands. */
  private List<String> cutOff(double limit, double digit, int stepRows) {
    Random random = new Random(7);
    LogDoubts doubts = new LogDoubts(calibration, new SpeedSettings(30, LogAir.UNKNOWN));
    for (int i = 0; i < ROWS; i++) {
      double still = largest * (0.7 + 0.3 * Math.sin(i * 0.006)) + 0.2 * random.nextGaussian();
      double read = Math.min(limit, digit * Math.round(still / digit));
      doubts.add(
          new LogSample(
              OptionalDouble.of((double) stepRows * i),
              OptionalDouble.of(read),
              LogAir.UNKNOWN,
              OptionalDouble.empty()));
    }
    return doubts.problems("log.csv", COLUMNS).stream().map(Problem::id).toList();
  }

  @Test
  void aSignalThatStandsAtItsLargestIsADoubt() {
    assertThat(cutOff(0.9 * largest, 0.0001, 1)).containsExactly("convert.cut-off");
    assertThat(cutOff(2 * largest, 0.0001, 1)).isEmpty();
  }

  /** Coarse steps let smaller values stand, too: nothing can be said. */
  @Test
  void aCoarseLoggerIsNoDoubt() {
    assertThat(cutOff(2 * largest, 0.5, 1)).isEmpty();
    assertThat(cutOff(0.9 * largest, 0.5, 1)).isEmpty();
  }

  @Test
  void rowsAQuarterOfAnHourApartAreADoubt() {
    assertThat(cutOff(2 * largest, 0.0001, 899)).isEmpty();
    assertThat(cutOff(2 * largest, 0.0001, 1000)).containsExactly("convert.far-apart");
  }
}
