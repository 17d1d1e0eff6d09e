package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AgendaTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private final List<JournalEntry> entries = new ArrayList<>();

  private Agenda agenda() {
    Situation situation = SampleBuild.after(entries);
    return Agenda.of(CHECKLIST, Progress.of(CHECKLIST, situation));
  }

  private static List<String> ids(List<StepProgress> steps) {
    return steps.stream().map(step -> step.step().id()).toList();
  }

  private static List<String> until(Agenda agenda, String id) {
    return agenda.later().stream()
        .filter(later -> later.step().step().id().equals(id))
        .map(later -> ids(later.until()))
        .findFirst()
        .orElseThrow();
  }

  /** Every entry of a sound build before a step. */
  private void soundUpTo(String id) {
    for (JournalEntry entry : SampleBuild.complete(CHECKLIST)) {
      if (entry.step().filter(id::equals).isPresent()) {
        return;
      }
      entries.add(entry);
    }
  }

  @Test
  void atTheBeginningEverythingComesDownToTheFirstStep() {
    Agenda agenda = agenda();
    assertThat(ids(agenda.now())).containsExactly("choose-use");
    assertThat(agenda.later())
        .allSatisfy(later -> assertThat(ids(later.until())).containsExactly("choose-use"));
  }

  @Test
  void everyStepStandsInOnePlaceOrIsSettled() {
    soundUpTo("coat-parts");
    Progress progress = Progress.of(CHECKLIST, SampleBuild.after(entries));
    Agenda agenda = Agenda.of(CHECKLIST, progress);
    List<String> placed =
        Stream.of(
                ids(agenda.now()),
                ids(agenda.waiting()),
                ids(agenda.later().stream().map(Agenda.Later::step).toList()))
            .flatMap(List::stream)
            .toList();
    List<String> open =
        progress.steps().stream()
            .filter(step -> !step.state().settled())
            .map(step -> step.step().id())
            .toList();
    assertThat(placed).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(open);
  }

  @Test
  void whatWaitsForAClockIsToldApartFromWhatWaitsForIt() {
    soundUpTo("coat-parts");
    Step coat = CHECKLIST.step("coat-parts").orElseThrow();
    coat.cautions()
        .forEach(
            c ->
                entries.add(
                    SampleBuild.entry(
                        "c-" + c.id(),
                        "coat-parts",
                        new faintwind.record.Event.CautionAcknowledged(c.id()))));
    entries.add(SampleBuild.entry("clock", "coat-parts", new ClockStarted("coat-cure", 86_400)));
    Agenda agenda = agenda();
    assertThat(ids(agenda.waiting())).containsExactly("coat-parts");
    assertThat(until(agenda, "coats-on-plate")).containsExactly("coat-parts");
    assertThat(until(agenda, "first-power")).contains("coat-parts");
  }

  @Test
  void aReadingThatSaysStopHoldsUpWhatComesAfterIt() {
    entries.addAll(SampleBuild.complete(CHECKLIST));
    entries.add(
        SampleBuild.entry(
            "bad",
            "heater-insulation",
            new ReadingEntered(
                "lead-a-ball", "420k", SampleBuild.amount("420k", "MΩ"), Optional.empty())));
    Agenda agenda = agenda();
    assertThat(until(agenda, "heater-insulation")).containsExactly("heater-insulation");
    assertThat(until(agenda, "first-power")).containsExactly("heater-insulation");
  }

  @Test
  void aCompleteBuildLeavesNothingToDo() {
    entries.addAll(SampleBuild.complete(CHECKLIST));
    assertThat(agenda()).isEqualTo(new Agenda(List.of(), List.of(), List.of()));
    assertThat(InstrumentState.replay(entries).standing(StepFinished.class)).isNotEmpty();
  }
}
