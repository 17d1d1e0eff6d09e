package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.record.HoldInstrument;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.report.card.StepCard;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Act;
import faintwind.ui.part.GateList;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StepModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private int opened;

  private record Bench(Quiet quiet, OpenInstrument instrument, StepModel step) {}

  private Bench at(String step) throws IOException {
    return of(Cellar.begin("Rind 1").design().before(step).open(step));
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
  void behindAClosedGateNeitherInstructionNorDrawingIsShown() throws Exception {
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument =
        quiet.open(Cellar.begin("Rind 1").design().open("first-power").into(folder, "r"));
    StepView locked = new StepModel(quiet.desk(), instrument, () -> {}).view().get();
    assertThat(locked.instruction().covered()).isTrue();
    assertThat(locked.aside().picture()).isEmpty();
    StepView open = at("weigh-blanks").step().view().get();
    assertThat(open.aside().picture().orElseThrow().file()).isEqualTo("weigh-blanks.svg");
  }

  @Test
  void theFirstStepOfAStageSaysWhatTheStageTakes() throws Exception {
    assertThat(at("ready-workplace").step().view().get().aside().cards())
        .extracting(StepCard::title)
        .containsExactly("This stage: Make the balls", "Drilling card");
    assertThat(at("weigh-blanks").step().view().get().aside().cards())
        .extracting(StepCard::title)
        .containsExactly("What the balls should weigh");
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
    assertThat(bench.step().whyNotWaived("lead-a-ball", " ", ""))
        .startsWith("Write your name.", "Write why it is safe to go on.")
        .hasSize(3); // and that it was not measured
    assertThat(bench.step().whyNotWaived("lead-a-ball", "Ida", "x"))
        .first()
        .satisfies(why -> assertThat(why).contains("Lead A to heated ball", "\"x\""));
    assertThat(bench.instrument().state().standing(Waived.class)).isEmpty();
  }

  @Test
  void ohmsCouldPassForMegohmsOnlyWhereMoreIsAlwaysBetter() throws Exception {
    Bench bench = at("heater-insulation");
    StepModel step = bench.step();
    assertThat(step.isOpenAbove("lead-a-ball")).isTrue();
    assertThat(step.isOpenAbove("lead-to-lead")).isFalse();
    step.open("prove-meter");
    bench.quiet().answer();
    assertThat(step.isOpenAbove("meter-proof-1")).isFalse();
  }

  @Test
  void whileAClockRunsWhatCanBeDoneMeanwhileIsOffered() throws Exception {
    Bench bench =
        of(
            Cellar.begin("Rind 1")
                .design()
                .before("coat-parts")
                .open("coat-parts")
                .cautions("coat-parts")
                .clock("coat-parts", 24 * 3600, 21 * 60));
    StepModel step = bench.step();
    assertThat(step.next().get().mark()).isEqualTo(Mark.WAITING);
    assertThat(step.next().get().sentence()).contains("3 h");
    assertThat(step.next().get().detail()).startsWith("Meanwhile: ");
    Act meanwhile = step.next().get().others().get(0);
    assertThat(meanwhile.id()).isEqualTo("go-on");
    meanwhile.run().run();
    assertThat(step.stepId()).isNotEqualTo("coat-parts");
    assertThat(step.next().get().mark()).isNotEqualTo(Mark.WAITING);
    bench.quiet().answer();
  }

  @Test
  void aStepThatIsNotNeededStopsNobody() throws Exception {
    StepModel step =
        of(Cellar.begin("Rind 1").design().before("plating-inspect").open("plating-order")).step();
    assertThat(step.next().get().sentence())
        .isEqualTo("This step is not needed for your instrument.");
    assertThat(step.next().get().act().orElseThrow().id()).isEqualTo("go-on");
  }

  /** The last step is of the field, and the field comes after it: one way there is enough. */
  @Test
  void afterTheLastStepTheFieldIsOfferedOnce() throws Exception {
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument = quiet.open(Cellar.shipped(folder, "whole"));
    StepModel step = new StepModel(quiet.desk(), instrument, () -> {});
    step.open("care");
    quiet.answer();
    assertThat(step.next().get().sentence()).isEqualTo("Every step is finished.");
    assertThat(step.next().get().act()).map(Act::id).contains("open-place-field");
    assertThat(step.next().get().others()).extracting(Act::id).doesNotContain("open-place-field");
  }

  /** "ends 17:30" would be read as the day of the start, which is told with its date. */
  @Test
  void aClockOfYesterdayIsToldWithTheDayOfItsEnd() throws Exception {
    StepModel step =
        of(Cellar.begin("Rind 1")
                .design()
                .before("coat-parts")
                .open("coat-parts")
                .cautions("coat-parts")
                .clock("coat-parts", 24 * 3600, 21 * 60))
            .step();
    assertThat(step.view().get().aside().clock().orElseThrow().about())
        .startsWith("Started 20 November 2026, 17:30, ends 21 November 2026, 17:30.");
  }

  private Bench of(Cellar cellar) throws IOException {
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument = quiet.open(cellar.into(folder, "r" + opened++));
    return new Bench(quiet, instrument, new StepModel(quiet.desk(), instrument, () -> {}));
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

  /** The second coat is closed itself, and so are all steps before it up to one that says stop. */
  @Test
  void theWayToWhatIsMissingLeadsToTheFirstStepAtWhichSomethingCanBeDone() throws Exception {
    Bench bench =
        of(
            Cellar.begin("Rind 1")
                .design()
                .before("glue-heater")
                .type("heater-alone", "heater-alone", "150")
                .open("coats-on-plate"));
    Next next = bench.step().next().get();
    assertThat(bench.step().view().get().outcome().missing())
        .extracting(GateList.Missing::text)
        .first()
        .isEqualTo("Give the second coat");
    assertThat(next.sentence()).isEqualTo("First: Measure the resistor alone");
    assertThat(next.mark()).isEqualTo(Mark.BLOCKED);
    assertThat(next.detail()).isEqualTo("\"Give the second coat\" waits for it.");
    next.act().orElseThrow().run().run();
    assertThat(bench.step().stepId()).isEqualTo("heater-alone");
    bench.quiet().answer();
  }

  @Test
  void whereAllThatIsMissingWaitsForAClockTheTimeLeftIsTold() throws Exception {
    StepModel step =
        of(Cellar.begin("Rind 1")
                .design()
                .before("coat-parts")
                .cautions("coat-parts")
                .clock("coat-parts", 24 * 3600, 21 * 60)
                .open("coats-on-plate"))
            .step();
    assertThat(step.next().get().sentence()).isEqualTo("First: Coat junctions and leads");
    assertThat(step.next().get().mark()).isEqualTo(Mark.WAITING);
    assertThat(step.next().get().detail()).isEqualTo("Its clock runs: 3 h to go.");
    assertThat(step.next().get().act()).map(Act::id).contains("go-to-missing");
  }

  /** Of a gate it is told what is locked; the button names the step that opens it. */
  @Test
  void behindAGateTheFirstStepThatOpensItIsNamed() throws Exception {
    Bench bench =
        of(
            Cellar.begin("Rind 1")
                .design()
                .before("first-power")
                .type("heater-insulation", "lead-a-ball", "5M"));
    WayThere way = new WayThere(bench.quiet().desk().words(), id -> {});
    var locked = new GateList.Missing("zero-check", "Heater power is locked.", Mark.BLOCKED);
    Next next = way.of(bench.instrument().now().get(), List.of(locked));
    assertThat(next.sentence()).isEqualTo("First: Measure the heater against its ball");
    assertThat(next.detail()).isEqualTo("Heater power is locked.");
  }
}
