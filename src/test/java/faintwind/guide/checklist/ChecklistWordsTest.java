package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.StepState;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Words of checklist files and bundle keys: who changes one breaks every file that has it. */
class ChecklistWordsTest {
  @Test
  void wordsAreThoseOfTheFiles() {
    assertThat(BenchFact.POWER_ON.word()).isEqualTo("power-on");
    assertThat(Caution.Level.INJURE.word()).isEqualTo("injure");
    assertThat(StepState.NEEDS_ATTENTION.word()).isEqualTo("needs-attention");
  }

  @Test
  void everyFactOfTheBenchIsFoundByItsWord() {
    assertThat(Arrays.stream(BenchFact.values()))
        .allSatisfy(fact -> assertThat(BenchFact.ofWord(fact.word())).contains(fact));
    assertThat(BenchFact.ofWord("power on")).isEmpty();
  }

  @Test
  void aMarkSaysWhatHoldsOrDoesNot() {
    Bench.Mark on = new Bench.Mark(BenchFact.POWER_ON, true);
    Bench.Mark off = new Bench.Mark(BenchFact.POWER_ON, false);
    assertThat(Bench.Mark.ofWord("power-on")).contains(on);
    assertThat(Bench.Mark.ofWord("not power-on")).contains(off);
    assertThat(on.word()).isEqualTo("power-on");
    assertThat(off.word()).isEqualTo("not power-on");
    assertThat(Bench.Mark.ofWord("not powered")).isEmpty();
  }

  @Test
  void aStepIsFoundWithItsStage() {
    Checklist checklist = ShippedChecklist.standard();
    for (Stage stage : checklist.stages()) {
      for (Step step : stage.steps()) {
        assertThat(checklist.stageOf(step.id())).contains(stage);
      }
    }
    assertThat(checklist.stageOf("bake-a-cake")).isEmpty();
  }
}
