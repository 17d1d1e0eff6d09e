package faintwind.calibration.fit.health;

import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Heater current that gets into the signal: it jumps the moment the heater comes on, while the ball
 * is still cold. With the heater on it is an offset of every run alike, so that a zero run, made
 * with the heater off, no longer shows the offset of the others.
 */
public final class Leak {
  private Leak() {}

  /** Size of the jump over the largest signal, where a run shows one. */
  public static OptionalDouble in(Run run, RunSet set) {
    if (run.kind() == RunKind.ZERO) {
      return OptionalDouble.empty();
    }
    double largest = largest(set);
    return jump(run, SignalCheck.zero(set), set.chain().sign(), largest)
        .map(jump -> OptionalDouble.of(jump.size() / largest))
        .orElse(OptionalDouble.empty());
  }

  /**
   * The runs without what a leak falsifies: no zero runs, and recordings that begin cold from the
   * jump on. The same runs where there is no leak.
   */
  public static RunSet freed(RunSet set) {
    boolean leaks = set.runs().stream().anyMatch(run -> in(run, set).isPresent());
    if (!leaks) {
      return set;
    }
    List<Run> runs = new ArrayList<>();
    for (Run run : set.runs()) {
      if (run.kind() != RunKind.ZERO) {
        runs.add(afterJump(run, set));
      }
    }
    return set.with(runs);
  }

  private static Run afterJump(Run run, RunSet set) {
    Optional<Jump> jump = jump(run, SignalCheck.zero(set), set.chain().sign(), largest(set));
    if (jump.isEmpty()) {
      return run;
    }
    Recording recording = run.recording();
    return new Run(
        run.name(),
        run.kind(),
        run.file(),
        recording.window(jump.get().after_s(), recording.signal().last_s()),
        run.conditions(),
        run.arm(),
        run.reference_m_s());
  }

  private record Jump(double after_s, double size) {}

  /**
   * The largest sudden change of a cold ball, up or down, beyond what the minute after it goes on
   * to rise; or a recording that begins well above the zero run and rises no faster than a cold
   * ball does.
   */
  private static Optional<Jump> jump(Run run, double zero, double sign, double largest) {
    Series signal = run.recording().signal();
    if (signal.size() < 12 || signal.last_s() - signal.first_s() < 600) {
      return Optional.empty();
    }
    if (sign * (signal.value(0) - zero) > OwnChoices.COLD * largest) {
      return Optional.empty();
    }
    double most = 0;
    double at = 0;
    for (int i = 0; i < signal.size() && signal.time_s(i) < signal.first_s() + 120; i++) {
      double t = signal.time_s(i);
      double rise = sign * (signal.at(t + OwnChoices.SUDDEN_S) - signal.value(i));
      double later = sign * (signal.at(t + 30 + OwnChoices.SUDDEN_S) - signal.at(t + 30));
      boolean stays = stays(signal, t, sign * (rise - later));
      if (stays && Math.abs(rise - later) > Math.abs(most)) {
        most = rise - later;
        at = t + 2 * OwnChoices.SUDDEN_S;
      }
    }
    double begins = sign * (signal.value(0) - zero);
    double after = sign * (signal.at(signal.first_s() + 30) - signal.value(0));
    boolean begun =
        Math.abs(begins) > OwnChoices.LEAST_LEAK * largest
            && Math.abs(begins) > 0.3 * Math.abs(after);
    if (begun && !heatedBefore(run) && Math.abs(most) < Math.abs(begins)) {
      return Optional.of(new Jump(signal.first_s(), begins));
    }
    return Math.abs(most) > OwnChoices.LEAST_LEAK * largest
        ? Optional.of(new Jump(at, most))
        : Optional.empty();
  }

  /** Whether the supply was on at the first row: then the ball may have begun to warm before. */
  private static boolean heatedBefore(Run run) {
    return run.recording()
        .supply_V()
        .filter(volts -> !volts.isEmpty())
        .map(volts -> volts.value(0) > 0.5 * volts.value(volts.size() - 1))
        .orElse(false);
  }

  /** A spike goes back at once, a leak does not. */
  private static boolean stays(Series signal, double t_s, double jump) {
    double before = signal.at(t_s);
    double after = signal.at(t_s + 2 * OwnChoices.SUDDEN_S) - before;
    double later = signal.at(t_s + 3 * OwnChoices.SUDDEN_S) - before;
    return jump * after > 0.5 * jump * jump && jump * later > 0.3 * jump * jump;
  }

  private static double largest(RunSet set) {
    return SignalCheck.largest(set);
  }
}
