package faintwind.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.accuracy.ClassDraw.Score;
import faintwind.calibration.fit.pooling.ClassFit;
import faintwind.calibration.fit.pooling.ClassMember;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.virtual.VirtualClass.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
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
  private static final long FIRST_SEED = 103_000;
  private static final String SOUND = "–";
  private static final int FAULTY = 3;

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
    long soundNamed() {
      long named = out.stream().filter(word -> !word.equals(SOUND)).count();
      return named - (fault == Fault.NONE || out.get(FAULTY).equals(SOUND) ? 0 : 1);
    }

    boolean faultMissed() {
      return fault != Fault.NONE && out.get(FAULTY).equals(SOUND);
    }

    double ratio() {
      return Score.rms(together) / Score.rms(alone);
    }
  }

  @Test
  void sixLessonsTogetherAreBetterThanAlone() throws IOException {
    int classes = Integer.getInteger("accuracy.classes", 20);
    long first = Long.getLong("accuracy.seed", FIRST_SEED);
    List<Scored> scored =
        LongStream.range(first, first + classes)
            .parallel()
            .mapToObj(PoolStudyTest::scored)
            .toList();
    if (Boolean.getBoolean("accuracy.write")) {
      write(scored);
    }
    // 0.6 is wanted and not reached: docs/accuracy.md
    assertThat(median(scored.stream().mapToDouble(Scored::ratio).toArray())).isLessThan(0.85);
    assertThat(within(scored, true)).isGreaterThan(0.93);
    assertThat(scored.stream().filter(Scored::faultMissed).count()).isLessThanOrEqualTo(1);
    // one of more than a hundred, by chance
    assertThat(scored.stream().mapToLong(Scored::soundNamed).sum()).isLessThanOrEqualTo(1);
  }

  private static Scored scored(long seed) {
    ClassDraw drawn = ClassDraw.of(seed);
    List<ClassMember<FitResult>> together = ClassFit.of(drawn.alone(), () -> false).members();
    List<String> out = new ArrayList<>();
    together.forEach(member -> out.add(member.standsOut().map(o -> o.word()).orElse(SOUND)));
    List<Score> all = drawn.scores(fits(together));
    List<Score> without =
        drawn.fault() == Fault.NONE
            ? all
            : drawn.soundScores(
                fits(ClassFit.of(drawn.sound(drawn.alone()), () -> false).members()));
    return new Scored(seed, drawn.fault(), drawn.scores(drawn.alone()), all, without, out);
  }

  private static List<FitResult> fits(List<ClassMember<FitResult>> members) {
    return members.stream().map(ClassMember::fit).toList();
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
        100 * Score.rms(c.alone()),
        100 * Score.rms(c.together()),
        c.ratio(),
        c.fault() == Fault.NONE
            ? "–"
            : String.format(Locale.ROOT, "%.2f %%", 100 * Score.rms(c.without())),
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
            100 * median(classes.stream().mapToDouble(c -> Score.rms(c.alone())).toArray()),
            100 * median(classes.stream().mapToDouble(c -> Score.rms(c.together())).toArray()),
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
