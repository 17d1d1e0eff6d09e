package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Repaired;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A reading shows something only of what stood when it was taken. */
class VoidsTest {
  private static final OffsetDateTime BEGIN = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private final Checklist checklist = ShippedChecklist.standard();
  private final List<JournalEntry> entries = new ArrayList<>();
  private OffsetDateTime now = BEGIN;

  private void enter(String step, Event event) {
    now = now.plusMinutes(1);
    String id = "e" + entries.size();
    entries.add(new JournalEntry(id, now, "Ida", Optional.of(step), event));
  }

  private void finish(String... steps) {
    for (String step : steps) {
      enter(step, new StepFinished());
    }
  }

  private void read(String step, String reading, String unit) {
    enter(
        step,
        new ReadingEntered(
            reading, "OL", Amount.overRange(unit), Optional.of(ReadingVerdict.GOOD)));
  }

  private InstrumentState state() {
    return Voids.applied(checklist, InstrumentState.replay(entries));
  }

  private List<String> causes(String step, String reading) {
    return state().history(step, reading).stream()
        .map(line -> line.voidCause().map(Problem::id).orElse("stands"))
        .toList();
  }

  @Test
  void aReadingOfAStepThatWasReachedStands() {
    finish("glue-heater");
    read("heater-insulation", "lead-a-ball", "MΩ");
    assertThat(causes("heater-insulation", "lead-a-ball")).containsExactly("stands");
    assertThat(state()).isEqualTo(InstrumentState.replay(entries));
  }

  @Test
  void aReadingTypedBeforeItsStepWasReachedIsVoidAlsoWhenItIsReachedLater() {
    read("heater-insulation", "lead-a-ball", "MΩ");
    finish("glue-heater");
    assertThat(causes("heater-insulation", "lead-a-ball")).containsExactly("void.too-early");
    assertThat(state().reading("heater-insulation", "lead-a-ball")).isEmpty();
    read("heater-insulation", "lead-a-ball", "MΩ");
    assertThat(causes("heater-insulation", "lead-a-ball"))
        .containsExactly("void.too-early", "stands");
  }

  @Test
  void aReadingBehindAGateIsVoidBeforeTheStepsThatOpenIt() {
    finish("zero-check");
    read("first-power", "supply-volts", "V");
    assertThat(causes("first-power", "supply-volts")).containsExactly("void.too-early");
  }

  @Test
  void aReadingTypedWhileTheClockRunsIsVoid() {
    finish("field-cautions");
    checklist.stepsOfGate(Gate.HEATER_POWER).forEach(step -> finish(step.id()));
    read("jar-check", "jar-delta", "K");
    enter("jar-check", new ClockStarted("jar", 3600));
    read("jar-check", "jar-delta", "K");
    now = now.plus(Duration.ofHours(1));
    read("jar-check", "jar-delta", "K");
    assertThat(causes("jar-check", "jar-delta"))
        .containsExactly("void.clock-ran", "void.clock-ran", "stands");
  }

  @Test
  void anEarlierJarCheckStandsOnceTheNextIsRead() {
    finish("field-cautions");
    checklist.stepsOfGate(Gate.HEATER_POWER).forEach(step -> finish(step.id()));
    for (String expected : List.of("stands", "stands,stands", "stands,stands,stands")) {
      enter("jar-check", new ClockStarted("jar", 3600));
      List<String> meanwhile = causes("jar-check", "jar-delta");
      assertThat(meanwhile.isEmpty() || meanwhile.contains("void.undone")).isTrue();
      now = now.plus(Duration.ofHours(1));
      read("jar-check", "jar-delta", "K");
      assertThat(String.join(",", causes("jar-check", "jar-delta"))).isEqualTo(expected);
    }
    enter("jar-check", new Repaired("another reference ball"));
    assertThat(causes("jar-check", "jar-delta")).containsOnly("void.undone");
  }

  @Test
  void aClockThatWasGoneOnWithoutVoidsNothing() {
    finish("field-cautions");
    checklist.stepsOfGate(Gate.HEATER_POWER).forEach(step -> finish(step.id()));
    enter("jar-check", new Waived("jar", "the jar was warm from yesterday"));
    read("jar-check", "jar-delta", "K");
    assertThat(causes("jar-check", "jar-delta")).containsExactly("stands");
  }

