package faintwind.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.FormulaFit;
import faintwind.calibration.fit.judging.FitResult;
import faintwind.calibration.fit.judging.FitToRuns;
import faintwind.calibration.fit.pooling.ClassFit;
import faintwind.calibration.fit.pooling.ClassFit.Member;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualClass;
import faintwind.calibration.virtual.VirtualClass.Fault;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.physics.AirState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Classes of six made-up pairs, one lesson on the arm each, fitted alone and together; in each
 * fourth class one of them is faulty. The virtual instrument is this program's own, so this is
 * regression, not proof. {@code -Daccuracy.classes=N} sets the number of classes, {@code
 * -Daccuracy.seed=N} takes others, {@code -Daccuracy.write=true} writes the table.
 */
@Tag("slow")
class PoolStudyTest {
  private static final Path PAGE = Path.of("docs/accuracy.md");
  private static final String BEGIN = "<!-- pooled: begin -->";
  private static final String END = "<!-- pooled: end -->";
  private static final double[] SPEEDS_M_S = {0.15, 0.2, 0.3, 0.5, 0.8, 1.3, 2, 3};
  private static final double HOLD_S = 700;
  private static final int SLOPE_ROWS = 10;
  private static final long FIRST_SEED = 91_000;
  private static final int PAIRS = 6;
  private static final int FAULTY = 3;

  /** Errors of one instrument over the speeds: root mean square, share within U95, mean U95. */
  private record Score(double rms, double within, double u95) {}

  /**
   * A class: scores of the sound pairs alone, together, and together without the faulty one (the
   * same where none is), and what was said of each pair.
   */
  private record Scored(
      long seed,
      Fault fault,
      List<Score> alone,
      List<Score> together,
      List<Score> without,
      List<String> out) {
    double ratio() {
      return rms(together) / rms(alone);
    }
  }

  @Test
  void sixLessonsTogetherAreBetterThanAlone() throws IOException {
    int classes = Integer.getInteger("accuracy.classes", 20);
    List<Scored> scored = new ArrayList<>();
    long first = Long.getLong("accuracy.seed", FIRST_SEED);
    for (long seed = first; seed < first + classes; seed++) {
      scored.add(scored(seed));
    }
    if (Boolean.getBoolean("accuracy.write")) {
      write(scored);
    }
    assertThat(median(scored.stream().mapToDouble(Scored::ratio).toArray())).isLessThan(0.8);
    assertThat(within(scored, true)).isGreaterThan(0.93);
  }

  private static Scored scored(long seed) {
    Fault fault = Fault.inTurn(seed);
    List<VirtualBuild> pairs = VirtualClass.pairs(seed, PAIRS);
    pairs.set(FAULTY, fault.in(pairs.get(FAULTY)));
    List<FitResult> alone = new ArrayList<>();
    for (int i = 0; i < PAIRS; i++) {
      RunSet set =
          VirtualRehearsal.calibration(pairs.get(i), VirtualClass.lesson(i), seed * 10 + i)
              .runSet();
      alone.add(
          FitToRuns.fit(i == FAULTY ? fault.in(set) : set, () -> false)
              .fold(
                  (fit, notes) -> fit,
                  problems -> {
                    throw new IllegalStateException(problems.toString());
                  }));
    }
    List<Member> together = ClassFit.of(alone, () -> false).members();
    List<String> out = new ArrayList<>();
    together.forEach(member -> out.add(member.standsOut().map(o -> o.word()).orElse("–")));
    if (fault == Fault.NONE) {
      List<Score> all = scores(fits(together), pairs, seed);
      return new Scored(seed, fault, scores(alone, pairs, seed), all, all, out);
    }
    List<FitResult> sound = without(alone);
    List<VirtualBuild> builds = without(pairs);
    return new Scored(
        seed,
        fault,
        scores(sound, builds, seed),
        scores(without(fits(together)), builds, seed),
        scores(fits(ClassFit.of(sound, () -> false).members()), builds, seed),
        out);
  }

  private static List<FitResult> fits(List<Member> members) {
    return members.stream().map(Member::fit).toList();
  }

  private static <T> List<T> without(List<T> all) {
    List<T> sound = new ArrayList<>(all);
    sound.remove(FAULTY);
    return sound;
  }

  private static List<Score> scores(List<FitResult> fits, List<VirtualBuild> builds, long seed) {
    List<Score> scores = new ArrayList<>();
    for (int i = 0; i < fits.size(); i++) {
      scores.add(score(fits.get(i), builds.get(i), seed));
    }
    return scores;
  }

