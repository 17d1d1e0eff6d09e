package faintwind.calibration.fit.judging;

import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.fit.health.DataCheck;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.health.Slip;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.fit.solving.RunOutcomes;
import faintwind.calibration.fit.solving.SetAside;
import faintwind.calibration.fit.wander.RoomBounds;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a fit shows of a bad data set, in plain words. */
public final class Diagnosis {
  private Diagnosis() {}

  /** Every warning a person should know, what spoils runs first. */
  public static List<Problem> warnings(FitResult fit, RunSet set) {
    Causes causes = new Causes(fit, set);
    List<Problem> found = new ArrayList<>(RecordingNotes.leaks(set));
    found.addAll(causes.problems());
    for (LeftOut run : LeftOutRuns.contradicting(fit)) {
      if (!causes.told().contains(run.run())) {
        found.addAll(contradiction(run, fit, set));
      }
    }
    unlikeABall(fit).ifPresent(found::add);
    found.addAll(RecordingNotes.of(fit, set));
    draughts(fit, causes, found);
    missing(fit, set, found);
    return found;
  }

  /** Draught is named where nothing else explains an unsteady run. */
  private static void draughts(FitResult fit, Causes causes, List<Problem> found) {
    SetAside.wild(fit)
        .forEach(
            (run, times) -> {
              if (!causes.told().contains(run) && causes.restsOff(run)) {
                found.add(
                    Problem.warning(
                        "fit.wild-part", Where.run(run), SignalCheck.text(Math.sqrt(times))));
              }
            });
    if (RoomBounds.isAtMost(fit.solution().wander())) {
      found.add(Problem.warning("fit.beyond-a-room", Where.NOWHERE, ""));
    }
    if (fit.solution().wander().rest_s() > OwnChoices.DRAUGHTY_S) {
      found.add(
          Problem.warning(
              "fit.draughty",
              Where.NOWHERE,
              SignalCheck.text(100 * Math.sqrt(fit.solution().wander().rest_s() / 60))));
    }
  }

  private static void missing(FitResult fit, RunSet set, List<Problem> found) {
    if (set.runs().stream().noneMatch(r -> r.kind() == RunKind.STILL)) {
      found.add(Problem.warning("fit.no-still-run", Where.NOWHERE, ""));
    }
    if (set.runs().stream().noneMatch(r -> r.kind() == RunKind.ZERO)) {
      found.add(Problem.warning("fit.no-zero-run", Where.NOWHERE, ""));
    }
    double lowest =
        set.runs().stream()
            .filter(DataCheck::moves)
            .mapToDouble(r -> RunOutcomes.airSpeed_m_s(fit, r))
            .min()
            .orElse(0);
    if (lowest > OwnChoices.LOW_SPEED_M_S) {
      found.add(Problem.warning("fit.no-low-speed", Where.NOWHERE, SignalCheck.text(lowest)));
    }
    carried(fit, found);
    List<Direction> directions =
        set.runs().stream().flatMap(r -> r.conditions().direction().stream()).distinct().toList();
    if (directions.size() == 1) {
      found.add(Problem.warning("fit.one-direction", Where.NOWHERE, ""));
    }
  }

  private static void carried(FitResult fit, List<Problem> found) {
    Uncertain share = fit.carriedShare();
    String percent = Numerals.places(100 * share.value(), 1);
    String u_percent = Numerals.places(100 * share.u().orElseThrow(), 1);
    if (fit.setup().restsAreShort()) {
      found.add(Problem.warning("fit.short-rests", Where.NOWHERE, percent, u_percent));
    }
    if (fit.setup().findsCarried() && share.value() > OwnChoices.MUCH_CARRIED) {
      found.add(Problem.warning("fit.much-carried", Where.NOWHERE, percent, u_percent));
    }
  }

  /** One exchange explains two runs at once, so it goes before a slip of each. */
  private static List<Problem> contradiction(LeftOut run, FitResult fit, RunSet set) {
    double ratio = run.foretold_m_s() / run.speed_m_s();
    String percent = SignalCheck.text(100 * (ratio - 1));
    Where where = Where.run(run.run());
    for (LeftOut other : LeftOutRuns.contradicting(fit)) {
      boolean swapped =
          !other.run().equals(run.run())
              && Slip.isNear(run.foretold_m_s(), other.speed_m_s())
              && Slip.isNear(other.foretold_m_s(), run.speed_m_s());
      if (swapped) {
        return List.of(Problem.warning("fit.runs-exchanged", where, percent, other.run()));
      }
    }
    List<Problem> found = new ArrayList<>();
    otherRadius(run, fit, set).ifPresent(found::add);
    Slip.near(1 / ratio)
        .ifPresent(slip -> found.add(Problem.warning("fit.slip-one." + slip.id(), where, percent)));
    return found.isEmpty() ? List.of(Problem.warning("fit.wrong-count", where, percent)) : found;
  }

  private static Optional<Problem> otherRadius(LeftOut run, FitResult fit, RunSet set) {
    double ratio = run.foretold_m_s() / run.speed_m_s();
    for (double radius_m : fit.setup().radiusColumns().keySet()) {
      double own =
          set.runs().stream()
              .filter(r -> r.name().equals(run.run()) && r.arm().isPresent())
              .mapToDouble(r -> r.arm().orElseThrow().radius_m().value())
              .findFirst()
              .orElse(radius_m);
      if (radius_m != own && Math.abs(ratio * own / radius_m - 1) < 0.05) {
        return Optional.of(
            Problem.warning(
                "fit.wrong-radius",
                Where.run(run.run()),
                SignalCheck.text(100 * (ratio - 1)),
                String.valueOf(Math.round(1000 * own)),
                String.valueOf(Math.round(1000 * radius_m))));
      }
    }
    return Optional.empty();
  }

  /** Runs that were not used or got less weight: bundle key of the reason by run. */
  static Map<String, String> whyNot(FitResult fit, RunSet set) {
    Map<String, String> why = new HashMap<>();
    SetAside.wild(fit).keySet().forEach(run -> why.put(run, "why.wild.weighted"));
    LeftOutRuns.contradicting(fit).forEach(run -> why.put(run.run(), "why.contradicts.weighted"));
    fit.setup().freed().forEach(run -> why.put(run, "why.contradicts"));
    fit.aside().forEach(run -> why.put(run, "why.set-aside"));
    fit.setting().leftOut().forEach(run -> why.put(run, "why.left-out"));
    if (leaks(set)) {
      set.runs().stream()
          .filter(r -> r.kind() == RunKind.ZERO)
          .forEach(r -> why.put(r.name(), "why.leak"));
    }
    return why;
  }

  private static boolean leaks(RunSet set) {
    return !RecordingNotes.leaks(set).isEmpty();
  }

  /**
   * What bends the formula or moves its scale as hardly any ball would, where something does: the
   * job then ends with code 4.
   */
  public static Optional<Problem> unlikeABall(FitResult fit) {
    return PhysicsGate.unlikeABall(fit).or(() -> PhysicsGate.caution(fit));
  }

  /** Whether runs contradict each other: the job then ends with code 4. */
  public static boolean runsContradict(FitResult fit, RunSet set) {
    Set<String> leftOut = fit.setting().leftOut();
    return !leftOut.containsAll(fit.setup().freed())
        || !leftOut.containsAll(fit.aside())
        || !LeftOutRuns.contradicting(fit).isEmpty()
        || leaks(set);
  }
}