  @Test
  void whatWasMeasuredWhileTheEpoxyWasSoftStandsWhenItsClockIsStarted() {
    finish("coats-on-plate", "weigh-drilled", "plating-needed", "plating-inspect");
    read("glue-heater", "lead-a-soft", "MΩ");
    assertThat(causes("glue-heater", "lead-a-soft")).containsExactly("stands");
    enter("glue-heater", new ClockStarted("heater-cure", 86400));
    assertThat(causes("glue-heater", "lead-a-soft")).containsExactly("stands");
    read("glue-heater", "lead-b-soft", "MΩ");
    assertThat(causes("glue-heater", "lead-b-soft")).containsExactly("stands");
  }

  @Test
  void whatWasMeasuredInThePotBeforeIsVoidForTheNextOne() {
    finish("coats-on-plate", "weigh-drilled", "plating-needed", "plating-inspect");
    read("glue-heater", "lead-a-soft", "MΩ");
    enter("glue-heater", new ClockStarted("heater-cure", 86400));
    enter("glue-heater", new ClockStarted("heater-cure", 86400));
    assertThat(causes("glue-heater", "lead-a-soft")).containsExactly("void.undone");
    read("glue-heater", "lead-a-soft", "MΩ");
    enter("glue-heater", new Repaired("a new ball, glued anew"));
    assertThat(causes("glue-heater", "lead-a-soft")).containsExactly("void.undone", "void.undone");
  }

  @Test
  void aSoftReadingIsUndoneByWorkOnAStepBeforeIt() {
    finish("coats-on-plate", "weigh-drilled", "plating-needed", "plating-inspect");
    read("glue-heater", "lead-a-soft", "MΩ");
    enter("glue-heater", new ClockStarted("heater-cure", 86400));
    enter("coat-parts", new ClockStarted("coat-cure", 86400));
    assertThat(causes("glue-heater", "lead-a-soft")).containsExactly("void.undone");
  }

  @Test
  void gluingAgainUndoesWhatWasMeasuredOnTheOldGlue() {
    finish("glue-heater");
    read("heater-insulation", "lead-a-ball", "MΩ");
    enter("glue-heater", new ClockStarted("heater-cure", 86400));
    assertThat(causes("heater-insulation", "lead-a-ball")).containsExactly("void.undone");
  }

  @Test
  void aRepairUndoesTheReadingsThatRestOnItsStepAndNoOthers() {
    finish("glue-heater", "heater-insulation", "glue-junctions", "loop-insulation", "mount-pair");
    finish("set-up-arm", "prove-meter", "polish-and-degrease");
    read("heater-alone", "heater-alone", "Ω");
    read("mounted-check", "loop-mounted", "Ω");
    read("quiet-room", "air-temperature", "°C");
    enter("mount-pair", new Repaired("arm of the pair bent, mounted anew"));
    assertThat(causes("mounted-check", "loop-mounted")).containsExactly("void.undone");
    assertThat(causes("heater-alone", "heater-alone")).containsExactly("stands");
    assertThat(causes("quiet-room", "air-temperature")).containsExactly("stands");
  }

  @Test
  void theOrderOfTheJournalCountsWhateverTheClockOfTheComputerSaid() {
    finish("glue-heater");
    now = now.minusDays(30);
    read("heater-insulation", "lead-a-ball", "MΩ");
    assertThat(causes("heater-insulation", "lead-a-ball")).containsExactly("stands");
  }

  @Test
  void aClockThatRunsOverTheChangeToWinterTimeEndsWhenItsHourIsOver() {
    finish("field-cautions");
    checklist.stepsOfGate(Gate.HEATER_POWER).forEach(step -> finish(step.id()));
    now = OffsetDateTime.parse("2026-10-25T02:29+02:00");
    enter("jar-check", new ClockStarted("jar", 3600));
    now = OffsetDateTime.parse("2026-10-25T02:20+01:00");
    read("jar-check", "jar-delta", "K");
    now = OffsetDateTime.parse("2026-10-25T02:30+01:00");
    read("jar-check", "jar-delta", "K");
    assertThat(causes("jar-check", "jar-delta")).containsExactly("void.clock-ran", "stands");
  }

  @Test
  void aVoidReadingIsStruckInWordsAndMissedAtTheGate() {
    read("heater-insulation", "lead-a-ball", "MΩ");
    finish("glue-heater");
    Standing<ReadingEntered> line = state().history("heater-insulation", "lead-a-ball").get(0);
    assertThat(line.stands()).isFalse();
    assertThat(line.strike().orElseThrow().reason(Messages.of(Locale.ENGLISH)))
        .contains("before its step was reached")
        .contains("Measure again.");
    Situation situation = new Situation(state(), List.of(), now);
    assertThat(
            Gate.toFinish(checklist, checklist.step("heater-insulation").orElseThrow(), situation)
                .reasons())
        .extracting(Problem::id)
        .contains("gate.reading-void");
  }
}
