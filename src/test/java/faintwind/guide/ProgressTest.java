package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Situation.DatedSheet;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private final List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));

  private StepState state(String step) {
    return progress().step(step).orElseThrow().state();
  }

  private Progress progress() {
    return Progress.of(CHECKLIST, SampleBuild.after(entries));
  }

  private static ReadingEntered reading(String id, String typed, String unit) {
    return new ReadingEntered(id, typed, SampleBuild.amount(typed, unit), Optional.empty());
  }

  private String entryOf(String reading) {
    return entries.stream()
        .filter(e -> e.event() instanceof ReadingEntered r && r.reading().equals(reading))
        .findFirst()
        .orElseThrow()
        .id();
  }

  @Test
  void aCompleteBuildIsDoneAndPlatingWasNotNeeded() {
    for (Progress.StepProgress step : progress().steps()) {
      assertThat(step.state().settled()).as(step.step().id() + step.reasons()).isTrue();
    }
    assertThat(state("plating-order")).isEqualTo(StepState.NOT_NEEDED);
    assertThat(progress().next()).isEmpty();
  }

  @Test
  void atTheBeginningOnlyWhatNeedsNothingIsReady() {
    entries.clear();
    List<String> ready =
        progress().steps().stream()
            .filter(s -> s.state() == StepState.READY)
            .map(s -> s.step().id())
            .toList();
    assertThat(ready).containsExactly("choose-use");
    entries.add(SampleBuild.entry("o", "choose-use", new StepOpened()));
    assertThat(state("choose-use")).isEqualTo(StepState.DOING);
    assertThat(progress().next().orElseThrow().step().id()).isEqualTo("choose-use");
  }

  @Test
  void aReadingThatStopsBlocksItsStepAndWhatNeedsIt() {
    entries.add(SampleBuild.entry("x", "heater-insulation", reading("lead-a-ball", "420k", "MΩ")));
    assertThat(state("heater-insulation")).isEqualTo(StepState.BLOCKED);
    assertThat(state("glue-junctions")).isEqualTo(StepState.BLOCKED);
    assertThat(state("glue-heater")).isEqualTo(StepState.DONE);
  }

  @Test
  void aRunningClockWaits() {
    entries.add(
        SampleBuild.entry("c", "glue-junctions", new Event.ClockStarted("junction-cure", 86_400)));
    Progress.StepProgress step = progress().step("glue-junctions").orElseThrow();
    assertThat(step.state()).isEqualTo(StepState.WAITING);
    assertThat(step.clock().orElseThrow().left_s()).isEqualTo(82_800);
  }

  @Test
  void aWaiverNeedsAttentionAndLetsOthersGoOn() {
    entries.add(SampleBuild.entry("x", "heater-insulation", reading("lead-a-ball", "6 M", "MΩ")));
    entries.add(
        SampleBuild.entry("w", "heater-insulation", new Waived("lead-a-ball", "for show only")));
    assertThat(progress().next().orElseThrow().step().id()).isEqualTo("heater-insulation");
    entries.add(SampleBuild.entry("f", "heater-insulation", new StepFinished()));
    entries.add(SampleBuild.entry("p", "joined-check", reading("meter-proof-after", "1.0", "MΩ")));
    entries.add(SampleBuild.entry("g", "joined-check", new StepFinished()));
    assertThat(state("heater-insulation")).isEqualTo(StepState.NEEDS_ATTENTION);
    assertThat(state("glue-junctions")).isEqualTo(StepState.DONE);
    assertThat(progress().next()).isEmpty();
  }

  @Test
  void aCorrectedReadingLeavesItsTraceAndDoubtsWhatRestsOnIt() {
    Corrected slip =
        new Corrected(
            entryOf("heater-alone"),
            "typed for another resistor",
            Optional.of(reading("heater-alone", "99.8", "Ω")));
    entries.add(SampleBuild.entry("k", "heater-alone", slip));
    assertThat(state("heater-alone")).isEqualTo(StepState.NEEDS_ATTENTION);
    entries.add(SampleBuild.entry("h", "heater-alone", new StepFinished()));
    assertThat(state("heater-alone")).isEqualTo(StepState.CORRECTED);
    Progress.StepProgress later = progress().step("coats-on-plate").orElseThrow();
    assertThat(later.state()).isEqualTo(StepState.NEEDS_ATTENTION);
    assertThat(later.doubts().stream().map(Problem::id)).containsExactly("doubt.corrected-before");
    assertThat(state("weigh-drilled")).isEqualTo(StepState.DONE);
    entries.add(
        new JournalEntry(
            "f", SampleBuild.LATER, "Ada Test", Optional.of("coats-on-plate"), new StepFinished()));
    assertThat(state("coats-on-plate")).isEqualTo(StepState.DONE);
  }

  @Test
  void aChangedDesignDoubtsExactlyTheStepsThatUsedTheChangedNumbers() {
    DatedSheet before = new DatedSheet(SampleBuild.BEGIN, SampleBuild.sheet());
    DatedSheet after =
        new DatedSheet(
            SampleBuild.LATER.minusHours(2),
            SampleBuild.sheet(Map.of(OutcomeId.BORE, Interval.exact(3.2))));
    Situation situation =
        new Situation(InstrumentState.replay(entries), List.of(before, after), SampleBuild.LATER);
    Progress progress = Progress.of(CHECKLIST, situation);
    Progress.StepProgress drill = progress.step("drill-heated").orElseThrow();
    assertThat(drill.doubts().get(0).found()).isEqualTo("bore_mm");
    assertThat(drill.state()).isEqualTo(StepState.NEEDS_ATTENTION);
    assertThat(progress.step("weigh-blanks").orElseThrow().doubts()).isEmpty();
  }

  @Test
  void aStepThatSaysStopPressesBeforeTheNextOne() {
    assertThat(Pressing.of(progress())).isEmpty();
    entries.add(SampleBuild.entry("x", "heater-insulation", reading("lead-a-ball", "420k", "MΩ")));
    assertThat(Pressing.of(progress()).orElseThrow().step().id()).isEqualTo("heater-insulation");
    entries.removeIf(
        e -> e.event() instanceof StepFinished && e.step().equals(Optional.of("choose-design")));
    assertThat(progress().next().orElseThrow().step().id()).isEqualTo("choose-design");
    assertThat(Pressing.of(progress()).orElseThrow().step().id()).isEqualTo("heater-insulation");
  }

  @Test
  void aStepIsNeededUnlessAnAnswerMadeItNeedless() {
    assertThat(progress().needs(CHECKLIST.step("choose-use").orElseThrow())).isTrue();
    assertThat(progress().needs(CHECKLIST.step("plating-order").orElseThrow())).isFalse();
  }

  /** Five are the fewest that a control chart takes (ControlChart); the unit is the reading's. */
  @Test
  void aReadingTakenFiveTimesHasATrend() {
    String[] typed = {"29.1", "29.2", "29300 mK", "29.4"};
    for (int i = 0; i < typed.length; i++) {
      assertThat(trend()).isEmpty();
      entries.add(SampleBuild.entry("j" + i, "jar-check", reading("jar-delta", typed[i], "K")));
    }
    assertThat(trend()).contains(List.of(29.4, 29.1, 29.2, 29.3, 29.4));
  }

  private Optional<List<Double>> trend() {
    var reading = CHECKLIST.step("jar-check").orElseThrow().reading("jar-delta").orElseThrow();
    return ReadingTrend.of("jar-check", reading, InstrumentState.replay(entries))
        .map(trend -> trend.chart().values());
  }
}
