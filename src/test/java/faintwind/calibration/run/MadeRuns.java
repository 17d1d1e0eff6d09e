package faintwind.calibration.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Rows of a runs table written by hand: a signal as a function of time, in kelvin. */
public final class MadeRuns {
  /** Radius of the arm in every spin made here, m. */
  public static final double RADIUS_M = 0.4;

  private MadeRuns() {}

  /** A quantity every so many seconds, both ends included. */
  public static Series series(
      double from_s, double step_s, double to_s, DoubleUnaryOperator value) {
    int rows = 1 + (int) Math.round((to_s - from_s) / step_s);
    double[] time_s = IntStream.range(0, rows).mapToDouble(i -> from_s + i * step_s).toArray();
    double[] values =
        IntStream.range(0, rows).mapToDouble(i -> value.applyAsDouble(time_s[i])).toArray();
    return Series.of(time_s, values);
  }

  /** At rest, heater on. */
  public static Run still(String name, Series signal) {
    return run(name, RunKind.STILL, Recording.of(SignalUnit.DELTA_K, signal), Optional.empty());
  }

  /** Heater off. */
  public static Run zero(String name, Series signal) {
    return run(name, RunKind.ZERO, Recording.of(SignalUnit.DELTA_K, signal), Optional.empty());
  }

  /** Turned. */
  public static Run spin(String name, Series signal, ArmTurning arm) {
    return run(name, RunKind.SPIN, Recording.of(SignalUnit.DELTA_K, signal), Optional.of(arm));
  }

  /** Any kind but a reference. */
  public static Run run(String name, RunKind kind, Recording recording, Optional<ArmTurning> arm) {
    return new Run(name, kind, name + ".csv", recording, RunConditions.NONE, arm, Optional.empty());
  }

  /** Turning from start to stop, so many turns in so long. */
  public static ArmTurning arm(double start_s, double stop_s, double turns, double turns_s) {
    return new ArmTurning(
        Uncertain.of(RADIUS_M), turns, Uncertain.of(turns_s), start_s, stop_s, Optional.empty());
  }

  /** With a room of this temperature. */
  public static Run in(Run run, double air_K) {
    RunConditions room =
        new RunConditions(
            OptionalDouble.of(air_K),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            "");
    return new Run(
        run.name(), run.kind(), run.file(), run.recording(), room, run.arm(), run.reference_m_s());
  }

  /** Of nothing known beside the runs. */
  public static RunSet set(Run... runs) {
    return new RunSet(List.of(runs), SignalChain.AS_IS, Optional.empty());
  }
}
