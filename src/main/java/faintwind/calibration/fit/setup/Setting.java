package faintwind.calibration.fit.setup;

import faintwind.calibration.FormulaFit;
import faintwind.calibration.fit.track.FileRows;
import faintwind.calibration.fit.track.SignalScale;
import faintwind.calibration.fit.track.Spikes;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.KnownBefore;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * What holds for all runs together: files, signal unit and scale, thermocouple, reference air,
 * nominal supply, noise.
 *
 * @param files heated runs by file
 * @param zeros zero runs
 * @param signal unit, chain, letter, scale and nominal supply
 * @param referenceAir mean air of the runs
 * @param noise standard deviation of a single row, signal unit
 * @param largest largest signal
 * @param known what is known of build and arm
 */
public record Setting(
    List<FileRows> files,
    List<Run> zeros,
    SignalPath signal,
    AirState referenceAir,
    double noise,
    double largest,
    KnownBefore known) {

  /** Signal of the foretold chain: kelvin, as they are. */
  public static final SignalPath EXPECTED_SIGNAL =
      new SignalPath(
          SignalUnit.DELTA_K, SignalChain.AS_IS, Optional.empty(), 1, OptionalDouble.empty());

  public static Setting of(RunSet set) {
    Map<String, List<Run>> byFile = new LinkedHashMap<>();
    List<Run> zeros = new ArrayList<>();
    for (Run run : set.runs()) {
      if (run.recording().signal().isEmpty()) {
        continue;
      }
      if (run.kind() == RunKind.ZERO) {
        zeros.add(run);
      } else {
        byFile.computeIfAbsent(run.file(), f -> new ArrayList<>()).add(run);
      }
    }
    List<FileRows> files = new ArrayList<>();
    byFile.forEach((file, runs) -> files.add(FileRows.of(file, runs)));
    AirState air = meanAir(set.runs());
    double largest = largest(files, set.chain());
    SignalUnit unit = set.runs().get(0).recording().unit();
    Optional<String> letter = letter(set);
    double perKelvin =
        SignalScale.perKelvin(unit, set.chain(), letter, air.temperature_K(), largest);
    OptionalDouble supply = nominalSupply(files);
    return new Setting(
        List.copyOf(files),
        List.copyOf(zeros),
        new SignalPath(unit, set.chain(), letter, perKelvin, supply),
        air,
        noise(files, set.chain()),
        largest,
        set.known());
  }

  /** The setting of runs that are not made yet: differences in kelvin, room air. */
  public static Setting ahead(List<Run> runs, double noise_K, double still_K) {
    Map<String, List<Run>> byFile = new LinkedHashMap<>();
    List<Run> zeros = new ArrayList<>();
    for (Run run : runs) {
      if (run.kind() == RunKind.ZERO) {
        zeros.add(run);
      } else {
        byFile.computeIfAbsent(run.file(), f -> new ArrayList<>()).add(run);
      }
    }
    List<FileRows> files = new ArrayList<>();
    byFile.forEach((file, own) -> files.add(FileRows.of(file, own)));
    return new Setting(
        List.copyOf(files),
        List.copyOf(zeros),
        EXPECTED_SIGNAL,
        AirState.ROOM,
        noise_K,
        still_K,
        KnownBefore.NOTHING);
  }

  /** The same of an instrument of a class. */
  public Setting among(ClassKnown others) {
    return new Setting(files, zeros, signal, referenceAir, noise, largest, known.among(others));
  }

  public Optional<BuildFacts> build() {
    return known.build();
  }

  /** Diameter of the balls, m; empty where the build record does not name it. */
  public OptionalDouble ball_m() {
    return build()
        .flatMap(BuildFacts::diameter_m)
        .map(d -> OptionalDouble.of(d.value()))
        .orElseGet(OptionalDouble::empty);
  }

  /** The model of that id for this air and these balls. */
  public ResponseModel model(String id) {
    return ResponseModel.of(id, referenceAir, ball_m().orElse(FormulaFit.USUAL_BALL_M));
  }

  /** The runs with the heater on, file by file. */
  public List<Run> heated() {
    return files.stream().flatMap(file -> file.runs().stream()).toList();
  }

  /** The runs that a person left out. */
  public Set<String> leftOut() {
    return heated().stream().filter(Run::isLeftOut).map(Run::name).collect(Collectors.toSet());
  }

  private static Optional<String> letter(RunSet set) {
    return set.chain()
        .thermocouple()
        .or(
            () ->
                set.runs().stream()
                    .flatMap(r -> r.conditions().thermocouple().stream())
                    .findFirst());
  }

  private static AirState meanAir(List<Run> runs) {
    double temperature =
        mean(runs, r -> r.recording().air_K(), r -> r.conditions().air_K())
            .orElse(AirState.ROOM.temperature_K());
    double pressure =
        mean(runs, r -> r.recording().pressure_Pa(), r -> r.conditions().pressure_Pa())
            .orElse(AirState.ROOM.pressure_Pa());
    double humidity =
        mean(runs, r -> r.recording().relativeHumidity(), r -> r.conditions().relativeHumidity())
            .orElse(AirState.ROOM.relativeHumidity());
    return new AirState(temperature, pressure, humidity);
  }

  private static OptionalDouble mean(
      List<Run> runs, Function<Run, Optional<Series>> rows, Function<Run, OptionalDouble> table) {
    return runs.stream()
        .map(
            r ->
                rows.apply(r)
                    .filter(s -> !s.isEmpty())
                    .map(s -> OptionalDouble.of(s.mean()))
                    .orElseGet(() -> table.apply(r)))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .average();
  }

  private static double largest(List<FileRows> files, SignalChain chain) {
    double largest = 1e-9;
    for (FileRows file : files) {
      double[] values = file.signal().values();
      Arrays.sort(values);
      largest = Math.max(largest, chain.sign() * values[(int) (0.98 * (values.length - 1))]);
      largest = Math.max(largest, chain.sign() * values[(int) (0.02 * (values.length - 1))]);
    }
    return largest;
  }

  private static OptionalDouble nominalSupply(List<FileRows> files) {
    List<Double> volts = new ArrayList<>();
    for (FileRows file : files) {
      file.channel(r -> r.recording().supply_V())
          .ifPresent(s -> volts.add(new Median().evaluate(s.values())));
    }
    return volts.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            new Median().evaluate(volts.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  private static double noise(List<FileRows> files, SignalChain chain) {
    double sum = 0;
    for (FileRows file : files) {
      double noise = Spikes.noise(file.signal());
      sum += noise * noise / files.size();
    }
    double noise = Math.max(Math.sqrt(sum), chain.resolution().noise().orElse(0));
    return Math.max(noise, resolution(files) / Math.sqrt(12));
  }

  /** Smallest step between two different signals that follow one another. */
  private static double resolution(List<FileRows> files) {
    double least = Double.POSITIVE_INFINITY;
    for (FileRows file : files) {
      Series s = file.signal();
      for (int i = 1; i < s.size(); i++) {
        double step = Math.abs(s.value(i) - s.value(i - 1));
        if (step > 1e-9 * Math.abs(s.value(i))) {
          least = Math.min(least, step);
        }
      }
    }
    return Double.isFinite(least) ? least : 0;
  }
}
