package faintwind.calibration.fit.solving;

import faintwind.calibration.fit.health.HeatCourse;
import faintwind.calibration.fit.health.LastingChange;
import faintwind.calibration.fit.health.OddRuns;
import faintwind.calibration.fit.health.RunHealth;
import faintwind.calibration.fit.health.SpinMarks;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.track.Turn;
import faintwind.calibration.run.Run;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which runs, or which speeds, the fit goes on without. */
public final class SetAside {
  private SetAside() {}

  /** Whether the speeds scatter so that a lasting change should be looked for. */
  public static boolean speedsScatter(FitResult fit) {
    return fit.runScatter() > OwnChoices.SCATTERED
        && turned(fit).size() >= OwnChoices.LEAST_FOR_PATTERN;
  }

  /** A lasting change between two runs. */
  public record Change(List<String> before, List<String> after, double size) {
    /** The side that is fewer; the later one where both are as many. */
    public List<String> fewer() {
      return after.size() <= before.size() ? after : before;
    }
  }

  /**
   * The heat that every run took, as a fit's formula reads it, in the order of the files and of the
   * runs in them.
   */
  public static List<RunHealth> health(FitResult fit) {
    HeatCourse course = new HeatCourse(fit.setting(), fit.formula(), fit.solution().wander());
    RunProblem written = fit.setup().problem();
    written.integrate(asWritten(fit));
    List<RunHealth> all = new ArrayList<>();
    for (int k = 0; k < written.tracks().size(); k++) {
      Track track = written.tracks().get(k);
      for (String run : track.runs) {
        all.add(new RunHealth(run, course.of(track, run, written.course(k).speed_m_s)));
      }
    }
    return all;
  }

  /**
   * Where a fit came to rest, but every turn by itself as it was written down, and every run in the
   * draught of all: what a run alone would need is held against the others.
   */
  private static double[] asWritten(FitResult fit) {
    double[] point = fit.solution().optimum().point().clone();
    double ofAll = fit.setup().draught().overUsual(fit.values());
    for (Track track : fit.problem().tracks()) {
      for (int column : track.draughtColumns) {
        point[column] = fit.setup().unknowns().get(column).x(ofAll);
      }
      for (Turn turn : track.turns) {
        Turn.Columns own = turn.columns();
        IntStream.of(own.speed(), own.start(), own.stop(), own.runUp(), own.runDown())
            .filter(column -> column >= 0)
            .forEach(column -> point[column] = 0);
      }
    }
    return point;
  }

  /** The runs that count, compared with one another. */
  public static OddRuns odd(FitResult fit, List<RunHealth> health) {
    List<RunHealth> counted = health.stream().filter(r -> !fit.aside().contains(r.run())).toList();
    return new OddRuns(counted);
  }

  /** The runs whose heat contradicts the others in this fit, those already set aside not told. */
  public static Set<String> recordings(FitResult fit) {
    Set<String> shifted =
        fit.setting().heated().stream()
            .filter(run -> !fit.aside().contains(run.name()))
            .filter(run -> shift_s(fit, run).isPresent())
            .map(Run::name)
            .collect(Collectors.toSet());
    if (!shifted.isEmpty()) {
      return shifted;
    }
    OddRuns odd = odd(fit, health(fit));
    return change(odd.resting(), odd.change())
        .map(change -> Set.copyOf(change.fewer()))
        .orElseGet(() -> odd.worst().map(Set::of).orElse(Set.of()));
  }

  /**
   * By how much a run's marks are early: its signal bends later, and the fit's delays say so too,
   * or it was so far from the fit that it counts for little.
   */
  public static OptionalDouble shift_s(FitResult fit, Run run) {
    OptionalDouble bends = SpinMarks.shift_s(run, fit.signal().chain().sign());
    boolean delayed =
        fit.aside().contains(run.name())
            || wild(fit).containsKey(run.name())
            || fit.problem().tracks().stream()
                .flatMap(track -> track.turns.stream())
                .filter(turn -> turn.run().equals(run.name()))
                .anyMatch(turn -> isDelayed(fit, turn));
    return delayed ? bends : OptionalDouble.empty();
  }

