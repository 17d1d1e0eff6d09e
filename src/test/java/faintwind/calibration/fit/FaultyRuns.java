package faintwind.calibration.fit;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.Uncertain;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Healthy sample runs made faulty in one way. */
public final class FaultyRuns {
  private FaultyRuns() {}

  public static RunSet each(RunSet set, UnaryOperator<Run> change) {
    return set.with(set.runs().stream().map(change).toList());
  }

  public static RunSet only(RunSet set, Predicate<Run> keep) {
    return set.with(set.runs().stream().filter(keep).toList());
  }

  public static UnaryOperator<Run> run(String name, UnaryOperator<Run> change) {
    return run -> run.name().equals(name) ? change.apply(run) : run;
  }

  /** Signal as a function of time and signal. */
  public static Run signal(Run run, DoubleBinaryOperator change) {
    Series old = run.recording().signal();
    double[] values = new double[old.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = change.applyAsDouble(old.time_s(i), old.value(i));
    }
    return with(run, Series.of(old.times_s(), values));
  }

  public static Run with(Run run, Series signal) {
    Recording old = run.recording();
    Recording changed =
        new Recording(
            old.unit(),
            signal,
            old.air_K(),
            old.pressure_Pa(),
            old.relativeHumidity(),
            old.supply_V(),
            old.start());
    return with(run, changed, run.arm());
  }

  public static Run with(Run run, Recording recording, Optional<ArmTurning> arm) {
    return new Run(
        run.name(), run.kind(), run.file(), recording, run.conditions(), arm, run.reference_m_s());
  }

  public static Run turned(Run run, double factor) {
    ArmTurning arm = run.arm().orElseThrow();
    ArmTurning wrong =
        new ArmTurning(
            arm.radius_m(),
            arm.turns() * factor,
            arm.turnsTime_s(),
            arm.spinStart_s(),
            arm.spinStop_s(),
            arm.swirlShare());
    return with(run, run.recording(), Optional.of(wrong));
  }

  public static Run swirl(Run run, double share, double u) {
    ArmTurning arm = run.arm().orElseThrow();
    ArmTurning stated =
        new ArmTurning(
            arm.radius_m(),
            arm.turns(),
            arm.turnsTime_s(),
            arm.spinStart_s(),
            arm.spinStop_s(),
            Optional.of(Uncertain.of(share, u)));
    return with(run, run.recording(), Optional.of(stated));
  }

  public static Run clock(Run run, double factor) {
    Series old = run.recording().signal();
    double[] times = old.times_s();
    for (int i = 0; i < times.length; i++) {
      times[i] *= factor;
    }
    Recording recording =
        new Recording(
            run.recording().unit(),
            Series.of(times, old.values()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Optional<ArmTurning> arm =
        run.arm()
            .map(
                a ->
                    new ArmTurning(
                        a.radius_m(),
                        a.turns(),
                        a.turnsTime_s(),
                        a.spinStart_s() * factor,
                        a.spinStop_s() * factor,
                        a.swirlShare()));
    return with(run, recording, arm);
  }

  public static Run exchanged(Run run, List<Run> runs, String first, String second) {
    String other = run.name().equals(first) ? second : run.name().equals(second) ? first : "";
    return runs.stream()
        .filter(r -> r.name().equals(other))
        .findFirst()
        .map(
            r ->
                turned(
                    run, r.arm().orElseThrow().speed_m_s() / run.arm().orElseThrow().speed_m_s()))
        .orElse(run);
  }

  /** The row of one run with the counted turns and their time of another. */
  public static Run turnsExchanged(Run run, List<Run> runs, String first, String second) {
    String other = run.name().equals(first) ? second : run.name().equals(second) ? first : "";
    return runs.stream()
        .filter(r -> r.name().equals(other))
        .findFirst()
        .map(
            r -> {
              ArmTurning arm = run.arm().orElseThrow();
              ArmTurning wrong =
                  new ArmTurning(
                      arm.radius_m(),
                      r.arm().orElseThrow().turns(),
                      r.arm().orElseThrow().turnsTime_s(),
                      arm.spinStart_s(),
                      arm.spinStop_s(),
                      arm.swirlShare());
              return with(run, run.recording(), Optional.of(wrong));
            })
        .orElse(run);
  }

  public static Run withoutSupply(Run run) {
    Recording old = run.recording();
    Recording bare =
        new Recording(
            old.unit(),
            old.signal(),
            old.air_K(),
            old.pressure_Pa(),
            old.relativeHumidity(),
            Optional.empty(),
            old.start());
    return with(run, bare, run.arm());
  }

  public static Run cut(Run run, double from_s, double to_s) {
    return with(run, run.recording().window(from_s, to_s), run.arm());
  }
}
