package faintwind.calibration.fit.health;

import faintwind.calibration.fit.track.Spikes;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/** What the recordings themselves show before any fit: sign, ceiling, clock, heat. */
public final class SignalCheck {
  private SignalCheck() {}

  /** Every reason against a fit, all at once. */
  public static List<Problem> refusals(RunSet set) {
    List<Problem> found = new ArrayList<>();
    double zero = zero(set);
    double sign = set.chain().sign();
    double most = extreme(set, zero, sign);
    double least = extreme(set, zero, -sign);
    if (least > 3 * Math.max(most, 0) && least > 0) {
      found.add(Problem.error("fit.sign-reversed", Where.NOWHERE, text(-sign * least)));
      return found;
    }
    double noise = noise(set);
    if (most < 20 * noise) {
      found.add(Problem.error("fit.not-heated", Where.NOWHERE, text(most), text(noise)));
      return found;
    }
    reversed(set, zero, sign, most, found);
    if (!found.isEmpty()) {
      return found;
    }
    ceiling(set, zero, sign, most, found);
    fall(set, zero, sign, most, found);
    found.addAll(HeaterCheck.refusals(set, zero, most));
    return found;
  }

  /** Single runs whose sign is the other way round. */
  private static void reversed(
      RunSet set, double zero, double sign, double most, List<Problem> found) {
    for (Run run : set.runs()) {
      if (run.kind() == RunKind.ZERO || run.recording().signal().isEmpty()) {
        continue;
      }
      double up = extreme(run, zero, sign);
      double down = extreme(run, zero, -sign);
      if (down > 3 * Math.max(up, 0) && down > OwnChoices.REVERSED * most) {
        found.add(
            Problem.error("fit.run-sign-reversed", Where.run(run.name()), text(-sign * down)));
      }
    }
  }

  /** Spins whose time on the file's clock cannot be that of the counted turns. */
  static List<Problem> clocks(RunSet set) {
    List<Problem> found = new ArrayList<>();
    List<Run> spins = set.runs().stream().filter(r -> r.arm().isPresent()).toList();
    for (Run run : spins) {
      double ratio = ratio(run, run);
      Optional<Run> other = exchangedWith(run, spins);
      if (other.isPresent()) {
        found.add(clock("fit.turns-exchanged", run, other.get().name()));
      } else if (ratio < OwnChoices.CLOCK_LOW || ratio > OwnChoices.CLOCK_HIGH) {
        found.add(clock(clockId(ratio), run, ""));
      }
    }
    return found;
  }

  private static Problem clock(String id, Run run, String other) {
    ArmTurning arm = run.arm().orElseThrow();
    return Problem.error(
        id,
        Where.run(run.name()),
        text(arm.spinStop_s() - arm.spinStart_s()),
        text(arm.turnsTime_s().value()),
        other);
  }

  /** Time of a spin on the file's clock over the time of the turns counted in another run. */
  private static double ratio(Run spin, Run counted) {
    ArmTurning arm = spin.arm().orElseThrow();
    double lasted_s = arm.spinStop_s() - arm.spinStart_s();
    return lasted_s / counted.arm().orElseThrow().turnsTime_s().value();
  }

  /**
   * The run with which this one changed its counted turns: one of the two cannot be as written, and
   * exchanged both agree closely.
   */
  private static Optional<Run> exchangedWith(Run run, List<Run> spins) {
    return spins.stream()
        .filter(other -> !other.name().equals(run.name()))
        .filter(other -> Math.min(ratio(run, run), ratio(other, other)) < OwnChoices.CLOCK_LOW)
        .filter(other -> agrees(ratio(run, other)) && agrees(ratio(other, run)))
        .filter(other -> !agrees(ratio(run, run)) && !agrees(ratio(other, other)))
        .findFirst();
  }

  private static boolean agrees(double ratio) {
    return ratio > 0.98 && ratio < 1.2;
  }

  private static String clockId(double ratio) {
    if (ratio > 1 / 90.0 && ratio < 1 / 45.0) {
      return "fit.clock-in-minutes";
    }
    return ratio > 500 && ratio < 2000 ? "fit.clock-in-ms" : "fit.clock-differs";
  }

