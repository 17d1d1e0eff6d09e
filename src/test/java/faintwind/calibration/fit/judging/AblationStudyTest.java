package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.numerics.Unknown.Shape;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.physics.AirState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What each term of the fit is worth: whole calibrations of made-up builds with one term held where
 * it does nothing. The builds (seeds from 3000) serve for nothing else. {@code -Daccuracy.builds=N}
 * sets their number, {@code -Daccuracy.write=true} writes the table.
 */
@Tag("slow")
class AblationStudyTest {
  private static final Path PAGE = Path.of("docs/accuracy.md");
  private static final String BEGIN = "<!-- ablation: begin -->";
  private static final String END = "<!-- ablation: end -->";
  private static final double[] SPEEDS_M_S = {0.1, 0.2, 0.3, 0.5, 0.8, 1.3, 2, 3};
  private static final double HOLD_S = 700;
  private static final int SLOPE_ROWS = 10;
  private static final long FIRST_SEED = 3000;

  /** A term that is left out: its unknowns, held at values where they do nothing. */
  private record Term(String name, Map<String, Double> held) {}

  private static final List<Term> TERMS =
      List.of(
          new Term("nothing left out", Map.of()),
          new Term("run-up in the count of turns", Map.of("run_up", 0.05)),
          new Term("carried air", Map.of("carried_share", 1e-4)),
          new Term("slowing decay of carried air", Map.of("carried_slowing", 1e-4)),
          new Term("draught", Map.of("draught", 1e-5)),
          new Term("difference of the directions", Map.of("asymmetry", 0.0)),
          new Term("warmth (film temperature instead)", Map.of("warmth", 0.96)),
          new Term("tilt", Map.of("tilt", 0.0)),
          new Term("mixing exponent (3 instead)", Map.of("mixing", 3.0)),
          new Term("resistor's own node", Map.of("heater_share", 1e-4)),
          new Term("lag of the bead", Map.of("bead_time", 0.05)),
          new Term("curvature of the thermocouple", Map.of("sensitivity_slope", 0.0)),
          new Term("lateness of noted starts and stops", Map.of("clock", 0.0)));

  /** Mean and root mean square of the relative errors of one build. */
  private record Score(double mean, double rms) {}

  @Test
  void eachTermIsWorthWhatTheTableSays() throws IOException {
    int builds = Integer.getInteger("accuracy.builds", 24);
    List<List<Score>> scores = new ArrayList<>();
    for (Term term : TERMS) {
      List<Score> own = new ArrayList<>();
      for (long seed = FIRST_SEED; seed < FIRST_SEED + builds; seed++) {
        own.add(score(term, seed));
      }
      scores.add(own);
    }
    if (Boolean.getBoolean("accuracy.write")) {
      write(scores, builds);
    }
    assertThat(medianRms(scores.get(0))).isLessThan(0.01);
    assertThat(medianRms(scores.get(2)))
        .as("without carried air")
        .isGreaterThan(medianRms(scores.get(0)));
  }

  private static Score score(Term term, long seed) {
    RunSet set =
        VirtualRehearsal.calibration(VirtualDraw.build(seed), VirtualPlan.inTurn(seed), seed)
            .runSet();
    Setting setting = Setting.of(set);
    Setup setup = new Setup(setting, setting.model(PhysicsShaped.ID));
    term.held().forEach((name, value) -> hold(setup, name, value));
    return errors(FitToRuns.fit(setting, setup, () -> false), seed);
  }

  private static void hold(Setup setup, String name, double value) {
    int held = 0;
    for (int i = 0; i < setup.unknowns().size(); i++) {
      if (setup.unknowns().get(i).name().equals(name)) {
        setup.unknowns().replace(i, new Unknown(name, value, 1e-6, Shape.LINEAR));
        held++;
      }
    }
    assertThat(held).as(name).isEqualTo(1);
  }

  private static Score errors(FitResult fit, long seed) {
    Recording log =
        VirtualRehearsal.warmFieldLog(
                VirtualDraw.build(seed).noiseless(),
                HOLD_S * SPEEDS_M_S.length - 1,
                t -> SPEEDS_M_S[(int) Math.min(SPEEDS_M_S.length - 1, t / HOLD_S)],
                seed)
            .recording();
    AirState room = VirtualDraw.build(seed).room().air();
    Formula formula = fit.formula();
    double sum = 0;
    double squares = 0;
    for (int hold = 0; hold < SPEEDS_M_S.length; hold++) {
      int at = log.signal().indexAtOrAfter((hold + 0.85) * HOLD_S);
      double time_s = log.signal().time_s(at);
      double air_K = log.air_K().orElseThrow().at(time_s);
      double before = formula.delta_K(log.signal().value(at - SLOPE_ROWS), air_K);
      double now = formula.delta_K(log.signal().value(at), air_K);
      double after = formula.delta_K(log.signal().value(at + SLOPE_ROWS), air_K);
      double rate =
          (after - before)
              / (log.signal().time_s(at + SLOPE_ROWS) - log.signal().time_s(at - SLOPE_ROWS));
      OptionalDouble supply = OptionalDouble.of(log.supply_V().orElseThrow().at(time_s));
      AirPoint air = AirPoint.of(new AirState(air_K, room.pressure_Pa(), room.relativeHumidity()));
      double read = formula.speed_m_s((formula.heating_K_s(supply) - rate) / now, now, air);
      double error = read / SPEEDS_M_S[hold] - 1;
      sum += error;
      squares += error * error;
    }
    return new Score(sum / SPEEDS_M_S.length, Math.sqrt(squares / SPEEDS_M_S.length));
  }

  private static double medianRms(List<Score> scores) {
    return new Median().evaluate(scores.stream().mapToDouble(Score::rms).toArray());
  }

  private static void write(List<List<Score>> scores, int builds) throws IOException {
    StringBuilder table = new StringBuilder(BEGIN);
    table.append(
        String.format(
            Locale.ROOT,
            "\n%d builds (seeds from %d; separate runs, staircases and both directions in"
                + " turn).\n\n| left out | median rms | worst rms | mean error |\n"
                + "| --- | --- | --- | --- |\n",
            builds,
            FIRST_SEED));
    for (int i = 0; i < TERMS.size(); i++) {
      List<Score> own = scores.get(i);
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %.2f %% | %.2f %% | %+.2f %% |\n",
              TERMS.get(i).name(),
              100 * medianRms(own),
              100 * own.stream().mapToDouble(Score::rms).max().orElseThrow(),
              100 * own.stream().mapToDouble(Score::mean).average().orElseThrow()));
    }
    String page = Files.readString(PAGE);
    Files.writeString(
        PAGE, page.substring(0, page.indexOf(BEGIN)) + table + page.substring(page.indexOf(END)));
  }
}
