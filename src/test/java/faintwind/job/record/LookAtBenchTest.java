package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.bench.QuietRecord;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LookAtBenchTest {
  private static final Map<String, Double> VALUES =
      new Situation(
              InstrumentState.EMPTY,
              List.of(new Situation.DatedSheet(SampleBuild.BEGIN, SampleBuild.sheet())),
              SampleBuild.LATER)
          .sheetValues();

  @TempDir Path folder;

  private Path record(String column, double noise, DoubleUnaryOperator f) throws IOException {
    SplittableRandom random = new SplittableRandom(7);
    StringBuilder text = new StringBuilder("time_s," + column + "\n");
    for (int i = 0; i <= 7 * 320; i++) {
      double t = i / 7.0;
      double value = f.applyAsDouble(t) + noise * random.nextGaussian();
      text.append(String.format(Locale.ROOT, "%.4f,%.9g%n", t, value));
    }
    return Files.writeString(folder.resolve("bench.csv"), text);
  }

  private static Reading reading(String id) {
    return ShippedChecklist.standard().stepOfReading(id).orElseThrow().reading(id).orElseThrow();
  }

  private static LookAtBench.Looked looked(Path file, String reading) throws IOException {
    Checked<LookAtBench.Looked> looked = new LookAtBench(VALUES).look(file, reading(reading));
    assertThat(looked.isOk()).as(looked.problems().toString()).isTrue();
    return ((Checked.Ok<LookAtBench.Looked>) looked).value();
  }

  private static double value(LookAtBench.Looked looked, String unit) {
    return SampleBuild.amount(looked.typed(), unit).value();
  }

  @Test
  void theZeroIsReadAtTheLogger() throws IOException {
    Path file = record("signal_mV", 0.002, t -> -0.004);
    assertThat(value(looked(file, "zero-signal"), "mV")).isCloseTo(-0.004, within(3e-4));
  }

  @Test
  void noiseIsReadAtTheThermocoupleWithTheGainOfTheChain() throws IOException {
    Files.writeString(folder.resolve("chain.json"), "{\"gain\": 100, \"sign\": -1}");
    Path file = record("signal_mV", 0.2, t -> Math.sin(2 * Math.PI * 50 * t));
    LookAtBench.Looked looked = looked(file, "noise");
    assertThat(value(looked, "µV")).isCloseTo(1e3 * Math.sqrt(0.5 + 0.04) / 100, within(0.3));
    QuietRecord quiet = looked.quiet().orElseThrow();
    assertThat(quiet.pickUp().orElseThrow().mains_Hz()).hasValue(50);
    assertThat(quiet.pickUp().orElseThrow().amplitude()).isCloseTo(10, within(1.5));
  }

  @Test
  void theRiseHasTheSignOfTheChain() throws IOException {
    Path file = record("signal_uV", 1, t -> -2.8 * Math.max(0, t - 60));
    assertThat(value(looked(file, "sense-change"), "mV")).isCloseTo(-0.336, within(0.03));
    Files.writeString(folder.resolve("chain.json"), "{\"sign\": -1}");
    assertThat(value(looked(file, "sense-change"), "mV")).isCloseTo(0.336, within(0.03));
  }

  @Test
  void kelvinAreTurnedIntoMicrovoltsByTheDesign() throws IOException {
    Path file = record("delta_K", 0.01, t -> t > 100 && t < 130 ? 28 : 30);
    assertThat(value(looked(file, "breath-drop"), "mV")).isCloseTo(2 * 0.041, within(0.003));
  }

  @Test
  void theLevelInTheJarIsReadInKelvinOnceItHasSettled() throws IOException {
    double perKelvin = Objects.requireNonNull(VALUES.get("sensitivity_uV_K"));
    Path settled = record("signal_uV", 0.5, t -> 29 * perKelvin);
    assertThat(value(looked(settled, "jar-delta"), "K")).isCloseTo(29, within(0.05));
    Path kelvin = record("delta_K", 0.01, t -> 29);
    assertThat(value(looked(kelvin, "jar-delta"), "K")).isCloseTo(29, within(0.05));

    Path rising = record("delta_K", 0.01, t -> 29 * (1 - Math.exp(-(t + 900) / 540)));
    Checked<LookAtBench.Looked> refused =
        new LookAtBench(VALUES).look(rising, reading("jar-delta"));
    assertThat(refused.problems()).extracting(Problem::id).containsExactly("bench.not-settled");
    Checked<LookAtBench.Looked> noDesign =
        new LookAtBench(Map.of()).look(record("signal_uV", 0.5, t -> 1200), reading("jar-delta"));
    assertThat(noDesign.problems())
        .extracting(Problem::id)
        .containsExactly("bench.level-without-design");
  }

  @Test
  void countsAndFilesThatAreNoneAreRefused() throws IOException {
    Path counts = record("signal_counts", 1, t -> 400);
    Checked<LookAtBench.Looked> refused =
        new LookAtBench(VALUES).look(counts, reading("zero-signal"));
    assertThat(refused.problems()).extracting(Problem::id).containsExactly("bench.unit");
    Checked<LookAtBench.Looked> missing =
        new LookAtBench(VALUES).look(folder.resolve("none.csv"), reading("zero-signal"));
    assertThat(missing.isOk()).isFalse();
    Checked<LookAtBench.Looked> kelvin =
        new LookAtBench(Map.of()).look(record("delta_K", 0.01, t -> 0), reading("zero-signal"));
    assertThat(kelvin.problems()).extracting(Problem::id).containsExactly("bench.unit");
  }
}