  static double zero(RunSet set) {
    return set.runs().stream()
        .filter(r -> r.kind() == RunKind.ZERO && !r.recording().signal().isEmpty())
        .mapToDouble(r -> new Median().evaluate(r.recording().signal().values()))
        .average()
        .orElse(set.chain().offset().orElse(0));
  }

  /** The largest signal that a hundredth of the rows reach, zero taken off. */
  static double largest(RunSet set) {
    return Math.max(1e-12, extreme(set, zero(set), set.chain().sign()));
  }

  private static double noise(RunSet set) {
    return set.runs().stream()
        .filter(r -> r.kind() != RunKind.ZERO)
        .mapToDouble(r -> Spikes.noise(r.recording().signal()))
        .average()
        .orElse(0);
  }

  private static double extreme(Run run, double zero, double sign) {
    double[] values =
        Arrays.stream(run.recording().signal().values())
            .map(v -> sign * (v - zero))
            .sorted()
            .toArray();
    return values[(int) (0.95 * (values.length - 1))];
  }

  /** The largest signal in one direction that a hundredth of the rows reach. */
  private static double extreme(RunSet set, double zero, double sign) {
    double[] values =
        set.runs().stream()
            .filter(r -> r.kind() != RunKind.ZERO)
            .flatMapToDouble(r -> Arrays.stream(r.recording().signal().values()))
            .map(v -> sign * (v - zero))
            .sorted()
            .toArray();
    return values[(int) (0.99 * (values.length - 1))];
  }

  /**
   * A saturated channel: the signal runs into its largest value at full slope and stays exactly
   * there. A signal that comes to rest by itself slows down first.
   */
  private static void ceiling(
      RunSet set, double zero, double sign, double most, List<Problem> found) {
    for (Run run : set.runs()) {
      if (run.kind() == RunKind.ZERO) {
        continue;
      }
      Series signal = run.recording().signal();
      double[] values = signal.values();
      double top = Arrays.stream(values).map(v -> sign * v).max().orElse(0);
      int at = 0;
      while (at < values.length && sign * values[at] < top) {
        at++;
      }
      int end = at;
      while (end < values.length && sign * values[end] == top) {
        end++;
      }
      boolean stays = end - at >= 8 && signal.time_s(end - 1) - signal.time_s(at) >= 60;
      if (stays && top - sign * zero > 0.2 * most) {
        double before = sign * signal.at(signal.time_s(at) - 60);
        if (signal.time_s(at) - signal.first_s() > 60
            && top - before > 0.03 * (top - sign * zero)) {
          found.add(Problem.error("fit.saturated", Where.run(run.name()), text(sign * top)));
        }
      }
    }
  }

  /**
   * Moving air must cool: the signal at the end of a fast spin lies below that before it. After a
   * short rest the ball is still cool and may grow warmer in a slower spin, which is not judged.
   */
  private static void fall(RunSet set, double zero, double sign, double most, List<Problem> found) {
    int rising = 0;
    int judged = 0;
    for (Run run : set.runs()) {
      if (run.arm().isEmpty()) {
        continue;
      }
      ArmTurning arm = run.arm().get();
      Series signal = run.recording().signal();
      double before = sign * (signal.at(arm.spinStart_s()) - zero);
      double after = sign * (signal.at(arm.spinStop_s()) - zero);
      boolean rested = before > OwnChoices.RESTED * most;
      if (signal.first_s() <= arm.spinStart_s() && arm.speed_m_s() > 0.15 && rested) {
        judged++;
        rising += after > before * (1 - OwnChoices.LEAST_FALL) ? 1 : 0;
      }
    }
    if (judged >= 2 && rising > judged / 2) {
      found.add(
          Problem.error(
              "fit.no-cooling", Where.NOWHERE, String.valueOf(rising), String.valueOf(judged)));
    }
  }

  /** A number with three digits, as messages carry it. */
  public static String text(double value) {
    return String.format(Locale.ROOT, "%.3g", value);
  }
}
