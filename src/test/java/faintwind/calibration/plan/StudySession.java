package faintwind.calibration.plan;

import faintwind.calibration.fit.foretelling.ExpectedResponse;
import faintwind.calibration.fit.foretelling.ExpectedUncertainty;
import faintwind.calibration.fit.foretelling.Knowledge;
import faintwind.calibration.fit.foretelling.PlannedFit;
import faintwind.calibration.fit.setup.CarriedKnown;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A session as a simulation study of whole calibrations made it: separate recordings, each with
 * three minutes of still air before the spin, or one staircase.
 *
 * @param speeds_m_s in the order turned
 * @param constants time constants of spinning
 * @param rest_s recorded rest after each stop
 * @param warmUp_s from switching the heater on
 * @param form how the recordings are cut
 * @param directions one way or by turns
 */
record StudySession(
    List<Double> speeds_m_s,
    double constants,
    double rest_s,
    double warmUp_s,
    Plan.Form form,
    PlanWish.Directions directions) {
  private static final double LEAD_S = 180;
  private static final int LOOKS = 12;

  /** From this rest on the fit looks for the carried air. */
  private static final ExpectedResponse TYPICAL = new ExpectedResponse(500, 150, 32, 0.007);

  private static final List<Uncertain> RADII =
      List.of(Uncertain.of(0.3, 0.001), Uncertain.of(0.6, 0.001), Uncertain.of(0.9, 0.001));

  /** Seven speeds from 0.1 to 3 m/s, four time constants, 400 s of rest, 50 minutes of warm-up. */
  static StudySession usual() {
    return new StudySession(
        Candidates.spaced(0.1, 3, 7),
        4,
        400,
        3000,
        Plan.Form.SEPARATE,
        PlanWish.Directions.ONE_WAY);
  }

  StudySession withSpeeds(double from_m_s, double to_m_s, int count) {
    return new StudySession(
        Candidates.spaced(from_m_s, to_m_s, count), constants, rest_s, warmUp_s, form, directions);
  }

  StudySession withConstants(double other) {
    return new StudySession(speeds_m_s, other, rest_s, warmUp_s, form, directions);
  }

  StudySession withRest(double other_s) {
    return new StudySession(speeds_m_s, constants, other_s, warmUp_s, form, directions);
  }

  StudySession withWarmUp(double other_s) {
    return new StudySession(speeds_m_s, constants, rest_s, other_s, form, directions);
  }

  StudySession asStaircase() {
    return new StudySession(
        speeds_m_s, constants, rest_s, warmUp_s, Plan.Form.STAIRCASE, directions);
  }

  StudySession bothWays() {
    return new StudySession(
        speeds_m_s, constants, rest_s, warmUp_s, form, PlanWish.Directions.BOTH_WAYS);
  }

  /** Recorded hours; the waits before a recording are not. */
  double hours() {
    return steps(fit(0.003, CarriedKnown.byRecordings())).stream()
            .mapToDouble(PlannedStep::duration_s)
            .sum()
        / 3600;
  }

  /** Mean relative uncertainty over a range, as the fit would take the carried air. */
  double mean(double from_m_s, double to_m_s) {
    return mean(from_m_s, to_m_s, fit(0.003, CarriedKnown.byRecordings()));
  }

  double mean(double from_m_s, double to_m_s, PlannedFit fit) {
    Knowledge known = fit.beforehand();
    for (List<Run> part : PlannedRuns.parts(steps(fit), fit)) {
      known = known.plus(fit.of(part));
    }
    ExpectedUncertainty expected = fit.uncertainty(known);
    return Candidates.spaced(from_m_s, to_m_s, LOOKS).stream()
        .mapToDouble(expected::u)
        .average()
        .orElseThrow();
  }

  static PlannedFit fit(double asymmetry, CarriedKnown carried) {
    return new PlannedFit(TYPICAL, RADII, asymmetry, carried);
  }

  private List<PlannedStep> steps(PlannedFit fit) {
    List<PlannedStep> steps = new ArrayList<>();
    add(steps, PlannedStep.Kind.ZERO, 600, 1);
    add(steps, PlannedStep.Kind.WARM_UP, warmUp_s, 1);
    for (int i = 0; i < speeds_m_s.size(); i++) {
      int recording = form == Plan.Form.SEPARATE ? 2 + i : 1;
      if (form == Plan.Form.SEPARATE) {
        add(steps, PlannedStep.Kind.STILL, LEAD_S, recording);
      }
      PlannedStep last = steps.get(steps.size() - 1);
      double speed = speeds_m_s.get(i);
      double spin_s = constants * fit.timeConstant_s(speed);
      steps.add(
          new PlannedStep(
              PlannedStep.Kind.SPIN,
              last.end_s(),
              spin_s,
              1,
              recording,
              Optional.of(spin(speed, i + 1, spin_s))));
      if (rest_s > 0) {
        add(steps, PlannedStep.Kind.REST, rest_s, recording);
      }
    }
    return steps;
  }

  /** Spins and their rests alone. */
  List<PlannedStep> spinsOnly(PlannedFit fit) {
    return steps(fit).stream()
        .filter(s -> s.kind() == PlannedStep.Kind.SPIN || s.kind() == PlannedStep.Kind.REST)
        .toList();
  }

  private static void add(
      List<PlannedStep> steps, PlannedStep.Kind kind, double duration_s, int recording) {
    double start = steps.isEmpty() ? 0 : steps.get(steps.size() - 1).end_s();
    steps.add(new PlannedStep(kind, start, duration_s, 1, recording, Optional.empty()));
  }

  private PlannedSpin spin(double speed_m_s, int number, double spin_s) {
    Uncertain radius = RADII.get(speed_m_s < 0.5 ? 0 : speed_m_s < 2 ? 1 : 2);
    double rate = speed_m_s / (2 * Math.PI * radius.value());
    // a thousand beats a turn, so that a whole number of them gives the very speed
    Beat beat = new Beat((int) Math.round(rate * 60_000), 1000);
    boolean back = directions == PlanWish.Directions.BOTH_WAYS && number % 2 == 0;
    int turns = Math.max(1, (int) (rate * spin_s));
    return new PlannedSpin(
        number, radius, beat, turns, back ? Direction.CCW : Direction.CW, 0.01 * speed_m_s);
  }
}
