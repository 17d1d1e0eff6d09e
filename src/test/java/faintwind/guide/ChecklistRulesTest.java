package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A teacher's page over a shipped step keeps what protects people. */
class ChecklistRulesTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final Step INSULATION = CHECKLIST.step("heater-insulation").orElseThrow();

  private static List<String> dropped(Step above) {
    return ChecklistRules.dropped(INSULATION, above, Where.NOWHERE).stream()
        .map(problem -> problem.id() + " " + problem.found())
        .toList();
  }

  private static Step with(Step step, Step.Order order, List<Reading> readings) {
    Step.Asks asks = step.asks();
    return new Step(
        step.id(),
        step.title(),
        step.text(),
        step.cautions(),
        order,
        step.kit(),
        new Step.Asks(
            asks.questions(), readings, asks.clock(), asks.photo(), asks.notes(), asks.bought()));
  }

  @Test
  void theSameStepDropsNothing() {
    for (Step step : CHECKLIST.steps()) {
      assertThat(ChecklistRules.dropped(step, step, Where.NOWHERE)).as(step.id()).isEmpty();
    }
  }

  @Test
  void aReadingOfHeaterPowerKeepsItsBands() {
    List<Reading> others = new ArrayList<>(INSULATION.asks().readings());
    others.removeIf(reading -> reading.id().equals("lead-a-ball"));
    Step without = with(INSULATION, INSULATION.order(), others);
    assertThat(dropped(without)).containsExactly("checklist.reading-dropped lead-a-ball");
    Reading kept = INSULATION.reading("lead-a-ball").orElseThrow();
    Reading another = INSULATION.reading("lead-b-ball").orElseThrow();
    List<Reading> judgedByOthers = new ArrayList<>(others);
    judgedByOthers.add(
        new Reading(
            kept.id(),
            another.label(),
            "kΩ",
            kept.expected(),
            kept.bands(),
            kept.tips(),
            kept.recorded()));
    assertThat(dropped(with(INSULATION, INSULATION.order(), judgedByOthers)))
        .containsExactly("checklist.reading-dropped lead-a-ball");
  }

  @Test
  void theGateThatAStepOpensIsKept() {
    Step.Order order = INSULATION.order();
    Step.Order opens =
        new Step.Order(order.needs(), Optional.empty(), order.behind(), order.bench());
    assertThat(dropped(with(INSULATION, opens, INSULATION.asks().readings())))
        .contains("checklist.gate-dropped heater-power");
  }

  @Test
  void stepsThatWaitForOneAnotherAreNamed() {
    Step first = CHECKLIST.steps().get(0);
    Step second = CHECKLIST.steps().get(1);
    List<Stage> stages = new ArrayList<>();
    Stage stage = CHECKLIST.stages().get(0);
    List<Step> steps = new ArrayList<>(stage.steps());
    steps.set(0, needing(first, second));
    steps.set(1, needing(second, first));
    stages.add(
        new Stage(stage.id(), stage.title(), stage.about(), stage.ends(), stage.banner(), steps));
    stages.addAll(CHECKLIST.stages().subList(1, CHECKLIST.stages().size()));
    Checklist waiting = new Checklist("x", "1", CHECKLIST.sha256(), stages, CHECKLIST.remedies());
    List<Problem> cycles =
        ChecklistRules.problems(waiting).stream()
            .filter(problem -> problem.id().equals("checklist.cycle"))
            .toList();
    assertThat(cycles).hasSizeGreaterThanOrEqualTo(2);
    assertThat(cycles.get(0).found()).contains(first.id(), second.id());
    assertThat(ChecklistRules.problems(CHECKLIST)).isEmpty();
  }

  private static Step needing(Step step, Step other) {
    Step.Order order = step.order();
    return with(
        step,
        new Step.Order(List.of(other.id()), order.gate(), order.behind(), order.bench()),
        step.asks().readings());
  }
}
