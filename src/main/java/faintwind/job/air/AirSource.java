package faintwind.job.air;

import faintwind.calibration.Calibration;
import faintwind.calibration.field.SharedPart;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.speed.UsualAverage;
import faintwind.calibration.survey.Settling;
import faintwind.files.air.SpeedsFile;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the figures are made from: a converted log and, where it is at hand, the calibration it was
 * converted by, which tells the shared part of the uncertainty from the rest.
 *
 * @param speeds the log; empty where every speed was typed
 * @param calibration what it was converted by
 * @param average_s averaging time of the rows
 */
public record AirSource(
    Optional<SpeedsFile> speeds, Optional<Calibration> calibration, double average_s) {
  /** What counts where neither a person nor a calibration says it, s. */
  static final double USUAL_S = 30;

  /** Every speed is typed. */
  public static final AirSource TYPED = new AirSource(Optional.empty(), Optional.empty(), USUAL_S);

  /**
   * Opens what is named.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<AirSource> open(
      Optional<Path> speeds, Optional<Path> calibration, Optional<Double> average_s)
      throws IOException {
    List<Problem> problems = new ArrayList<>();
    Optional<SpeedsFile> log = Optional.empty();
    if (speeds.isPresent()) {
      Checked<SpeedsFile> read = SpeedsFile.read(speeds.get());
      problems.addAll(read.problems());
      log = read.fold((value, notes) -> Optional.of(value), refused -> Optional.empty());
    }
    Optional<Calibration> by = Optional.empty();
    if (calibration.isPresent()) {
      Checked<Calibration> read = OpenCalibration.read(calibration.get());
      problems.addAll(read.problems());
      by = read.fold((value, notes) -> Optional.of(value), refused -> Optional.empty());
    }
    return problems.stream().anyMatch(Problem::isError)
        ? Checked.refused(problems)
        : Checked.ok(new AirSource(log, by, average_s.orElse(average_s(by))), problems);
  }

  /** Averaging time that suits a calibration, or the usual one where there is none. */
  public static double average_s(Optional<Calibration> by) {
    return by.map(UsualAverage::of).orElse(USUAL_S);
  }

  /** Blocks of twice the averaging time are as good as independent. */
  public StretchMean.How how(StretchMean.Of of) {
    SharedPart parts = calibration.map(SharedPart::of).orElseGet(SharedPart::unknown);
    return new StretchMean.How(Math.max(2 * average_s, 2), parts, of);
  }

  /** How long to wait at a new place, where a person or the calibration says it. */
  public Optional<Settling> settling(Optional<Double> typed_s) {
    return typed_s
        .map(Settling::typed)
        .or(
            () ->
                calibration
                    .map(Settling::of)
                    .map(s -> new Settling(s.stillTime_s(), s.movingTime_s(), average_s)));
  }
}