  private static Score score(FitResult fit, VirtualBuild build, long seed) {
    Recording log =
        VirtualRehearsal.warmFieldLog(
                build.noiseless(),
                HOLD_S * SPEEDS_M_S.length - 1,
                t -> SPEEDS_M_S[(int) Math.min(SPEEDS_M_S.length - 1, t / HOLD_S)],
                seed)
            .recording();
    FormulaFit fitted = fit.formulaFit();
    Formula formula = fit.formula();
    AirState room = build.room().air();
    double squares = 0;
    double within = 0;
    double u95 = 0;
    for (int hold = 0; hold < SPEEDS_M_S.length; hold++) {
      int at = log.signal().indexAtOrAfter((hold + 0.85) * HOLD_S);
      double air_K = log.air_K().orElseThrow().at(log.signal().time_s(at));
      AirPoint air = AirPoint.of(new AirState(air_K, room.pressure_Pa(), room.relativeHumidity()));
      double error = read(formula, log, at, air) / SPEEDS_M_S[hold] - 1;
      double[] gradient =
          formula.steadySpeedGradient(SPEEDS_M_S[hold], fit.signal().supply_V(), air);
      double u = 2 * Math.sqrt(fitted.covariance().variance(gradient)) / SPEEDS_M_S[hold];
      squares += error * error;
      within += Math.abs(error) <= u ? 1 : 0;
      u95 += u;
    }
    int n = SPEEDS_M_S.length;
    return new Score(Math.sqrt(squares / n), within / n, u95 / n);
  }

  private static double read(Formula formula, Recording log, int at, AirPoint air) {
    double before = formula.delta_K(log.signal().value(at - SLOPE_ROWS), air.air_K());
    double now = formula.delta_K(log.signal().value(at), air.air_K());
    double after = formula.delta_K(log.signal().value(at + SLOPE_ROWS), air.air_K());
    double rate =
        (after - before)
            / (log.signal().time_s(at + SLOPE_ROWS) - log.signal().time_s(at - SLOPE_ROWS));
    double volts = log.supply_V().orElseThrow().at(log.signal().time_s(at));
    double heating = formula.heating_K_s(OptionalDouble.of(volts));
    return formula.speed_m_s((heating - rate) / now, now, air);
  }

  private static double rms(List<Score> scores) {
    return Math.sqrt(scores.stream().mapToDouble(s -> s.rms() * s.rms()).average().orElseThrow());
  }

  private static double within(List<Scored> classes, boolean together) {
    return classes.stream()
        .flatMap(c -> (together ? c.together() : c.alone()).stream())
        .mapToDouble(Score::within)
        .average()
        .orElseThrow();
  }

  private static double median(double... values) {
    return new Median().evaluate(values);
  }

  private static String line(Scored c) {
    return String.format(
        Locale.ROOT,
        "| %d | %s | %.2f %% | %.2f %% | %.2f | %s | %s |",
        c.seed(),
        c.fault().said(),
        100 * rms(c.alone()),
        100 * rms(c.together()),
        c.ratio(),
        c.fault() == Fault.NONE
            ? "–"
            : String.format(Locale.ROOT, "%.2f %%", 100 * rms(c.without())),
        String.join(", ", c.out()));
  }

  private static void write(List<Scored> classes) throws IOException {
    StringBuilder table = new StringBuilder(BEGIN);
    table.append(
        String.format(
            Locale.ROOT,
            "\n%d classes (seeds from %d). Median over the classes: error alone %.2f %%, together"
                + " %.2f %%, their ratio %.3f (wanted: 0.6). Within U95 alone %.3f, together %.3f; mean U95 alone"
                + " %.1f %%, together %.1f %%.\n\n"
                + "| class | fault of pair 4 | alone | together | ratio | without pair 4 | stands out by, pair 1 to 6"
                + " |\n| --- | --- | --- | --- | --- | --- | --- |\n",
            classes.size(),
            classes.get(0).seed(),
            100 * median(classes.stream().mapToDouble(c -> rms(c.alone())).toArray()),
            100 * median(classes.stream().mapToDouble(c -> rms(c.together())).toArray()),
            median(classes.stream().mapToDouble(Scored::ratio).toArray()),
            within(classes, false),
            within(classes, true),
            100 * u95(classes, false),
            100 * u95(classes, true)));
    classes.forEach(c -> table.append(line(c)).append('\n'));
    String page = Files.readString(PAGE);
    Files.writeString(
        PAGE, page.substring(0, page.indexOf(BEGIN)) + table + page.substring(page.indexOf(END)));
  }

  private static double u95(List<Scored> classes, boolean together) {
    return classes.stream()
        .flatMap(c -> (together ? c.together() : c.alone()).stream())
        .mapToDouble(Score::u95)
        .average()
        .orElseThrow();
  }
}
