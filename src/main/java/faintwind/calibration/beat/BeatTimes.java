package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.DOUBLED;

import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Turn times from marks: taps on a key or clicks in a recording, a known number a turn. A mark
 * missed or doubled is shown, and counted as if it had been right; a person corrects by taking
 * marks out or putting some in ({@link #without}, {@link #with}), after which all is worked out
 * anew.
 */
public final class BeatTimes {
  private static final int LEAST = 3;

  private final double[] times_s;
  private final int marksPerTurn;
  private final double usual_s;
  private final List<TurnMark> marks;

  private BeatTimes(double[] times_s, int marksPerTurn) {
    this.times_s = times_s;
    this.marksPerTurn = marksPerTurn;
    this.usual_s = usualGap(times_s);
    this.marks = List.copyOf(counted(times_s, usual_s));
  }

  /**
   * Marks in any order.
   *
   * @param marksPerTurn how many marks a whole turn has, from 1
   * @return refused with all that is wrong: fewer than three marks or not one whole turn, a time
   *     that is not finite
   */
  public static Checked<BeatTimes> of(List<Double> times_s, int marksPerTurn) {
    if (marksPerTurn < 1) {
      return Checked.refused(
          Problem.error("beat.per-turn", Where.NOWHERE, String.valueOf(marksPerTurn)));
    }
    if (!times_s.stream().allMatch(Double::isFinite)) {
      return Checked.refused(Problem.error("beat.not-finite", Where.NOWHERE, ""));
    }
    double[] sorted = times_s.stream().mapToDouble(t -> t).sorted().distinct().toArray();
    if (sorted.length < LEAST) {
      return Checked.refused(
          Problem.error("beat.too-few", Where.NOWHERE, String.valueOf(sorted.length)));
    }
    BeatTimes found = new BeatTimes(sorted, marksPerTurn);
    return found.lastNumber() < marksPerTurn
        ? Checked.refused(
            Problem.error(
                "beat.no-whole-turn",
                Where.NOWHERE,
                String.valueOf(found.lastNumber()),
                String.valueOf(marksPerTurn)))
        : Checked.ok(found, found.doubts());
  }

  /** Every mark with what it was taken for, in order of time. */
  public List<TurnMark> marks() {
    return marks;
  }

  /** How many marks are missing. */
  public int missed() {
    int counted = (int) marks.stream().filter(m -> m.kind() != TurnMark.Kind.DOUBLED).count();
    return lastNumber() + 1 - counted;
  }

  /** How many marks were doubled. */
  public int doubled() {
    return (int) marks.stream().filter(m -> m.kind() == TurnMark.Kind.DOUBLED).count();
  }

  /** The same without the mark nearest to a time. */
  public Checked<BeatTimes> without(double time_s) {
    List<Double> left = new ArrayList<>(Arrays.stream(times_s).boxed().toList());
    left.stream()
        .min((a, b) -> Double.compare(Math.abs(a - time_s), Math.abs(b - time_s)))
        .ifPresent(left::remove);
    return of(left, marksPerTurn);
  }

  /** The same with a mark more. */
  public Checked<BeatTimes> with(double time_s) {
    List<Double> more = new ArrayList<>(Arrays.stream(times_s).boxed().toList());
    more.add(time_s);
    return of(more, marksPerTurn);
  }

  /** The turns between two counted marks, how long they took, how steadily they were turned. */
  public Turning turning() {
    List<TurnMark> sure = marks.stream().filter(m -> m.kind() != TurnMark.Kind.DOUBLED).toList();
    TurnMark first = sure.get(0);
    TurnMark last = first;
    int turns = 0;
    for (int i = 0; i < sure.size(); i++) {
      for (int j = sure.size() - 1; j > i; j--) {
        int between = sure.get(j).number() - sure.get(i).number();
        if (between / marksPerTurn <= turns) {
          break;
        }
        if (between % marksPerTurn == 0) {
          first = sure.get(i);
          last = sure.get(j);
          turns = between / marksPerTurn;
        }
      }
      if ((lastNumber() - sure.get(i).number()) / marksPerTurn <= turns) {
        break;
      }
    }
    Steadiness steady = Steadiness.of(sure, marksPerTurn);
    double lasted_s = last.time_s() - first.time_s();
    return new Turning(
        turns, Uncertain.of(lasted_s, steady.u_s(lasted_s)), first.time_s(), last.time_s(), steady);
  }

  /**
   * What the marks come to.
   *
   * @param turns whole turns from the first counted mark to the last, 0 where no two marks are
   *     whole turns apart
   * @param time_s between those two marks, with its standard uncertainty
   * @param first_s time of the first
   * @param last_s time of the last
   * @param steadiness how steadily the arm was turned
   */
  public record Turning(
      int turns, Uncertain time_s, double first_s, double last_s, Steadiness steadiness) {}

  private int lastNumber() {
    return marks.get(marks.size() - 1).number();
  }

  private List<Problem> doubts() {
    List<Problem> doubts = new ArrayList<>();
    for (int i = 1; i < marks.size(); i++) {
      TurnMark mark = marks.get(i);
      if (mark.kind() == TurnMark.Kind.AFTER_MISSED) {
        double gap_s = mark.time_s() - times_s[i - 1];
        doubts.add(
            Problem.warning(
                "beat.missed",
                Where.NOWHERE,
                seconds(times_s[i - 1]),
                seconds(mark.time_s()),
                String.valueOf(Math.max(1, Math.round(gap_s / usual_s) - 1))));
      } else if (mark.kind() == TurnMark.Kind.DOUBLED) {
        doubts.add(Problem.warning("beat.doubled", Where.NOWHERE, seconds(mark.time_s())));
      }
    }
    return doubts;
  }

  private static String seconds(double time_s) {
    return Numerals.places(time_s, 2);
  }

  /** Median gap; gaps of doubled marks are small and few, of missed ones large and few. */
  private static double usualGap(double[] times_s) {
    double[] gaps = new double[times_s.length - 1];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = times_s[i + 1] - times_s[i];
    }
    double middle = new Median().evaluate(gaps);
    return new Median().evaluate(Arrays.stream(gaps).filter(g -> g > DOUBLED * middle).toArray());
  }

  /** Walks from mark to mark; the usual gap follows a slow change of pace. */
  private static List<TurnMark> counted(double[] times_s, double usual_s) {
    List<TurnMark> marks = new ArrayList<>();
    double gap_s = usual_s;
    double last_s = times_s[0];
    int number = 0;
    marks.add(new TurnMark(last_s, 0, TurnMark.Kind.COUNTED));
    for (int i = 1; i < times_s.length; i++) {
      double since_s = times_s[i] - last_s;
      if (since_s < DOUBLED * gap_s) {
        marks.add(new TurnMark(times_s[i], number, TurnMark.Kind.DOUBLED));
        continue;
      }
      int steps = (int) Math.max(1, Math.round(since_s / gap_s));
      number += steps;
      gap_s += 0.2 * (since_s / steps - gap_s);
      last_s = times_s[i];
      marks.add(
          new TurnMark(
              last_s, number, steps > 1 ? TurnMark.Kind.AFTER_MISSED : TurnMark.Kind.COUNTED));
    }
    return marks;
  }
}
