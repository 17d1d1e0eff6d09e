package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.record.HoldInstrument;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.instrument.OpenInstrument;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StepModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private record Bench(Quiet quiet, OpenInstrument instrument, StepModel step) {}

  private Bench at(String step) throws IOException {
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument =
        quiet.open(Cellar.begin("Rind 1").design().before(step).open(step).into(folder, "r"));
    return new Bench(quiet, instrument, new StepModel(quiet.desk(), instrument, () -> {}));
  }

  @Test
  void itBeginsWhereTheJournalLeftOff() throws Exception {
    assertThat(at("weigh-blanks").step().stepId()).isEqualTo("weigh-blanks");
  }

  @Test
  void whereNothingCanBeEnteredNothingIsAskedFor() throws Exception {
    Bench bench = at("coats-on-plate");
    assertThat(bench.step().next().get().sentence()).doesNotContain("Read only");
    HoldInstrument other =
        HoldInstrument.take(bench.instrument().folder(), "Jo").fold((h, notes) -> h, p -> null);
    bench.instrument().hold();
    bench.quiet().answer();
    assertThat(bench.step().next().get().sentence()).startsWith("Read only");
    assertThat(bench.step().next().get().detail()).contains("Jo");
    assertThat(bench.step().next().get().act()).isEmpty();
    other.close();
  }

  @Test
  void aReadingIsKeptAndJudged() throws Exception {
    Bench bench = at("coats-on-plate");
    String reading =
        bench
            .instrument()
            .checklist()
            .step("coats-on-plate")
            .orElseThrow()
            .asks()
            .readings()
            .get(0)
            .id();
    bench.step().enterReading(reading, "OL");
    bench.quiet().answer();
    assertThat(bench.instrument().state().standing(ReadingEntered.class, "coats-on-plate"))
        .singleElement()
        .satisfies(kept -> assertThat(kept.event().typed()).isEqualTo("OL"));
  }

  @Test
  void aStepCannotBeFinishedBeforeItsReadings() throws Exception {
    Bench bench = at("coats-on-plate");
    assertThat(bench.step().canFinish()).isFalse();
    assertThat(bench.instrument().state().standing(StepFinished.class, "coats-on-plate")).isEmpty();
  }

  @Test
  void anAnswerIsKept() throws Exception {
    Bench bench = at("choose-use");
    var question =
        bench.instrument().checklist().step("choose-use").orElseThrow().asks().questions().get(0);
    bench.step().answer(question.id(), question.choices().get(0).id());
    bench.quiet().answer();
    assertThat(bench.instrument().state().standing(QuestionAnswered.class)).hasSize(1);
  }

  @Test
  void aWaiverNeedsANameAndAReason() throws Exception {
    Bench bench = at("heater-insulation");
    assertThat(bench.step().canWaive("lead-a-ball", "", "meter broken, borrowed one tomorrow"))
        .isFalse();
    assertThat(bench.step().canWaive("lead-a-ball", "Ida", "")).isFalse();
    assertThat(bench.instrument().state().standing(Waived.class)).isEmpty();
  }

  @Test
  void ohmsCouldPassForMegohmsOnlyWhereMoreIsAlwaysBetter() throws Exception {
    StepModel step = at("heater-insulation").step();
    assertThat(step.isOpenAbove("lead-a-ball")).isTrue();
    assertThat(step.isOpenAbove("lead-to-lead")).isFalse();
    step.open("prove-meter");
    assertThat(step.isOpenAbove("meter-proof-1")).isFalse();
  }

  @Test
  void movingGoesToTheNextStepAndBack() throws Exception {
    Bench bench = at("weigh-blanks");
    bench.step().move(1);
    String after = bench.step().stepId();
    assertThat(after).isNotEqualTo("weigh-blanks");
    bench.quiet().answer(); // that the step was opened is written
    bench.step().move(-1);
    bench.quiet().answer();
    assertThat(bench.step().stepId()).isEqualTo("weigh-blanks");
  }
}
