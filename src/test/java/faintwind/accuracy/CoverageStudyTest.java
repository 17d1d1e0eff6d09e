package faintwind.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.Origin;
import faintwind.calibration.fit.judging.CalibrationAssembly;
import faintwind.calibration.fit.judging.Choice;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualLog;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whole calibrations of made-up builds: how often the truth lies within the stated band. The
 * virtual instrument is this program's own, so this is regression, not proof. {@code
 * -Daccuracy.builds=N} sets the number of builds, {@code -Daccuracy.write=true} writes the table.
 */
@Tag("slow")
class CoverageStudyTest {
  private static final Path PAGE = Path.of("docs/accuracy.md");
  private static final String BEGIN = "<!-- coverage: begin -->";
  private static final String END = "<!-- coverage: end -->";
  private static final double[] SPEEDS_M_S = {0.1, 0.2, 0.3, 0.5, 0.8, 1.3, 2, 3};
  private static final double HOLD_S = 700;
  private static final long FIRST_SEED = 1000;

  /** One speed read with one build's calibration. */
  private record Reading(double truth_m_s, double read_m_s, double u95_m_s) {
    boolean within() {
      return Math.abs(read_m_s - truth_m_s) <= u95_m_s;
    }
  }

  @Test
  void statedBandsHoldTheTruthAsOftenAsTheySay() throws IOException {
    int builds = Integer.getInteger("accuracy.builds", 40);
    List<Reading> readings = new ArrayList<>();
    int refused = 0;
    for (long seed = FIRST_SEED; seed < FIRST_SEED + builds; seed++) {
      Optional<Calibration> calibration = calibrate(seed);
      if (calibration.isPresent()) {
        readings.addAll(read(calibration.get(), seed));
      } else {
        refused++;
      }
    }
    if (Boolean.getBoolean("accuracy.write")) {
      write(readings, builds, refused);
    }
    assertThat(refused).isZero();
    assertThat(share(readings)).isBetween(0.9, 1.0);
    assertThat(meanU95(readings)).isLessThan(0.06);
  }

  private static Optional<Calibration> calibrate(long seed) {
    RunSet set =
        VirtualRehearsal.calibration(VirtualDraw.build(seed), VirtualPlan.inTurn(seed), seed)
            .runSet();
    Checked<FitResult> fit = FitToRuns.fit(set, () -> false);
    Origin origin =
        new Origin("made up", OffsetDateTime.parse("2026-01-01T00:00:00Z"), "test", Map.of());
    return fit.fold(
        (value, notes) ->
            Optional.of(CalibrationAssembly.of(Choice.only(value), set, origin, Optional.empty())),
        problems -> Optional.empty());
  }

  private static List<Reading> read(Calibration calibration, long seed) {
    VirtualLog log =
        VirtualRehearsal.warmFieldLog(
            VirtualDraw.build(seed).noiseless(),
            HOLD_S * SPEEDS_M_S.length - 1,
            t -> SPEEDS_M_S[(int) Math.min(SPEEDS_M_S.length - 1, t / HOLD_S)],
            seed);
    LogAir air =
        new LogAir(
            OptionalDouble.empty(),
            OptionalDouble.of(VirtualDraw.build(seed).room().air().pressure_Pa()),
            OptionalDouble.empty());
    SpeedEstimator estimator = SpeedEstimator.smoothing(calibration, new SpeedSettings(30, air));
    List<SpeedRow> rows = new ArrayList<>();
    Recording recording = log.recording();
    for (int i = 0; i < recording.signal().size(); i++) {
      estimator.accept(sample(recording, i), rows::add);
    }
    estimator.finish(rows::add);
    List<Reading> readings = new ArrayList<>();
    for (int hold = 0; hold < SPEEDS_M_S.length; hold++) {
      int at = recording.signal().indexAtOrAfter((hold + 0.85) * HOLD_S);
      SpeedRow row = rows.get(at);
      readings.add(
          new Reading(
              SPEEDS_M_S[hold], row.speed_m_s().orElseThrow(), row.u95_m_s().orElseThrow()));
    }
    return readings;
  }

  private static LogSample sample(Recording recording, int row) {
    double time_s = recording.signal().time_s(row);
    LogAir air =
        new LogAir(
            OptionalDouble.of(recording.air_K().orElseThrow().at(time_s)),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    return new LogSample(
        OptionalDouble.of(time_s),
        OptionalDouble.of(recording.signal().value(row)),
        air,
        OptionalDouble.of(recording.supply_V().orElseThrow().at(time_s)));
  }

  private static double share(List<Reading> readings) {
    return (double) readings.stream().filter(Reading::within).count() / readings.size();
  }

  private static double meanU95(List<Reading> readings) {
    return readings.stream().mapToDouble(r -> r.u95_m_s() / r.truth_m_s()).average().orElseThrow();
  }

  private static void write(List<Reading> readings, int builds, int refused) throws IOException {
    StringBuilder table = new StringBuilder(BEGIN);
    table.append(
        String.format(
            Locale.ROOT,
            "\n%d builds (seeds from %d; separate runs, staircases and both directions in turn),"
                + " %d refused.\n\n| speed | within U95 | mean U95 | rms error |\n"
                + "| --- | --- | --- | --- |\n",
            builds,
            FIRST_SEED,
            refused));
    for (double speed_m_s : SPEEDS_M_S) {
      line(
          table,
          speed_m_s + " m/s",
          readings.stream().filter(r -> r.truth_m_s() == speed_m_s).toList());
    }
    line(table, "all", readings);
    String page = Files.readString(PAGE);
    int from = page.indexOf(BEGIN);
    int to = page.indexOf(END);
    Files.writeString(PAGE, page.substring(0, from) + table + page.substring(to));
  }

  private static void line(StringBuilder table, String name, List<Reading> readings) {
    double rms =
        FieldScores.rms(readings.stream().map(r -> r.read_m_s() / r.truth_m_s() - 1).toList());
    table.append(
        String.format(
            Locale.ROOT,
            "| %s | %.2f | %.1f %% | %.1f %% |\n",
            name,
            share(readings),
            100 * meanU95(readings),
            100 * rms));
  }
}
