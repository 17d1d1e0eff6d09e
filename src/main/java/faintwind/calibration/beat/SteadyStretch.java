package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.DRIFTS;
import static faintwind.calibration.beat.OwnChoices.LEAST_STEADY;
import static faintwind.calibration.beat.OwnChoices.LEAST_STEADY_SHARE;
import static faintwind.calibration.beat.OwnChoices.MOST_BRIDGED;
import static faintwind.calibration.beat.OwnChoices.OFF_PACE;
import static faintwind.calibration.beat.OwnChoices.OFF_PACE_SPREADS;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The longest stretch of marks in which the arm keeps its pace, a slow drift allowed. Run-up,
 * coasting and what comes before and after are left out: slow turns there would pass for missed
 * marks. Pace and drift are medians, so that less than a quarter of other turns does not move them
 * (after Theil, 1950; the halves in place of all pairs are our own choice).
 */
final class SteadyStretch {
  private final double[] off;
  private final double level_s;
  private final double spread_s;

  private SteadyStretch(List<TurnMark> marks) {
    double[] gaps = new double[marks.size() - 1];
    Arrays.setAll(gaps, i -> gap_s(marks, i) / steps(marks, i));
    int half = gaps.length / 2;
    double[] slopes =
        IntStream.range(0, half)
            .mapToDouble(
                i ->
                    (gaps[i + half] - gaps[i])
                        / (marks.get(i + half).number() - marks.get(i).number()))
            .toArray();
    double slope = new Median().evaluate(slopes);
    double[] straight = new double[gaps.length];
    Arrays.setAll(straight, i -> gaps[i] - slope * marks.get(i).number());
    double middle_s = new Median().evaluate(straight);
    off = Arrays.stream(straight).map(s -> s - middle_s).toArray();
    level_s = new Median().evaluate(gaps);
    spread_s = 1.48 * new Median().evaluate(Arrays.stream(off).map(Math::abs).toArray());
  }

  /**
   * The first and the last that belong to it, by their places in the list.
   *
   * @param marks those not doubled, numbered, in order of time
   * @return empty where no stretch is long enough; all of them where they are too few to tell
   */
  static Optional<int[]> of(List<TurnMark> marks) {
    if (marks.size() < LEAST_STEADY + 3) {
      return Optional.of(new int[] {0, marks.size() - 1});
    }
    int from = 0;
    int to = marks.size();
    int length = 0;
    while (to - from != length && to - from >= LEAST_STEADY + 3) {
      // without the slow turns, pace and scatter are clearer: looked at again
      length = to - from;
      List<TurnMark> left = marks.subList(from, to);
      SteadyStretch stretch = new SteadyStretch(left);
      int[] found = stretch.trimmed(stretch.longest(left));
      to = from + found[1] + 1;
      from += found[0];
    }
    int[] settled = settled(marks, from, to);
    int left = settled[1] - settled[0];
    return left >= LEAST_STEADY && left >= LEAST_STEADY_SHARE * marks.size()
        ? Optional.of(new int[] {settled[0], settled[1] - 1})
        : Optional.empty();
  }

  /**
   * Takes a quarter off an end as long as the pace drifts and does so much less without it: a long
   * run-up bends, a hand that tires does not.
   */
  private static int[] settled(List<TurnMark> marks, int from, int to) {
    int[] range = {from, to};
    while (range[1] - range[0] >= 4 * LEAST_STEADY) {
      double drift = drift(marks, range[0], range[1]);
      int quarter = (range[1] - range[0]) / 4;
      double later = drift(marks, range[0] + quarter, range[1]);
      double sooner = drift(marks, range[0], range[1] - quarter);
      if (drift < DRIFTS || Math.min(later, sooner) > drift / 2) {
        return range;
      }
      range[later <= sooner ? 0 : 1] += later <= sooner ? quarter : -quarter;
    }
    return range;
  }

  private static double drift(List<TurnMark> marks, int from, int to) {
    return Math.abs(Steadiness.of(marks.subList(from, to), 1).drift());
  }

  private static double gap_s(List<TurnMark> marks, int i) {
    return marks.get(i + 1).time_s() - marks.get(i).time_s();
  }

  private static int steps(List<TurnMark> marks, int i) {
    return marks.get(i + 1).number() - marks.get(i).number();
  }

  private double limit_s() {
    return Math.max(OFF_PACE_SPREADS * spread_s, OFF_PACE * level_s);
  }

  /** First and last mark of the longest run of gaps at pace; one odd gap does not end a run. */
  private int[] longest(List<TurnMark> marks) {
    int[] best = {0, 0};
    int from = 0;
    for (int i = 0; i <= off.length; i++) {
      if (i == off.length || !atPace(i) || unsure(steps(marks, i))) {
        if (i - from > best[1] - best[0]) {
          best = new int[] {from, i};
        }
        from = i + 1;
      }
    }
    return best;
  }

  private boolean atPace(int i) {
    double[] near = Arrays.copyOfRange(off, Math.max(0, i - 1), Math.min(off.length, i + 2));
    return Math.abs(new Median().evaluate(near)) <= limit_s();
  }

  /** Whether so many steps in a row without a mark may have been one more or less. */
  private boolean unsure(int steps) {
    return steps > MOST_BRIDGED || 3 * spread_s * Math.sqrt(steps) > level_s / 2;
  }

  /** Takes marks off both ends as long as the gaps there are off the pace together. */
  private int[] trimmed(int[] run) {
    int from = run[0];
    int to = run[1];
    while (to - from >= LEAST_STEADY && offPace(from, to, 1)) {
      from++;
    }
    while (to - from >= LEAST_STEADY && offPace(to - 1, from - 1, -1)) {
      to--;
    }
    return new int[] {from, to};
  }

  private boolean offPace(int first, int end, int way) {
    double sum = 0;
    int most = Math.min(8, Math.abs(end - first) / 2);
    for (int count = 1; count <= most; count++) {
      sum += off[first + way * (count - 1)];
      double usual = OFF_PACE_SPREADS * spread_s / Math.sqrt(count);
      if (Math.abs(sum / count) > Math.max(usual, OFF_PACE * level_s)) {
        return true;
      }
    }
    return false;
  }
}