  /** Mean square of the whitened residuals of wild parts, by run. */
  public static Map<String, Double> wild(FitResult fit) {
    Map<String, Double> wild = new HashMap<>();
    for (Track track : fit.problem().tracks()) {
      for (int i = 0; i < track.rows.size(); i++) {
        if (track.rows.wildness[i] > 1) {
          wild.merge(track.runs.get(track.rows.run[i]), track.rows.wildness[i], Math::max);
        }
      }
    }
    return wild;
  }

  /** By the delays, or by a run-up or run-down that is longer than that of the other runs. */
  private static boolean isDelayed(FitResult fit, Turn turn) {
    Turn.Columns own = turn.columns();
    double up_s = value(fit, own.arm().runUp()) * (value(fit, own.runUp()) - 1);
    double down_s = value(fit, own.arm().runDown()) * (value(fit, own.runDown()) - 1);
    return Math.max(Math.abs(value(fit, own.start())), up_s) > OwnChoices.DELAYED_S
        || Math.max(Math.abs(value(fit, own.stop())), down_s) > OwnChoices.DELAYED_S;
  }

  private static double value(FitResult fit, int column) {
    return column < 0 ? 0 : fit.values()[column];
  }

  /** A lasting change of the heat at rest over all runs, set aside or not. */
  public static Optional<Change> heatChange(List<RunHealth> health) {
    OddRuns all = new OddRuns(health);
    return change(all.resting(), all.change());
  }

  /** The freed speeds, where they are those of all runs from one on, or up to one, and agree. */
  public static Optional<Change> speedChange(FitResult fit) {
    List<String> runs = turned(fit);
    List<String> freed = runs.stream().filter(r -> !fit.setup().counts(r)).toList();
    if (freed.size() < 2 || freed.size() + 2 > runs.size()) {
      return Optional.empty();
    }
    int last = runs.size() - freed.size();
    boolean late = runs.subList(last, runs.size()).equals(freed);
    if (!late && !runs.subList(0, freed.size()).equals(freed)) {
      return Optional.empty();
    }
    Speeds speeds = Speeds.of(fit, freed);
    int from = late ? last : freed.size();
    return speeds.agree()
        ? Optional.of(
            new Change(
                runs.subList(0, from),
                runs.subList(from, runs.size()),
                late ? speeds.mean() : -speeds.mean()))
        : Optional.empty();
  }

  /** The same by the speed that was written. */
  public static List<String> bySpeed(FitResult fit) {
    return fit.setting().heated().stream()
        .filter(run -> run.arm().isPresent())
        .sorted(Comparator.comparingDouble(run -> run.arm().orElseThrow().speed_m_s()))
        .map(Run::name)
        .filter(turned(fit)::contains)
        .toList();
  }

  /** Moved runs whose recordings count, in order. */
  public static List<String> turned(FitResult fit) {
    return fit.setting().heated().stream()
        .map(Run::name)
        .filter(r -> fit.setup().speedColumns().containsKey(r) && !fit.aside().contains(r))
        .toList();
  }

  /**
   * Relative errors of speeds that were freed.
   *
   * @param mean their mean
   * @param scatter their standard deviation
   */
  public record Speeds(double mean, double scatter) {
    static Speeds of(FitResult fit, List<String> runs) {
      double[] values = fit.values();
      double[] off =
          runs.stream()
              .mapToDouble(r -> values[fit.setup().speedColumns().getOrDefault(r, 0)])
              .toArray();
      double mean = Arrays.stream(off).average().orElse(0);
      double squares = Arrays.stream(off).map(o -> (o - mean) * (o - mean)).sum();
      return new Speeds(mean, Math.sqrt(squares / Math.max(1, off.length - 1)));
    }

    /** Whether they are off by one factor. */
    boolean agree() {
      return Math.abs(mean) > OwnChoices.SPEED_STEP
          && Math.abs(mean) > OwnChoices.STEP_OVER_SCATTER * scatter;
    }
  }

  private static Optional<Change> change(List<String> runs, Optional<LastingChange> change) {
    return change.map(
        s ->
            new Change(
                List.copyOf(runs.subList(0, s.from())),
                List.copyOf(runs.subList(s.from(), runs.size())),
                s.size()));
  }
}
