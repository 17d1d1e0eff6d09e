package faintwind.calibration.fit.health;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Whether the heater was on in each run, from its recording alone. At rest a heated ball rises to
 * its level or keeps it; one that falls at the ball's own rate has lost its heater.
 */
final class HeaterCheck {
  private HeaterCheck() {}

  static List<Problem> refusals(RunSet set, double zero, double largest) {
    List<Problem> found = new ArrayList<>();
    double sign = set.chain().sign();
    for (Run run : set.runs()) {
      if (run.kind() == RunKind.ZERO || run.recording().signal().isEmpty()) {
        continue;
      }
      Optional<Double> lost = lostAt_s(run, zero, sign, largest);
      if (lost.isPresent()) {
        found.add(Problem.error("fit.heater-lost", Where.run(run.name()), whole(lost.get())));
      } else if (run.arm().isPresent()
          && highest(run, zero, sign) < OwnChoices.NEVER_HEATED * largest) {
        found.add(
            Problem.error(
                "fit.heater-off",
                Where.run(run.name()),
                whole(100 * highest(run, zero, sign) / largest)));
      }
    }
    return found;
  }

  private static String whole(double value) {
    return String.valueOf(Math.round(value));
  }

  private static double highest(Run run, double zero, double sign) {
    double highest = 0;
    for (double value : run.recording().signal().values()) {
      highest = Math.max(highest, sign * (value - zero));
    }
    return highest;
  }

  /** Where a fall at rest begins that only a lost heater explains. */
  private static Optional<Double> lostAt_s(Run run, double zero, double sign, double largest) {
    Series signal = run.recording().signal();
    if (run.kind() == RunKind.REFERENCE) {
      return Optional.empty();
    }
    if (run.arm().isEmpty()) {
      return fall(signal, signal.first_s(), signal.last_s(), new Level(zero, sign, largest));
    }
    Level level = new Level(zero, sign, largest);
    double start = run.arm().get().spinStart_s();
    double stop = run.arm().get().spinStop_s();
    return fall(signal, signal.first_s(), start - 5, level)
        .or(() -> fall(signal, stop + OwnChoices.AFTER_STOP_S, signal.last_s(), level));
  }

  /** From signal to a level that is positive where the ball is warm. */
  private record Level(double zero, double sign, double largest) {
    double of(Series signal, double from_s, double to_s) {
      Series part = signal.window(from_s, to_s);
      double[] values = part.isEmpty() ? new double[] {signal.at(from_s)} : part.values();
      return sign * (new Median().evaluate(values) - zero);
    }
  }

  private static Optional<Double> fall(Series signal, double from_s, double to_s, Level level) {
    double from = Math.max(from_s, signal.first_s());
    double to = Math.min(to_s, signal.last_s());
    for (double t = from; t + 2 * OwnChoices.FALL_SPAN_S <= to; t += OwnChoices.FALL_SPAN_S / 2) {
      double first = level.of(signal, t, t + 10);
      double last =
          level.of(signal, t + 2 * OwnChoices.FALL_SPAN_S - 10, t + 2 * OwnChoices.FALL_SPAN_S);
      double middle =
          level.of(signal, t + OwnChoices.FALL_SPAN_S - 5, t + OwnChoices.FALL_SPAN_S + 5);
      double rate = (first - last) / (2 * OwnChoices.FALL_SPAN_S - 10) / Math.max(first, 1e-12);
      boolean steady = middle < first && last < middle;
      if (first > 0.05 * level.largest()
          && steady
          && rate > OwnChoices.FALLS_1_S
          && falls(signal, t, to, level)) {
        return Optional.of(t);
      }
    }
    return Optional.empty();
  }

  /** Until its end the recording does not come back: a wet ball does, when it is dry. */
  private static boolean falls(Series signal, double from_s, double to_s, Level level) {
    double first = level.of(signal, from_s, from_s + 10);
    double last = level.of(signal, Math.max(from_s, to_s - 20), to_s);
    double least = first;
    for (double t = from_s; t + 20 <= signal.last_s(); t += 20) {
      least = Math.min(least, level.of(signal, t, t + 20));
    }
    double end = level.of(signal, signal.last_s() - 20, signal.last_s());
    return last < (1 - OwnChoices.FALL) * first && end < least + OwnChoices.BACK * first;
  }
}
