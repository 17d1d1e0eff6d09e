package faintwind.calibration.fit.health;

import faintwind.calibration.fit.track.Spikes;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

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
   * The largest sudden change of a cold ball, up or down, beyond what half a minute later goes on
   * to rise; or a recording that begins well above the zero run and rises no faster than a cold
   * ball does.
   */
  private static Optional<Jump> jump(Run run, double zero, double sign, double largest) {
    Series whole = run.recording().signal();
    if (whole.size() < OwnChoices.LEAST_ROWS
        || whole.last_s() - whole.first_s() < OwnChoices.LEAK_LEAST_S) {
      return Optional.empty();
    }
    if (sign * (whole.value(0) - zero) > OwnChoices.COLD * largest) {
      return Optional.empty();
    }
    double least = OwnChoices.LEAST_LEAK * largest;
    Series signal =
        withoutSpikes(
            whole.window(whole.first_s(), whole.first_s() + OwnChoices.LEAK_LOOK_S), least / 4);
    Jump found = largestOf(signal, zero, sign);
    double first = sign * (signal.value(0) - zero);
    if (beginsWithIt(signal, first, sign, least)
        && !heatedBefore(run)
        && Math.abs(found.size()) < Math.abs(first)) {
      return Optional.of(new Jump(signal.first_s(), first));
    }
    return Math.abs(found.size()) > least ? Optional.of(found) : Optional.empty();
  }

  /** The largest sudden change beyond what half a minute later goes on to rise; or one of none. */
  private static Jump largestOf(Series signal, double zero, double sign) {
    double last_s = signal.first_s() + OwnChoices.LEAK_BEGINS_S;
    Jump most = new Jump(0, 0);
    for (int i = 0; i < signal.size() && signal.time_s(i) < last_s; i++) {
      double t = signal.time_s(i);
      double then = t + OwnChoices.LEAK_RISE_S;
      double rise = sign * (signal.at(t + OwnChoices.SUDDEN_S) - signal.value(i));
      double later = sign * (signal.at(then + OwnChoices.SUDDEN_S) - signal.at(then));
      double size = rise - later;
      if (stays(signal, i, zero, sign * size) && Math.abs(size) > Math.abs(most.size())) {
        most = new Jump(t + 2 * OwnChoices.SUDDEN_S, size);
      }
    }
    return most;
  }

  /** A knock or a lost bit looks like a jump from the row that is off to the next. */
  private static Series withoutSpikes(Series signal, double least) {
    List<Integer> spikes = Spikes.in(signal, Spikes.noise(signal));
    int[] kept =
        IntStream.range(0, signal.size())
            .filter(i -> !spikes.contains(i) && !sticksOut(signal, i, least))
            .toArray();
    return Series.of(
        Arrays.stream(kept).mapToDouble(signal::time_s).toArray(),
        Arrays.stream(kept).mapToDouble(signal::value).toArray());
  }

  /** Whether a row is off to one side of both its neighbours, however fast the ball warms. */
  private static boolean sticksOut(Series signal, int row, double least) {
    if (row == 0 || row == signal.size() - 1) {
      return false;
    }
    double up = signal.value(row) - signal.value(row - 1);
    double down = signal.value(row) - signal.value(row + 1);
    double lesser = Math.min(Math.abs(up), Math.abs(down));
    return up * down > 0
        && lesser > least
        && lesser > OwnChoices.LEAK_MOST * Math.max(Math.abs(up), Math.abs(down));
  }

  /** Whether the first row is off the zero, and what comes after it goes on from there. */
  private static boolean beginsWithIt(Series signal, double first, double sign, double least) {
    double after = sign * (signal.at(signal.first_s() + OwnChoices.LEAK_RISE_S) - signal.value(0));
    return Math.abs(first) > least
        && Math.abs(first) > OwnChoices.LEAK_OF_RISE * Math.abs(after)
        && first * (first + after) > OwnChoices.LEAK_MOST * first * first;
  }

  /** Whether the supply was on at the first row: then the ball may have begun to warm before. */
  private static boolean heatedBefore(Run run) {
    return run.recording()
        .supply_V()
        .filter(volts -> !volts.isEmpty())
        .map(volts -> volts.value(0) > OwnChoices.LEAK_MOST * volts.value(volts.size() - 1))
        .orElse(false);
  }

  /**
   * Whether the signal is elsewhere after a jump than before it: a spike goes back at once. The
   * first two rows, too few for a look at their neighbours, are held against the zero.
   */
  private static boolean stays(Series signal, int row, double zero, double jump) {
    double before = row < 2 ? zero : signal.value(row - 2);
    double at = signal.value(row);
    double after = after(signal, row, 2);
    double later = after(signal, row, 3);
    double least = OwnChoices.LEAK_MOST * jump * jump;
    return jump * (after - at) > least
        && jump * (after - before) > least
        && jump * (later - at) > OwnChoices.LEAK_KEEPS * jump * jump;
  }

  /** So many sudden changes later, and so many rows at least. */
  private static double after(Series signal, int row, int times) {
    double rows_s = signal.time_s(Math.min(row + times, signal.size() - 1));
    return signal.at(Math.max(signal.time_s(row) + times * OwnChoices.SUDDEN_S, rows_s));
  }

  private static double largest(RunSet set) {
    return SignalCheck.largest(set);
  }
}
