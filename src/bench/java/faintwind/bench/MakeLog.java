package faintwind.bench;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.files.calibration.CalibrationFile;
import faintwind.physics.AirState;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Writes a made-up field log for the measurements, one row a second: a wind that gusts, changes
 * suddenly now and then and has calm nights, read through the heat balance of a calibration. Always
 * the same for the same number of rows. After a build: {@code java -cp
 * 'target/classes:target/lib/*' src/bench/java/faintwind/bench/MakeLog.java CAL.json ROWS LOG.csv}
 */
public final class MakeLog {
  private static final int STEPS = 4;
  private static final double NOISE = 1.5;
  private static final double DAY_S = 86_400;

  private final FieldFormula formula;
  private final Random random = new Random(20);
  private double mean_m_s = 0.4;
  private double gust;
  private double delta_K = 10;
  private double flow_K_s;
  private double bead_K = 10;

  private MakeLog(Calibration calibration) {
    formula = new FieldFormula(calibration);
    flow_K_s = formula.path().heating_K_s();
  }

  /** A calibration of a µV signal, how many rows, and the file. */
  public static void main(String[] arguments) throws IOException {
    Calibration calibration =
        CalibrationFile.read(Path.of(arguments[0]), arguments[0])
            .fold(
                (read, notes) -> read,
                problems -> {
                  throw new IllegalStateException(problems.toString());
                });
    long rows = (long) Double.parseDouble(arguments[1]);
    try (Writer out = Files.newBufferedWriter(Path.of(arguments[2]))) {
      out.write("time_s," + calibration.signal().unit().column() + ",air_C,supply_V\n");
      MakeLog log = new MakeLog(calibration);
      for (long row = 0; row < rows; row++) {
        out.write(log.row(row));
      }
    }
  }

  private String row(long row) {
    double air_K = 293.15 + 3 * Math.sin(2 * Math.PI * row / DAY_S);
    AirPoint air = AirPoint.of(new AirState(air_K, 101_325, 0.5));
    double speed_m_s = speed(row);
    ThermalPath path = formula.path();
    for (int i = 0; i < STEPS; i++) {
      double h = 1.0 / STEPS;
      double loss_1_s = formula.loss_1_s(speed_m_s, delta_K, air);
      double before_K = delta_K;
      delta_K += h * (flow_K_s - loss_1_s * delta_K) / (1 - path.heaterShare());
      flow_K_s +=
          (h * (path.heating_K_s() - flow_K_s) - path.heaterShare() * (delta_K - before_K))
              / path.heaterTime_s();
      bead_K += (before_K - bead_K) * Math.min(1, h / path.beadTime_s());
    }
    double signal =
        path.offset() + path.curve().signal(bead_K, air_K) + NOISE * random.nextGaussian();
    return String.format(Locale.ROOT, "%d.0,%.2f,%.2f,4.990%n", row, signal, air_K - 273.15);
  }

  private double speed(long row) {
    if (random.nextInt(1800) == 0) {
      mean_m_s = 0.05 * Math.exp(3.5 * random.nextDouble());
    }
    gust += -gust / 20 + 0.25 * Math.sqrt(2.0 / 20) * random.nextGaussian();
    boolean night = row % DAY_S > 0.75 * DAY_S;
    return night ? 0 : mean_m_s * Math.exp(gust);
  }
}
