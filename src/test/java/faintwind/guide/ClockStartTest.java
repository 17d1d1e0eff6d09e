package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.ClockStarted;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every clock of the shipped checklist. */
class ClockStartTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final Map<String, Double> VALUES = SampleBuild.after(List.of()).values(CHECKLIST);

  static Stream<Step> ownTimes() {
    return CHECKLIST.steps().stream()
        .filter(step -> step.asks().clock().filter(c -> c.own().isPresent()).isPresent());
  }

  private static ClockStarted started(Checked<Event> start) {
    return (ClockStarted) ((Checked.Ok<Event>) start).value();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ownTimes")
  void theTimeOfATinCountsWithinTheLimitsOfItsStep(Step step) {
    Step.ClockSpec clock = step.asks().clock().orElseThrow();
    Step.OwnTime limits = clock.own().orElseThrow();
    Map<String, Double> painted = Map.of(Situation.BALLS_PAINTED, 1.0);
    for (double hours : new double[] {limits.least_h(), limits.most_h()}) {
      assertThat(started(ClockStart.own(step, hours, painted)))
          .isEqualTo(new ClockStarted(clock.id(), 3600 * hours));
    }
    for (double hours : new double[] {0.99 * limits.least_h(), 1.01 * limits.most_h()}) {
      assertThat(ClockStart.own(step, hours, painted).problems())
          .extracting(Problem::id)
          .containsExactly("clock.own-outside");
    }
  }

  @Test
  void someStepTakesTheTimeOfATin() {
    assertThat(ownTimes()).isNotEmpty();
  }

  @Test
  void theUsualTimeIsThatOfTheStep() {
    for (Step step : CHECKLIST.steps()) {
      Checked<Event> start = ClockStart.usual(step, VALUES);
      if (step.asks().clock().filter(c -> c.runs(VALUES)).isEmpty()) {
        assertThat(start.problems())
            .as(step.id())
            .extracting(Problem::id)
            .containsExactly("enter.unknown-item");
      } else {
        Step.ClockSpec clock = step.asks().clock().orElseThrow();
        double usual_s = clock.duration_s().number(VALUES).orElseThrow();
        assertThat(started(start)).as(step.id()).isEqualTo(new ClockStarted(clock.id(), usual_s));
        assertThat(usual_s).as(step.id()).isGreaterThanOrEqualTo(60);
      }
    }
  }

  @Test
  void aStepWithoutSuchATimeTakesNone() {
    Step none = CHECKLIST.step("choose-design").orElseThrow();
    assertThat(ClockStart.own(none, 24, VALUES).problems())
        .extracting(Problem::id)
        .containsExactly("enter.unknown-item");
  }
}
