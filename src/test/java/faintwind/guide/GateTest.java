package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Waived;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class GateTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  private static List<JournalEntry> without(Predicate<JournalEntry> gone) {
    List<JournalEntry> left = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    assertThat(left.removeIf(gone)).as("the entry to leave out exists").isTrue();
    return left;
  }

  private static Gate.Answer toFinish(Step step, List<JournalEntry> entries) {
    return Gate.toFinish(CHECKLIST, step, SampleBuild.after(entries));
  }

  @Test
  void aSoundAndCompleteBuildOpensEveryGateItNeeds() {
    Situation situation = SampleBuild.after(SampleBuild.complete(CHECKLIST));
    for (String gate : List.of(Gate.HEATER_POWER, Gate.FIRST_SPIN, Gate.FIRST_FIELD_LOG)) {
      assertThat(Gate.check(CHECKLIST, gate, situation).reasons()).as(gate).isEmpty();
      assertThat(Gate.check(CHECKLIST, gate, situation).open()).as(gate).isTrue();
    }
    for (Step step : CHECKLIST.steps()) {
      boolean skipped = step.id().startsWith("plating-") && !step.id().equals("plating-needed");
      if (!skipped) {
        assertThat(Gate.toFinish(CHECKLIST, step, situation).reasons()).as(step.id()).isEmpty();
      }
    }
  }

  @Test
  void aGateThatNoStepOpensStaysShut() {
    Checklist without = without("arm-safety");
    Situation situation = SampleBuild.after(SampleBuild.complete(CHECKLIST));
    Gate.Answer answer = Gate.check(without, Gate.FIRST_SPIN, situation);
    assertThat(ids(answer)).containsExactly("gate.no-step");
    Step spins = without.step("spin-runs").orElseThrow();
    assertThat(ids(Gate.toBegin(without, spins, situation))).contains("gate.closed.first-spin");
  }

  @Test
  void aChecklistWithoutTheStepThatUnlocksTheArmIsRefused() {
    assertThat(ChecklistRules.problems(without("arm-safety")))
        .anySatisfy(
            problem -> {
              assertThat(problem.id()).isEqualTo("checklist.gate-missing");
              assertThat(problem.found()).isEqualTo(Gate.FIRST_SPIN);
            });
  }

  private static Checklist without(String step) {
    List<Stage> stages =
        CHECKLIST.stages().stream()
            .map(
                stage ->
                    new Stage(
                        stage.id(),
                        stage.title(),
                        stage.about(),
                        stage.ends(),
                        stage.banner(),
                        stage.steps().stream().filter(s -> !s.id().equals(step)).toList()))
            .toList();
    return new Checklist(
        CHECKLIST.id(), CHECKLIST.version(), CHECKLIST.sha256(), stages, CHECKLIST.remedies());
  }

  @Test
  void aGateWhoseStepsAreNotNeededStaysShut() {
    Situation situation = SampleBuild.after(SampleBuild.complete(CHECKLIST));
    assertThat(Gate.check(CHECKLIST, Gate.HOME_PLATING, situation).open()).isFalse();
  }

  @Test
  void nothingIsOpenAtTheBeginning() {
    Situation nothing = SampleBuild.after(List.of());
    for (String gate : CHECKLIST.gates()) {
      assertThat(Gate.check(CHECKLIST, gate, nothing).open()).as(gate).isFalse();
    }
  }

  static Stream<Arguments> cautions() {
    return CHECKLIST.steps().stream()
        .flatMap(step -> step.cautions().stream().map(c -> Arguments.of(step.id(), c.id())));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("cautions")
  void noCautionCanBePassedBy(String stepId, String caution) {
    Step step = CHECKLIST.step(stepId).orElseThrow();
    List<JournalEntry> entries =
        without(
            e ->
                e.step().filter(stepId::equals).isPresent()
                    && e.event().equals(new CautionAcknowledged(caution)));
    assertThat(ids(toFinish(step, entries))).contains("gate.caution");
    entries.add(SampleBuild.entry("w", stepId, new Waived(caution, "in a hurry")));
    assertThat(ids(toFinish(step, entries))).contains("gate.caution");
    entries.add(
        new JournalEntry(
            "n", SampleBuild.LATER, " ", Optional.of(stepId), new CautionAcknowledged(caution)));
    assertThat(ids(toFinish(step, entries))).contains("gate.caution");
    step.order()
        .gate()
        .ifPresent(
            gate ->
                assertThat(Gate.check(CHECKLIST, gate, SampleBuild.after(entries)).open())
                    .isFalse());
  }

  static Stream<Arguments> stops() {
    return CHECKLIST.steps().stream()
        .flatMap(
            step ->
                step.asks().questions().stream()
                    .flatMap(
                        q ->
                            q.choices().stream()
                                .filter(c -> c.stop().isPresent())
                                .map(c -> Arguments.of(step.id(), q.id(), c.id()))));
  }

  @ParameterizedTest(name = "{0}: {1} = {2}")
  @MethodSource("stops")
  void noAnswerThatStopsCanBePassedBy(String stepId, String question, String choice) {
    Step step = CHECKLIST.step(stepId).orElseThrow();
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    entries.add(SampleBuild.entry("s", stepId, new QuestionAnswered(question, choice)));
    entries.add(SampleBuild.entry("w", stepId, new Waived(question, "in a hurry")));
    assertThat(ids(toFinish(step, entries))).contains("gate.answer-stops");
  }

  static Stream<Arguments> powerReadings() {
    return CHECKLIST.stepsOfGate(Gate.HEATER_POWER).stream()
        .flatMap(step -> step.asks().readings().stream().map(r -> Arguments.of(step.id(), r.id())));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("powerReadings")
  void heaterPowerNeedsEveryReadingOfItsSteps(String stepId, String reading) {
    List<JournalEntry> entries =
        without(e -> e.event() instanceof ReadingEntered r && r.reading().equals(reading));
    assertThat(power(entries)).contains("gate.reading-missing");
    Step first = CHECKLIST.step("first-power").orElseThrow();
    assertThat(ids(toFinish(first, entries))).contains("gate.closed.heater-power");
  }

  @Test
  void aDoubtfulLeakClosesHeaterPowerUntilItIsWaivedByNameAndReason() {
    String step = "heater-insulation";
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    entries.add(SampleBuild.entry("leak", step, typed("lead-a-ball", "6 M")));
    assertThat(power(entries)).contains("gate.reading-doubtful");
    entries.add(SampleBuild.entry("w1", step, new Waived("lead-a-ball", " ")));
    assertThat(power(entries)).contains("gate.reading-doubtful");
    Waived named = new Waived("lead-a-ball", "rehearsal without any power");
    entries.add(new JournalEntry("w2", SampleBuild.LATER, "", Optional.of(step), named));
    assertThat(power(entries)).contains("gate.reading-doubtful");
    entries.add(SampleBuild.entry("w3", step, named));
    assertThat(power(entries))
        .containsExactlyInAnyOrder("doubt.reading-changed", "power.meter-not-proven-after");
    entries.add(SampleBuild.entry("f1", step, new Event.StepFinished()));
    entries.add(SampleBuild.entry("p", "joined-check", typed("meter-proof-after", "1.0 M")));
    entries.add(SampleBuild.entry("f2", "joined-check", new Event.StepFinished()));
    assertThat(power(entries)).isEmpty();
  }

  private static Event typed(String reading, String typed) {
    return new ReadingEntered(reading, typed, SampleBuild.amount(typed, "MΩ"), Optional.empty());
  }

  @Test
  void aStruckAcknowledgementCountsNoMore() {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    JournalEntry read =
        entries.stream()
            .filter(e -> e.step().filter("arm-safety"::equals).isPresent())
            .filter(e -> e.event() instanceof CautionAcknowledged)
            .findFirst()
            .orElseThrow();
    entries.add(
        SampleBuild.entry(
            "undo", "arm-safety", new Event.Corrected(read.id(), "not read", Optional.empty())));
    assertThat(Gate.check(CHECKLIST, Gate.FIRST_SPIN, SampleBuild.after(entries)).open()).isFalse();
  }

  @Test
  void aRunningClockHoldsItsStep() {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    entries.add(
        SampleBuild.entry("c", "glue-heater", new Event.ClockStarted("heater-cure", 86_400)));
    Step step = CHECKLIST.step("glue-heater").orElseThrow();
    assertThat(ids(toFinish(step, entries))).contains("gate.clock-runs");
    assertThat(power(entries)).contains("gate.step-needed");
  }

  private static List<String> power(List<JournalEntry> entries) {
    return ids(Gate.check(CHECKLIST, Gate.HEATER_POWER, SampleBuild.after(entries)));
  }

  private static List<String> ids(Gate.Answer answer) {
    return answer.reasons().stream().map(Problem::id).toList();
  }

  @Test
  void cautionsStayUnreadUntilTheyAreAcknowledged() {
    Situation nothing = SampleBuild.after(List.of());
    Situation done = SampleBuild.after(SampleBuild.complete(CHECKLIST));
    for (Step step : CHECKLIST.steps()) {
      assertThat(Gate.unread(step, nothing)).as(step.id()).isEqualTo(step.cautions());
      assertThat(Gate.unread(step, done)).as(step.id()).isEmpty();
    }
  }
}
