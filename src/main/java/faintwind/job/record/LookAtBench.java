package faintwind.job.record;

import faintwind.calibration.bench.BreathDrop;
import faintwind.calibration.bench.HeaterOn;
import faintwind.calibration.bench.QuietRecord;
import faintwind.calibration.bench.SettledLevel;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalUnit;
import faintwind.files.run.ChainFile;
import faintwind.files.run.RunFile;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Recorded;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.sheet.JarSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a recording made on the bench and works out what a step asks for: zero, noise, the rise
 * after switching on, the fall after a breath, the level at rest. A {@code chain.json} beside the
 * file says gain and sign; without one the gain is that of the design.
 */
public final class LookAtBench {
  private static final double MICRO = 1e-6;
  private static final int DIGITS = 4;

  private final Map<String, Double> values;

  /**
   * Prepares a look.
   *
   * @param values quantities of the design sheet by name; empty where there is no design
   */
  public LookAtBench(Map<String, Double> values) {
    this.values = Map.copyOf(values);
  }

  /**
   * What was found.
   *
   * @param typed the value for the reading in its unit, as a person would type it
   * @param quiet zero and noise in µV, at the logger for a zero, otherwise at the thermocouple
   * @param at_s when it was switched on or breathed on, s on the record's clock
   */
  public record Looked(String typed, Optional<QuietRecord> quiet, OptionalDouble at_s) {}

  /**
   * Looks for what a reading is in a file.
   *
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public Checked<Looked> look(Path file, Reading reading) throws IOException {
    if (reading.recorded().isEmpty()) {
      throw new IllegalArgumentException("reading = " + reading.id() + ", allowed: a recorded one");
    }
    String name = String.valueOf(file.getFileName());
    Path chainFile = file.resolveSibling(ChainFile.NAME);
    Checked<SignalChain> chain =
        Files.isRegularFile(chainFile)
            ? ChainFile.read(chainFile, ChainFile.NAME)
            : Checked.ok(SignalChain.AS_IS);
    if (!(chain instanceof Checked.Ok<SignalChain> known)) {
      return Checked.refused(chain.problems());
    }
    Recorded kind = reading.recorded().get();
    return RunFile.read(file, name, known.value().input())
        .then(
            recording ->
                microvolts(recording, known.value(), kind, Where.file(name))
                    .then(signal -> find(signal, kind, reading)));
  }

  private Checked<Looked> find(Series microvolts, Recorded kind, Reading reading) {
    String unit = reading.unit();
    return switch (kind) {
      case ZERO -> QuietRecord.of(microvolts).map(q -> quiet(q, q.mean(), unit));
      case SCATTER -> QuietRecord.of(microvolts).map(q -> quiet(q, q.scatter(), unit));
      case RISE -> HeaterOn.in(microvolts).map(h -> moment(h.change(), unit, h.on_s()));
      case DROP -> BreathDrop.in(microvolts).map(b -> moment(b.drop(), unit, b.from_s()));
      case LEVEL -> level(microvolts);
    };
  }

  /** The level at rest in kelvin, by the design's sensitivity and time to settle. */
  private Checked<Looked> level(Series microvolts) {
    Double perKelvin = values.get("sensitivity_uV_K");
    Double settled_min = values.get("jar_min");
    if (perKelvin == null || settled_min == null) {
      return Checked.refused(Problem.error("bench.level-without-design", Where.NOWHERE, ""));
    }
    double constant_s = settled_min * 60 / JarSheet.SETTLED;
    return SettledLevel.in(microvolts, constant_s)
        .map(
            level ->
                new Looked(
                    Numerals.exactDigits(level.mean() / perKelvin, DIGITS),
                    Optional.empty(),
                    OptionalDouble.empty()));
  }

  private static Looked quiet(QuietRecord record, double microvolts, String unit) {
    return new Looked(typed(microvolts, unit), Optional.of(record), OptionalDouble.empty());
  }

  private static Looked moment(double microvolts, String unit, double at_s) {
    return new Looked(typed(microvolts, unit), Optional.empty(), OptionalDouble.of(at_s));
  }

  private static String typed(double microvolts, String unit) {
    double value = NumberText.convert(microvolts, "µV", unit);
    return Numerals.exactDigits(value, DIGITS);
  }

  /** The signal in µV: at the logger for a zero, otherwise at the thermocouple with its sign. */
  private Checked<Series> microvolts(
      Recording recording, SignalChain chain, Recorded kind, Where where) {
    OptionalDouble gain = chain.gain().isPresent() ? chain.gain() : designGain();
    boolean atLogger = kind == Recorded.ZERO;
    double perVolt = atLogger ? 1 : chain.sign() / gain.orElse(1);
    Optional<Double> volts =
        switch (recording.unit()) {
          case SIGNAL_V -> Optional.of(1.0);
          case SIGNAL_MV -> Optional.of(1e-3);
          case SIGNAL_UV -> Optional.of(MICRO);
          case DELTA_K ->
              Optional.ofNullable(values.get("sensitivity_uV_K"))
                  .map(
                      s -> s * MICRO * (atLogger ? gain.orElse(1) : gain.orElse(1) * chain.sign()));
          case SIGNAL_COUNTS -> Optional.empty();
        };
    if (volts.isEmpty()) {
      return Checked.refused(
          Problem.error("bench.unit", where.atColumn(recording.unit().column()), "", columns()));
    }
    double factor = volts.get() * perVolt / MICRO;
    double[] scaled = recording.signal().values();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return Checked.ok(Series.of(recording.signal().times_s(), scaled));
  }

  private static String columns() {
    return SignalUnit.SIGNAL_V.column()
        + ", "
        + SignalUnit.SIGNAL_MV.column()
        + ", "
        + SignalUnit.SIGNAL_UV.column();
  }

  /** Signal of the logger over that of the thermocouple, both in still air. */
  private OptionalDouble designGain() {
    Double signal_mV = values.get("signal_still_mV");
    Double delta_K = values.get("still_delta_K");
    Double sensitivity = values.get("sensitivity_uV_K");
    return signal_mV == null || delta_K == null || sensitivity == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(1e3 * signal_mV / (delta_K * sensitivity));
  }
}
