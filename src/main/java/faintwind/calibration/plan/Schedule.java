package faintwind.calibration.plan;

import faintwind.calibration.fit.foretelling.PlannedFit;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays steps one after another: warm-up, spins and rests, moves to another radius, lessons. */
final class Schedule {
  private final PlanRequest request;
  private final PlannedFit fit;
  private final Pace pace;
  private final Plan.Form form;
  private final List<PlannedStep> steps = new ArrayList<>();
  private double time_s;
  private int lesson = 1;
  private int recording = 1;
  private double delta_K;

  private Schedule(PlanRequest request, PlannedFit fit, Pace pace, Plan.Form form) {
    this.request = request;
    this.fit = fit;
    this.pace = pace;
    this.form = form;
  }

  /** The steps of a session with these speeds. */
  static List<PlannedStep> of(
      List<Candidate> chosen, PlanRequest request, PlannedFit fit, Pace pace, Plan.Form form) {
    Schedule schedule = new Schedule(request, fit, pace, form);
    schedule.lay(Order.of(chosen));
    return List.copyOf(schedule.steps);
  }

  private void lay(List<Candidate> ordered) {
    List<Direction> directions = Order.directions(ordered, request);
    begin();
    for (int i = 0; i < ordered.size(); i++) {
      boolean moved =
          i > 0 && ordered.get(i).radius_m().value() != ordered.get(i - 1).radius_m().value();
      before(ordered.get(i), i, moved);
      spin(ordered.get(i), i + 1, directions.get(i));
      add(PlannedStep.Kind.REST, pace.rest_s());
    }
    if (lessonLength_s().isEmpty()) {
      add(PlannedStep.Kind.STILL, OwnChoices.STILL_S);
    }
  }

  private Optional<Double> lessonLength_s() {
    return request.wish().time().lesson().map(PlanWish.Lesson::length_s);
  }

  private void begin() {
    if (lessonLength_s().isPresent()) {
      beginLesson();
    } else {
      add(PlannedStep.Kind.ZERO, OwnChoices.ZERO_S);
      add(PlannedStep.Kind.WARM_UP, pace.warmUp_s());
    }
  }

  /** A lesson begins warm; a look at still air shows that it is. */
  private void beginLesson() {
    time_s = 0;
    delta_K = fit.steadyDelta_K(0);
    add(PlannedStep.Kind.STILL, OwnChoices.SETTLE_S);
  }

  private void before(Candidate next, int index, boolean moved) {
    Optional<Double> length_s = lessonLength_s();
    if (length_s.isPresent()
        && time_s + need_s(next, moved) > length_s.get() - OwnChoices.PACKING_S
        && index > 0) {
      lesson++;
      recording++;
      beginLesson();
      return;
    }
    if (moved) {
      add(PlannedStep.Kind.MOVE, OwnChoices.MOVE_S);
      recording++;
      add(PlannedStep.Kind.STILL, OwnChoices.SETTLE_S);
    } else if (form == Plan.Form.SEPARATE && index > 0) {
      recording++;
    }
    if (form == Plan.Form.SEPARATE) {
      warmAgain();
    }
  }

  private double need_s(Candidate next, boolean moved) {
    double again_s = form == Plan.Form.SEPARATE ? againWarm_s() : 0;
    return (moved ? OwnChoices.MOVE_S + OwnChoices.SETTLE_S : 0)
        + again_s
        + next.spin_s()
        + pace.rest_s();
  }

  private double againWarm_s() {
    double still_K = fit.steadyDelta_K(0);
    double gap = Math.max(1 - delta_K / still_K, OwnChoices.FULL);
    return fit.timeConstant_s(0) * Math.log(gap / OwnChoices.FULL);
  }

  private void warmAgain() {
    double wait_s = 30 * Math.ceil(againWarm_s() / 30);
    if (wait_s > 0) {
      add(PlannedStep.Kind.STILL, Math.max(wait_s, OwnChoices.SETTLE_S));
    }
  }

  private void spin(Candidate candidate, int number, Direction direction) {
    double rate = candidate.beat().turns_1_s();
    int turns =
        Math.max(1, (int) Math.floor(rate * (candidate.spin_s() - OwnChoices.NOT_COUNTED_S)));
    double radius = candidate.radius_m().value();
    double uRadius = candidate.radius_m().u().orElse(ArmSpeed.RADIUS_U_M) / radius;
    double uCount = ArmSpeed.CLICKS_U_S * rate / turns;
    PlannedSpin spin =
        new PlannedSpin(
            number,
            candidate.radius_m(),
            candidate.beat(),
            turns,
            direction,
            candidate.speed_m_s() * Math.hypot(uRadius, uCount));
    add(PlannedStep.Kind.SPIN, candidate.spin_s(), Optional.of(spin));
  }

  private void add(PlannedStep.Kind kind, double duration_s) {
    add(kind, duration_s, Optional.empty());
  }

  private void add(PlannedStep.Kind kind, double duration_s, Optional<PlannedSpin> spin) {
    steps.add(new PlannedStep(kind, time_s, duration_s, lesson, recording, spin));
    time_s += duration_s;
    delta_K = PlannedRuns.after(steps.get(steps.size() - 1), delta_K, fit);
  }
}
