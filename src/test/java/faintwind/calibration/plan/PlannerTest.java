package faintwind.calibration.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Cancelled;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlannerTest {
  private static final Response COPPER =
      new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, 1);
  private static final Uncertain R300 = Uncertain.of(0.3, 0.001);
  private static final Uncertain R600 = Uncertain.of(0.6, 0.001);
  private static final Uncertain R900 = Uncertain.of(0.9, 0.001);
  private static final ArmSetup ONE_RADIUS =
      new ArmSetup(List.of(R600), DataWay.of(DataWay.Kind.WIRELESS));
  private static final ArmSetup THREE_RADII =
      new ArmSetup(List.of(R900, R300, R600), DataWay.of(DataWay.Kind.WIRELESS));

  private static PlanWish wish(PlanWish.Time time) {
    return new PlanWish(0.1, 2.5, PlanWish.Beats.usual(), PlanWish.Directions.BOTH_WAYS, time);
  }

  private static Checked<PlanChoice> plan(ArmSetup arm, PlanWish.Time time) {
    return Planner.plan(PlanRequest.of(arm, wish(time), COPPER), () -> false);
  }

  private static PlanChoice planned(Checked<PlanChoice> plan) {
    return plan.fold(
        (choice, notes) -> choice,
        p -> {
          throw new AssertionError(p.toString());
        });
  }

  @Test
  void staircaseIsOneWarmUpThenSpeedsWithRestsOfTwoMinutesOrMore() {
    Plan plan = planned(plan(ONE_RADIUS, PlanWish.Time.free())).staircase();
    assertThat(plan.steps().stream().filter(s -> s.kind() == PlannedStep.Kind.WARM_UP)).hasSize(1);
    assertThat(plan.spins()).hasSize(7);
    for (int i = 0; i < plan.steps().size(); i++) {
      if (plan.steps().get(i).kind() == PlannedStep.Kind.SPIN) {
        PlannedStep after = plan.steps().get(i + 1);
        assertThat(after.kind()).isEqualTo(PlannedStep.Kind.REST);
        assertThat(after.duration_s()).isGreaterThanOrEqualTo(120);
      }
    }
  }

  @Test
  void beatsAreWithinTheComfortableOnesAndGiveTheSpeed() {
    for (PlannedSpin spin : planned(plan(THREE_RADII, PlanWish.Time.free())).staircase().spins()) {
      assertThat(spin.beat().perMinute()).isBetween(40, 120);
      // definition: 2 pi R N / t
      double speed = 2 * Math.PI * spin.radius_m().value() * spin.turns() / spin.turnsTime_s();
      assertThat(spin.speed_m_s()).isCloseTo(speed, within(1e-12));
    }
  }

  @Test
  void speedsReachBothEndsOfTheRange() {
    List<Double> speeds =
        planned(plan(THREE_RADII, PlanWish.Time.free())).staircase().spins().stream()
            .map(PlannedSpin::speed_m_s)
            .sorted()
            .toList();
    assertThat(speeds.get(0)).isCloseTo(0.1, within(0.007));
    assertThat(speeds.get(speeds.size() - 1)).isCloseTo(2.5, within(0.15));
  }

  @Test
  void stepsFollowOneAnotherWithoutGap() {
    Plan plan = planned(plan(THREE_RADII, PlanWish.Time.free())).staircase();
    for (int i = 1; i < plan.steps().size(); i++) {
      assertThat(plan.steps().get(i).start_s())
          .isCloseTo(plan.steps().get(i - 1).end_s(), within(1e-9));
    }
  }

  @Test
  void bothDirectionsComeByTurns() {
    List<PlannedSpin> spins = planned(plan(ONE_RADIUS, PlanWish.Time.free())).staircase().spins();
    for (int i = 0; i < spins.size(); i++) {
      assertThat(spins.get(i).direction()).isEqualTo(i % 2 == 0 ? Direction.CW : Direction.CCW);
    }
  }

  @Test
  void staircaseSavesHoursAgainstSeparateRuns() {
    PlanChoice choice = planned(plan(ONE_RADIUS, PlanWish.Time.free()));
    double saved = choice.separate().orElseThrow().total_s() - choice.staircase().total_s();
    assertThat(saved).isGreaterThan(3600);
  }

  @Test
  void moreTimePromisesNoLess() {
    double last = 1;
    for (double hours : new double[] {1.3, 1.8, 2.5}) {
      PlanWish.Time time = new PlanWish.Time(OptionalDouble.of(3600 * hours), Optional.empty());
      Plan plan = planned(plan(ONE_RADIUS, time)).staircase();
      assertThat(plan.total_s()).isLessThanOrEqualTo(3600 * hours);
      assertThat(plan.promise().mean()).isLessThanOrEqualTo(last * 1.01);
      last = plan.promise().mean();
    }
  }

  @Test
  void lessonsAreKeptAndBeginWarm() {
    PlanWish.Lesson lesson = new PlanWish.Lesson(PlanWish.Lesson.SCHOOL_S, 3);
    Plan plan =
        planned(plan(ONE_RADIUS, new PlanWish.Time(OptionalDouble.empty(), Optional.of(lesson))))
            .staircase();
    assertThat(plan.lessons()).isBetween(2, 3);
    assertThat(plan.steps()).allMatch(s -> s.end_s() <= PlanWish.Lesson.SCHOOL_S);
    assertThat(plan.steps()).noneMatch(s -> s.kind() == PlannedStep.Kind.WARM_UP);
  }

  @Test
  void cableStaysWithinItsTurnsInEveryOrder() {
    for (double budget : new double[] {30, 45, 80, 200}) {
      ArmSetup arm = new ArmSetup(List.of(R600), DataWay.cable(budget));
      Plan plan = planned(plan(arm, PlanWish.Time.free())).staircase();
      double twist = 0;
      for (PlannedStep step : plan.steps()) {
        if (step.spin().isPresent()) {
          PlannedSpin spin = step.spin().get();
          double turns = spin.beat().turns_1_s() * step.duration_s();
          twist += spin.direction() == Direction.CW ? turns : -turns;
          assertThat(Math.abs(twist)).isLessThanOrEqualTo(budget);
        }
      }
    }
  }

  @Test
  void cableTooShortIsRefusedWithTheTurnsThatWouldDo() {
    ArmSetup arm = new ArmSetup(List.of(R600), DataWay.cable(5));
    List<Problem> problems = plan(arm, PlanWish.Time.free()).problems();
    assertThat(problems).extracting(Problem::id).containsExactly("plan.cable-short");
    double needed = Double.parseDouble(problems.get(0).details().get(0));
    ArmSetup longer = new ArmSetup(List.of(R600), DataWay.cable(needed));
    Plan plan = planned(plan(longer, PlanWish.Time.free())).staircase();
    assertThat(plan.spins().stream().mapToDouble(PlannedSpin::speed_m_s).max().orElse(0))
        .isGreaterThan(2.2);
  }

  @Test
  void cableTurnedOneWayOnlyIsRefused() {
    PlanWish oneWay =
        new PlanWish(
            0.1, 2.5, PlanWish.Beats.usual(), PlanWish.Directions.ONE_WAY, PlanWish.Time.free());
    ArmSetup arm = new ArmSetup(List.of(R600), DataWay.cable(100));
    assertThat(Planner.plan(PlanRequest.of(arm, oneWay, COPPER), () -> false).problems())
        .extracting(Problem::id)
        .contains("plan.cable-one-way");
  }

  @Test
  void batteryThatDoesNotLastIsRefusedWithTheMinutesNeeded() {
    DataWay way =
        new DataWay(DataWay.Kind.RIDING_LOGGER, OptionalDouble.empty(), OptionalDouble.of(1800));
    assertThat(plan(new ArmSetup(List.of(R600), way), PlanWish.Time.free()).problems())
        .extracting(Problem::id)
        .containsExactly("plan.battery-short");
  }

  @Test
  void halfAnHourIsRefusedWithTheMinutesNeeded() {
    PlanWish.Time half = new PlanWish.Time(OptionalDouble.of(1800), Optional.empty());
    List<Problem> problems = plan(ONE_RADIUS, half).problems();
    assertThat(problems).extracting(Problem::id).containsExactly("plan.time-short");
    double minutes = Double.parseDouble(problems.get(0).found());
    PlanWish.Time enough = new PlanWish.Time(OptionalDouble.of(60 * minutes), Optional.empty());
    assertThat(plan(ONE_RADIUS, enough).isOk()).isTrue();
  }

  @Test
  void beatsThatReachNoSpeedAreRefused() {
    PlanWish slow =
        new PlanWish(
            0.1,
            2.5,
            new PlanWish.Beats(60, 61, List.of(1)),
            PlanWish.Directions.BOTH_WAYS,
            PlanWish.Time.free());
    assertThat(Planner.plan(PlanRequest.of(ONE_RADIUS, slow, COPPER), () -> false).problems())
        .extracting(Problem::id)
        .containsExactly("plan.all-held");
  }

  /**
   * On a short arm the pull on the balls is the limit: no marks or beats help, a longer arm does.
   */
  @Test
  void shortArmNamesThePullAndPromisesOnlyWhatItTurns() {
    ArmSetup arm =
        new ArmSetup(List.of(Uncertain.of(0.1, 0.001)), DataWay.of(DataWay.Kind.WIRELESS));
    Checked<PlanChoice> plan = plan(arm, PlanWish.Time.free());
    assertThat(plan.problems()).extracting(Problem::id).containsExactly("plan.fast-cut.inward");
    assertThat(plan.problems().get(0).details()).containsExactly("15", "420", "2.50");
    Plan staircase = planned(plan).staircase();
    double fastest =
        staircase.spins().stream().mapToDouble(PlannedSpin::speed_m_s).max().orElseThrow();
    assertThat(fastest * fastest / 0.1).isLessThanOrEqualTo(15);
    assertThat(staircase.promise().speeds()).allMatch(at -> at.speed_m_s() <= fastest * (1 + 1e-9));
  }

  /** What a limit advises is not what another limit forbids. */
  @Test
  void adviceOfARadiusReachesTheWish() {
    ArmSetup longer =
        new ArmSetup(List.of(Uncertain.of(0.42, 0.001)), DataWay.of(DataWay.Kind.WIRELESS));
    assertThat(plan(longer, PlanWish.Time.free()).problems())
        .extracting(Problem::id)
        .doesNotContain("plan.fast-cut.inward", "plan.fast-cut.beat");
  }

  @Test
  void armOfTwentyMillimetresIsRefused() {
    Uncertain near = Uncertain.of(0.02, 0.001);
    assertThatThrownBy(() -> new ArmSetup(List.of(near), DataWay.of(DataWay.Kind.WIRELESS)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void cancellingStopsThePlanner() {
    PlanRequest request = PlanRequest.of(ONE_RADIUS, wish(PlanWish.Time.free()), COPPER);
    assertThatThrownBy(() -> Planner.plan(request, () -> true)).isInstanceOf(Cancelled.class);
  }
}
