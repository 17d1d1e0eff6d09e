package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.DOUBLED;
import static faintwind.calibration.beat.OwnChoices.FEW_SET_ASIDE;
import static faintwind.calibration.beat.OwnChoices.MOST_MISSED_SHARE;

import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Turn times from marks: taps on a key or clicks in a recording, a known number a turn. Only marks
 * of the {@link SteadyStretch} count. A mark missed or doubled is shown, and counted as if it had
 * been right; a person corrects by taking marks out or putting some in ({@link #without}, {@link
 * #with}), after which all is worked out anew.
 */
public final class BeatTimes {
  private static final int LEAST = 3;

  private final double[] times_s;
  private final Set<Double> setAside_s;
  private final int marksPerTurn;
  private final double resolution_s;
  private final double usual_s;
  private final List<TurnMark> marks;

  private BeatTimes(
      double[] times_s, Set<Double> setAside_s, int marksPerTurn, double resolution_s) {
    this.times_s = times_s;
    this.setAside_s = setAside_s;
    this.marksPerTurn = marksPerTurn;
    this.resolution_s = resolution_s;
    this.usual_s = usualGap(Arrays.stream(times_s).filter(t -> !setAside_s.contains(t)).toArray());
    this.marks = List.copyOf(steady(counted()));
  }

  /**
   * Marks in any order.
   *
   * @param marksPerTurn how many marks a whole turn has, from 1
   * @return refused with all that is wrong: fewer than three marks or not one whole turn, a time
   *     that is not finite, no stretch in which the arm keeps its pace, too many marks missing
   */
  public static Checked<BeatTimes> of(List<Double> times_s, int marksPerTurn) {
    return of(times_s, Set.of(), marksPerTurn, 0);
  }

  /**
   * The same of clicks that were heard, with sounds that do not keep the beat: shown as doubled
   * where they are few.
   *
   * @param setAside_s when those came, s
   */
  public static Checked<BeatTimes> heard(
      List<Double> times_s, Set<Double> setAside_s, int marksPerTurn) {
    return of(times_s, setAside_s, marksPerTurn, EnergyBins.BIN_S);
  }

  private static Checked<BeatTimes> of(
      List<Double> times_s, Set<Double> setAside_s, int marksPerTurn, double resolution_s) {
    if (marksPerTurn < 1) {
      return Checked.refused(
          Problem.error("beat.per-turn", Where.NOWHERE, String.valueOf(marksPerTurn)));
    }
    if (!times_s.stream().allMatch(Double::isFinite)) {
      return Checked.refused(Problem.error("beat.not-finite", Where.NOWHERE, ""));
    }
    Set<Double> shown =
        setAside_s.size() <= FEW_SET_ASIDE * times_s.size() ? Set.copyOf(setAside_s) : Set.of();
    double[] sorted =
        DoubleStream.concat(
                times_s.stream().mapToDouble(t -> t), shown.stream().mapToDouble(t -> t))
            .sorted()
            .distinct()
            .toArray();
    if (sorted.length - shown.size() < LEAST) {
      return Checked.refused(
          Problem.error("beat.too-few", Where.NOWHERE, String.valueOf(times_s.size())));
    }
    return new BeatTimes(sorted, shown, marksPerTurn, resolution_s).checked();
  }

  private Checked<BeatTimes> checked() {
    List<TurnMark> sure = sure();
    if (sure.isEmpty()) {
      return Checked.refused(Problem.error("beat.not-steady", Where.NOWHERE, ""));
    }
    int steps = lastNumber();
    if (missed() > MOST_MISSED_SHARE * (steps + 1)) {
      return Checked.refused(
          Problem.error(
              "beat.too-many-missed",
              Where.NOWHERE,
              String.valueOf(missed()),
              String.valueOf(steps + 1)));
    }
    return steps < marksPerTurn
        ? Checked.refused(
            Problem.error(
                "beat.no-whole-turn",
                Where.NOWHERE,
                String.valueOf(steps),
                String.valueOf(marksPerTurn)))
        : Checked.ok(this, doubts());
  }

  /** Every mark with what it was taken for, in order of time. */
  public List<TurnMark> marks() {
    return marks;
  }

  /** How many marks are missing. */
  public int missed() {
    return lastNumber() + 1 - sure().size();
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
    return again(left);
  }

  /** The same with a mark more. */
  public Checked<BeatTimes> with(double time_s) {
    List<Double> more = new ArrayList<>(Arrays.stream(times_s).boxed().toList());
    more.add(time_s);
    return again(more);
  }

  private Checked<BeatTimes> again(List<Double> all) {
    Set<Double> aside = new HashSet<>(setAside_s);
    aside.retainAll(all);
    List<Double> beat = all.stream().filter(t -> !aside.contains(t)).toList();
    return of(beat, aside, marksPerTurn, resolution_s);
  }

  /** Those that count. */
  private List<TurnMark> sure() {
    return marks.stream()
        .filter(m -> m.kind() == TurnMark.Kind.COUNTED || m.kind() == TurnMark.Kind.AFTER_MISSED)
        .toList();
  }

  /** The turns between two counted marks, how long they took, how steadily they were turned. */
  public Turning turning() {
    List<TurnMark> sure = sure();
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
    // each of the two times is known to its resolution, evenly within it (JCGM 100:2008, 4.3.7)
    double u_s = Math.hypot(steady.u_s(lasted_s), resolution_s / Math.sqrt(6));
    return new Turning(turns, Uncertain.of(lasted_s, u_s), first.time_s(), last.time_s(), steady);
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
    List<TurnMark> sure = sure();
    return sure.get(sure.size() - 1).number();
  }

  private List<Problem> doubts() {
    List<Problem> doubts = new ArrayList<>(outside());
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

  private List<Problem> outside() {
    long count = marks.stream().filter(m -> m.kind() == TurnMark.Kind.OUTSIDE).count();
    List<TurnMark> sure = sure();
    return count == 0
        ? List.of()
        : List.of(
            Problem.warning(
                "beat.outside",
                Where.NOWHERE,
                String.valueOf(count),
                seconds(sure.get(0).time_s()),
                seconds(sure.get(sure.size() - 1).time_s())));
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
  private List<TurnMark> counted() {
    List<TurnMark> walked = new ArrayList<>();
    double gap_s = usual_s;
    double last_s = Double.NEGATIVE_INFINITY;
    int number = 0;
    for (double time_s : times_s) {
      double since_s = time_s - last_s;
      if (setAside_s.contains(time_s) || since_s < DOUBLED * gap_s) {
        walked.add(new TurnMark(time_s, number, TurnMark.Kind.DOUBLED));
      } else if (since_s == Double.POSITIVE_INFINITY) {
        last_s = time_s;
        walked.add(new TurnMark(time_s, number, TurnMark.Kind.COUNTED));
      } else {
        int steps = (int) Math.max(1, Math.round(since_s / gap_s));
        number += steps;
        gap_s += 0.2 * (since_s / steps - gap_s);
        last_s = time_s;
        walked.add(
            new TurnMark(
                time_s, number, steps > 1 ? TurnMark.Kind.AFTER_MISSED : TurnMark.Kind.COUNTED));
      }
    }
    return walked;
  }

  /** Numbers the marks of the steady stretch from 0 on; the others are outside. */
  private static List<TurnMark> steady(List<TurnMark> walked) {
    List<TurnMark> all = walked.stream().filter(m -> m.kind() != TurnMark.Kind.DOUBLED).toList();
    Optional<int[]> found = SteadyStretch.of(all);
    TurnMark first = all.get(found.map(f -> f[0]).orElse(all.size() - 1));
    TurnMark last = all.get(found.map(f -> f[1]).orElse(0));
    List<TurnMark> steady = new ArrayList<>();
    for (TurnMark mark : walked) {
      boolean in = mark.number() >= first.number() && mark.number() <= last.number();
      int number = Math.max(0, Math.min(mark.number(), last.number()) - first.number());
      TurnMark.Kind kind =
          mark.kind() == TurnMark.Kind.DOUBLED || in
              ? mark.equals(first) ? TurnMark.Kind.COUNTED : mark.kind()
              : TurnMark.Kind.OUTSIDE;
      steady.add(new TurnMark(mark.time_s(), number, kind));
    }
    return steady;
  }
}
