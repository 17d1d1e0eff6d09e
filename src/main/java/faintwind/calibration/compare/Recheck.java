package faintwind.calibration.compare;

import faintwind.calibration.ArmShown;
import faintwind.calibration.Calibration;
import faintwind.calibration.EnScore;
import faintwind.calibration.Parameter;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A short check of a calibration at one or two speeds: what it reads from a run of the arm against
 * what the arm says, each with its uncertainty. A warm ball and five minutes a speed are enough:
 * the reading is the mean over the last half of the spin.
 */
public final class Recheck {
  private static final double COVERAGE = 2;

  private Recheck() {}

  /**
   * One run.
   *
   * @param run its name
   * @param speed_m_s air speed by the arm
   * @param u95_m_s its expanded uncertainty
   * @param read_m_s what the calibration reads
   * @param u95_read_m_s its expanded uncertainty
   * @param en the difference over both
   */
  public record AtRun(
      String run,
      double speed_m_s,
      double u95_m_s,
      double read_m_s,
      double u95_read_m_s,
      EnScore en) {}

  /** Every run in which the air moved; others are passed over. */
  public static List<AtRun> of(Calibration calibration, List<Run> runs) {
    List<AtRun> all = new ArrayList<>();
    for (Run run : runs) {
      stated(calibration, run).flatMap(speed -> at(calibration, run, speed)).ifPresent(all::add);
    }
    return all;
  }

  /** Speed of undisturbed air past the ball, as arm or reference say. */
  private static Optional<Uncertain> stated(Calibration calibration, Run run) {
    if (run.arm().isEmpty()) {
      return run.reference_m_s();
    }
    ArmTurning arm = run.arm().get();
    Uncertain turned = ArmSpeed.of(arm);
    Uncertain carried =
        arm.swirlShare()
            .or(() -> calibration.coverage().arm().map(ArmShown::carriedShare).map(Recheck::of))
            .orElse(OwnChoices.CARRIED);
    double air = turned.value() * (1 - carried.value());
    double u =
        Math.hypot(
            turned.u().orElse(0) * (1 - carried.value()), turned.value() * carried.u().orElse(0));
    return Optional.of(Uncertain.of(air, u));
  }

  private static Uncertain of(Parameter shown) {
    return Uncertain.of(shown.value(), shown.u());
  }

  private static Optional<AtRun> at(Calibration calibration, Run run, Uncertain speed) {
    Series signal = run.recording().signal();
    if (signal.size() < 2) {
      return Optional.empty();
    }
    double last = signal.time_s(signal.size() - 1);
    double from = run.arm().map(ArmTurning::spinStart_s).orElse(signal.time_s(0));
    double to = Math.min(last, run.arm().map(ArmTurning::spinStop_s).orElse(last));
    List<SpeedRow> rows = rows(calibration, run.recording());
    double sum = 0;
    double u95 = 0;
    int count = 0;
    for (int i = 0; i < rows.size(); i++) {
      double time = signal.time_s(i);
      boolean counts = time >= from + OwnChoices.READ_SHARE * (to - from) && time <= to;
      if (counts && rows.get(i).speed_m_s().isPresent()) {
        sum += rows.get(i).speed_m_s().getAsDouble();
        u95 += rows.get(i).u95_m_s().getAsDouble();
        count++;
      }
    }
    if (count == 0) {
      return Optional.empty();
    }
    double stated95 = COVERAGE * speed.u().orElse(0);
    return Optional.of(
        new AtRun(
            run.name(),
            speed.value(),
            stated95,
            sum / count,
            u95 / count,
            EnScore.of(sum / count, u95 / count, speed.value(), stated95)));
  }

  private static List<SpeedRow> rows(Calibration calibration, Recording recording) {
    SpeedEstimator estimator =
        SpeedEstimator.smoothing(calibration, SpeedSettings.usual(calibration));
    List<SpeedRow> rows = new ArrayList<>();
    Series signal = recording.signal();
    for (int i = 0; i < signal.size(); i++) {
      double time = signal.time_s(i);
      LogAir air =
          new LogAir(
              at(recording.air_K(), time),
              at(recording.pressure_Pa(), time),
              at(recording.relativeHumidity(), time));
      estimator.accept(
          new LogSample(
              OptionalDouble.of(time),
              OptionalDouble.of(signal.value(i)),
              air,
              at(recording.supply_V(), time)),
          rows::add);
    }
    estimator.finish(rows::add);
    return rows;
  }

  private static OptionalDouble at(Optional<Series> series, double time_s) {
    return series
        .filter(s -> !s.isEmpty())
        .map(s -> OptionalDouble.of(s.at(time_s)))
        .orElseGet(OptionalDouble::empty);
  }
}
