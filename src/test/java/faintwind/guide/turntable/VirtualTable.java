package faintwind.guide.turntable;

import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.PlannedStep.Kind;
import faintwind.calibration.plan.Promise;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualInstrument;
import faintwind.calibration.virtual.VirtualSample;
import faintwind.calibration.virtual.VirtualStage;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.physics.Interval;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A virtual instrument on a table, turned by somebody who does what the guide says. */
final class VirtualTable {
  private static final double LONGEST_S = 40_000;

  final LiveGuide guide;
  final Set<Trouble.Kind> troubles = EnumSet.noneOf(Trouble.Kind.class);
  final List<Advice.Action> actions = new ArrayList<>();
  private final VirtualInstrument instrument;
  private final double step_s;
  private Spoil spoil = (sample, heaterOn_s) -> sample;
  private Heater heater = Heater.ON;
  private boolean turns = true;
  private double heaterOn_s = Double.POSITIVE_INFINITY;
  private double time_s;
  private Optional<Advice> last = Optional.empty();

  /** Changes a reading before the guide sees it. */
  interface Spoil {
    VirtualSample of(VirtualSample sample, double sinceHeaterOn_s);
  }

  VirtualTable(VirtualBuild build, long seed, Plan plan) {
    instrument = new VirtualInstrument(build, seed);
    step_s = build.chain().reading().step_s();
    guide = new LiveGuide(plan, ExpectedCourse.before(response(), build.chain().scale()));
  }

  VirtualTable spoiled(Spoil how) {
    spoil = how;
    return this;
  }

  /** The plug of the heater is not in. */
  VirtualTable withoutHeater() {
    heater = Heater.OFF;
    return this;
  }

  /** The guide is told that the arm turns, and it does not. */
  VirtualTable withoutTurning() {
    turns = false;
    return this;
  }

  /** What is known beforehand of a copper pair of half an inch. */
  static Response response() {
    return new Response(Interval.share(460, 0.2), Interval.share(170, 0.2), 32, 0.02, 1);
  }

  /** A short staircase: 10 min off, up to 50 min of warm-up, the speeds with rests, still air. */
  static Plan plan(double... speeds_m_s) {
    List<PlannedStep> steps = new ArrayList<>();
    add(steps, Kind.ZERO, 300, Optional.empty());
    add(steps, Kind.WARM_UP, 3000, Optional.empty());
    for (int i = 0; i < speeds_m_s.length; i++) {
      Beat beat = new Beat((int) Math.round(speeds_m_s[i] * 4 * 60 / (2 * Math.PI * 0.6)), 4);
      PlannedSpin spin =
          new PlannedSpin(i + 1, Uncertain.of(0.6, 0.001), beat, 20, Direction.CW, 0.005);
      add(steps, Kind.SPIN, 500, Optional.of(spin));
      add(steps, Kind.REST, 180, Optional.empty());
    }
    add(steps, Kind.STILL, 420, Optional.empty());
    return new Plan(Plan.Form.STAIRCASE, steps, new Promise(0.02, List.of(), List.of()));
  }

  private static void add(
      List<PlannedStep> steps, Kind kind, double duration_s, Optional<PlannedSpin> spin) {
    double start_s = steps.stream().mapToDouble(PlannedStep::duration_s).sum();
    steps.add(new PlannedStep(kind, start_s, duration_s, 1, 1, spin));
  }

  /** Follows the guide until a step begins, or to the end. */
  VirtualTable until(int step) {
    while (guide.at() < step && guide.advice().action() != Advice.Action.DONE) {
      next();
      follow();
    }
    return this;
  }

  VirtualTable toTheEnd() {
    return until(Integer.MAX_VALUE);
  }

  /** Lets time pass without doing anything. */
  VirtualTable waits(double for_s) {
    for (double end_s = time_s + for_s; time_s < end_s; ) {
      next();
    }
    return this;
  }

  /** Somebody walks past: a breeze at the resting pair. */
  VirtualTable breeze(double speed_m_s) {
    instrument.blow(speed_m_s, heater);
    return this;
  }

  Advice next() {
    if (time_s > LONGEST_S) {
      throw new IllegalArgumentException("the guide does not come to an end: " + actions);
    }
    VirtualSample seen = spoil.of(instrument.sampleAt(time_s), time_s - heaterOn_s);
    Advice advice =
        guide.read(new LiveReading(time_s, seen.signal(), OptionalDouble.of(seen.supply_V())));
    advice.troubles().forEach(t -> troubles.add(t.kind()));
    if (last.isEmpty() || last.get().action() != advice.action()) {
      actions.add(advice.action());
    }
    last = Optional.of(advice);
    time_s += step_s;
    return advice;
  }

  private void follow() {
    Advice advice = guide.advice();
    switch (advice.action()) {
      case SWITCH_ON -> {
        instrument.stage(VirtualStage.rest(1, heater));
        heaterOn_s = time_s;
        guide.did(time_s);
      }
      case SPIN_NOW -> {
        PlannedSpin spin = advice.step().orElseThrow().spin().orElseThrow();
        if (turns) {
          instrument.stage(
              VirtualStage.spin(1, spin.speed_m_s(), spin.radius_m().value(), spin.direction()));
        }
        guide.did(time_s);
      }
      case STOP -> {
        instrument.stage(VirtualStage.rest(1, heater));
        guide.did(time_s);
      }
      default -> {}
    }
  }
}
