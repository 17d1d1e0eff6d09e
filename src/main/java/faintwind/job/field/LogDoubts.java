package faintwind.job.field;

import static faintwind.calibration.speed.LogSample.HUMIDITY;
import static faintwind.calibration.speed.LogSample.PRESSURE;
import static faintwind.calibration.speed.LogSample.SIGNAL;
import static faintwind.calibration.speed.LogSample.SUPPLY;
import static faintwind.calibration.speed.LogSample.TEMPERATURE;
import static faintwind.calibration.speed.LogSample.TIME;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.Formula;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.run.LogColumns;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import java.util.ArrayList;
import java.util.List;

/**
 * What makes it doubtful that a log and a calibration belong together: air that no weather makes of
 * the calibration's, signals that the instrument never gave or that the logger cut off, and rows so
 * far apart that they are hardly seconds. Every speed can be wrong then, and no row shows it. For
 * one log and one thread.
 */
final class LogDoubts {
  /** Weather at one place stays within this, Pa; 500 m of height are as much (own choice). */
  private static final double WEATHER_Pa = 6000;

  /** A cellar and a drying room lie no farther apart, K (own choice). */
  private static final double WARMER_K = 35;

  /** A colder or thinner air makes the signal larger, but not by so much (own choice). */
  private static final double LARGER = 1.25;

  /** So many rows, and this share of all, are no spikes (own choices). */
  private static final int LEAST_ROWS = 20;

  private static final double LEAST_SHARE = 0.01;

  /** A row in a quarter of an hour tells of wind at its moment alone (own choice). */
  private static final double FAR_APART_S = 900;

  private final AirState reference;
  private final double offset;
  private final double perSign;
  private final double most;
  private final double supply_V;
  private final double told_Pa;
  private long rows;
  private long larger;
  private double largest;
  private long pressures;
  private double pressure_Pa;
  private long temperatures;
  private long humidities;
  private long supplies;
  private double temperature_K;
  private final HeldAtTheEnd held = new HeldAtTheEnd();
  private long timed;
  private double first_s;
  private double last_s;

  LogDoubts(Calibration calibration, SpeedSettings settings) {
    reference = calibration.formula().referenceAir();
    offset = Formula.of(calibration).path().offset();
    perSign = Math.signum(calibration.signal().perKelvin());
    most = LARGER * calibration.coverage().highestSignal();
    supply_V = calibration.signal().supply_V().orElse(0);
    told_Pa = settings.air().pressure_Pa().orElse(reference.pressure_Pa());
  }

  /** One row, its signal in the calibration's unit. */
  void add(LogSample row) {
    rows++;
    if (row.knows(TIME)) {
      first_s = timed == 0 ? row.time : first_s;
      last_s = row.time;
      timed++;
    }
    if (row.knows(PRESSURE)) {
      pressures++;
      pressure_Pa += row.pressure;
    }
    if (row.knows(TEMPERATURE)) {
      temperatures++;
      temperature_K += row.temperature;
    }
    humidities += row.knows(HUMIDITY) ? 1 : 0;
    supplies += row.knows(SUPPLY) ? 1 : 0;
    if (row.knows(SIGNAL)) {
      double signal = perSign * (row.signal - offset);
      held.add(signal);
      double fed = row.knows(SUPPLY) && supply_V > 0 ? row.supply / supply_V : 1;
      if (signal > most * Math.max(1, fed * fed)) {
        larger++;
        largest = Math.max(largest, signal);
      }
    }
  }

  /** All doubts about the log of that name with these columns. */
  List<Problem> problems(String log, LogColumns columns) {
    Where where = Where.file(log);
    List<Problem> found = new ArrayList<>();
    unread(columns, LogColumns.AIR, temperatures, where, found);
    unread(columns, LogColumns.PRESSURE, pressures, where, found);
    unread(columns, LogColumns.HUMIDITY, humidities, where, found);
    unread(columns, LogColumns.SUPPLY, supplies, where, found);
    double mean_Pa = pressures > 0 ? pressure_Pa / pressures : told_Pa;
    if (Math.abs(mean_Pa - reference.pressure_Pa()) > WEATHER_Pa) {
      found.add(
          Problem.warning(
              "convert.other-pressure",
              where,
              Numerals.places(mean_Pa / 100, 0),
              Numerals.places(reference.pressure_Pa() / 100, 0)));
    }
    double mean_K = temperatures > 0 ? temperature_K / temperatures : reference.temperature_K();
    if (Math.abs(mean_K - reference.temperature_K()) > WARMER_K) {
      found.add(
          Problem.warning(
              "convert.other-air", where, celsius(mean_K), celsius(reference.temperature_K())));
    }
    if (larger >= LEAST_ROWS && larger > LEAST_SHARE * rows) {
      found.add(
          Problem.warning(
              "convert.other-signal",
              where,
              String.valueOf(larger),
              Numerals.digits(largest),
              Numerals.digits(most / LARGER)));
    }
    if (held.isThere()) {
      found.add(
          Problem.warning(
              "convert.cut-off",
              where,
              String.valueOf(held.rows()),
              Numerals.digits(perSign * held.largest() + offset)));
    }
    double apart_s = timed > 1 ? (last_s - first_s) / (timed - 1) : 0;
    if (timed >= LEAST_ROWS && apart_s >= FAR_APART_S) {
      found.add(Problem.warning("convert.far-apart", where, Numerals.places(apart_s, 0)));
    }
    return found;
  }

  /** A column that is there and of which no number can be what it is called. */
  private void unread(
      LogColumns columns, String name, long read, Where where, List<Problem> found) {
    if (rows > 0 && read == 0 && columns.has(name)) {
      found.add(Problem.warning("convert.column-unread", where, name));
    }
  }

  private static String celsius(double kelvin) {
    return Numerals.places(kelvin - Constants.ZERO_C_K, 0);
  }
}
