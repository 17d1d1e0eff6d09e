package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.health.Ailment;
import faintwind.calibration.fit.health.OddRuns;
import faintwind.calibration.fit.health.RunHealth;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.SetAside;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Names what spoilt runs whose heat contradicts the others, in plain words, the likeliest cause
 * first. Where two causes leave the same trace, both are named with what would tell them.
 */
final class Causes {
  private final FitResult fit;
  private final RunSet set;
  private final List<RunHealth> health;
  private final OddRuns odd;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> told = new HashSet<>();

  Causes(FitResult fit, RunSet set) {
    this.fit = fit;
    this.set = set;
    this.health = SetAside.health(fit);
    this.odd = SetAside.odd(fit, health);
    lasting();
    for (RunHealth run : health) {
      if (!told.contains(run.run())) {
        single(run);
      }
    }
  }

  /** What was found, in order. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** The runs that it explains; nothing else need be said against them. */
  Set<String> told() {
    return Set.copyOf(told);
  }

  /**
   * Whether the heat of a run is off at rest, so that its unsteadiness is that of the air there.
   */
  boolean restsOff(String run) {
    return health.stream().filter(r -> r.run().equals(run)).anyMatch(r -> odd.restsOff(r));
  }

  private void lasting() {
    Optional<SetAside.Change> heat =
        SetAside.heatChange(health).filter(c -> fit.aside().containsAll(c.fewer()));
    if (heat.isPresent()) {
      boolean recorded = recorded(heat.get().after().get(0));
      boolean large = Math.abs(heat.get().size()) > OwnChoices.SWITCHED;
      String surface = recorded ? "fit.fouled." : "fit.fouled-or-supply.";
      lasting(heat.get(), large ? "fit.gain." : surface);
      return;
    }
    SetAside.speedChange(fit)
        .filter(c -> fit.setup().freed().containsAll(c.fewer()))
        .ifPresent(c -> lasting(c, "fit.moved."));
  }

  private void lasting(SetAside.Change change, String id) {
    String more = change.size() > 0 ? "up" : "down";
    problems.add(
        Problem.warning(
            id + more,
            Where.run(change.after().get(0)),
            percent(change.size()),
            String.join(", ", change.after()),
            String.join(", ", change.fewer())));
    told.addAll(change.fewer());
  }

  private void single(RunHealth run) {
    if (fit.setting().leftOut().contains(run.run())) {
      return; // a person knows why
    }
    boolean spoilt = fit.aside().contains(run.run());
    if (!spoilt && !fit.setup().freed().contains(run.run())) {
      return;
    }
    OptionalDouble shift = shift_s(run.run());
    if (shift.isPresent()) {
      problems.add(
          Problem.warning(
              shift.getAsDouble() > 0 ? "fit.marks-early" : "fit.marks-late",
              Where.run(run.run()),
              Numerals.places(Math.abs(shift.getAsDouble()), 0)));
      told.add(run.run());
      return;
    }
    List<Ailment> ailments = odd.ailments(run);
    for (Ailment ailment : ailments.subList(0, Math.min(OwnChoices.MOST_CAUSES, ailments.size()))) {
      if (spoilt && ailment.spoilsRecording()) {
        problems.add(problem(run.run(), ailment));
        told.add(run.run());
      } else if (ailment.kind() == Ailment.Kind.TURNING_STEP) {
        problems.add(problem(run.run(), ailment));
      }
    }
    if (spoilt && told.add(run.run())) {
      problems.add(Problem.warning("fit.ails.other", Where.run(run.run()), ""));
    }
  }

  private OptionalDouble shift_s(String name) {
    return set.runs().stream()
        .filter(r -> r.name().equals(name))
        .map(r -> SetAside.shift_s(fit, r))
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  private Problem problem(String run, Ailment ailment) {
    String id =
        switch (ailment.kind()) {
          case HEATER_LOST -> "heater-lost";
          case SCALE -> recorded(run) ? "level" : "supply";
          case SCALE_STEP -> recorded(run) ? "level-from" : "supply-from";
          case OFFSET -> "offset";
          case OFFSET_STEP -> "offset-from";
          case FADING -> ailment.share() < 0 ? "wet" : "hot";
          case REST -> "draught";
          case TURNING -> throw new IllegalArgumentException("kind = TURNING, told as a speed");
          case TURNING_STEP -> "speed-from";
        };
    String way =
        ailment.kind() == Ailment.Kind.HEATER_LOST || ailment.kind() == Ailment.Kind.FADING
            ? ""
            : ailment.share() > 0 ? ".up" : ".down";
    return Problem.warning(
        "fit.ails." + id + way,
        Where.run(run),
        percent(ailment.share()),
        Numerals.places(ailment.from_s(), 0));
  }

  private boolean recorded(String run) {
    return set.runs().stream()
        .filter(r -> r.name().equals(run))
        .map(Run::recording)
        .anyMatch(r -> r.supply_V().isPresent());
  }

  private static String percent(double share) {
    return SignalCheck.text(Math.abs(100 * share));
  }
}
