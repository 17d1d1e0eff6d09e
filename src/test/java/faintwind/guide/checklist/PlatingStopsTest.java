package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Gate;
import faintwind.guide.Situation;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tries to reach the home bath by every way that must stay shut. */
class PlatingStopsTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final List<String> HOME =
      List.of("plating-home-solution", "plating-home-cautions");

  private final List<JournalEntry> entries = new ArrayList<>();
  private Map<OutcomeId, Interval> design = Map.of();

  PlatingStopsTest() {
    // A sound build up to plating, then the way to the bath at home with every question answered.
    for (JournalEntry entry : SampleBuild.complete(CHECKLIST)) {
      if (entry.step().filter(id -> id.startsWith("plating-")).isPresent()) {
        break;
      }
      entries.add(entry);
    }
    answer("plating-needed", "needed", "yes");
    finish("plating-needed");
    answer("plating-who", "who", "home");
    answer("plating-who", "who-is-there", "no");
    finish("plating-who");
    answer("plating-home-solution", "data-sheet", "yes");
    answer("plating-home-solution", "cyanide", "no");
    answer("plating-home-solution", "acid-bench", "no");
    answer("plating-home-solution", "bath", "bought");
    answer("plating-home-solution", "metal", "copper");
    HOME.forEach(this::readAllCautions);
    HOME.forEach(this::finish);
  }

  private void answer(String step, String question, String choice) {
    entries.add(
        SampleBuild.entry("a" + entries.size(), step, new QuestionAnswered(question, choice)));
  }

  private void finish(String step) {
    entries.add(SampleBuild.entry("f" + entries.size(), step, new StepFinished()));
  }

  private void readAllCautions(String id) {
    for (Caution caution : CHECKLIST.step(id).orElseThrow().cautions()) {
      String entry = "c" + entries.size();
      entries.add(SampleBuild.entry(entry, id, new CautionAcknowledged(caution.id())));
    }
  }

  private Situation situation() {
    return new Situation(
        InstrumentState.replay(entries),
        List.of(new Situation.DatedSheet(SampleBuild.BEGIN, SampleBuild.sheet(design))),
        SampleBuild.LATER);
  }

  private Gate.Answer gate() {
    return Gate.check(CHECKLIST, Gate.HOME_PLATING, situation());
  }

  private List<String> toBegin(String step) {
    return Gate.toBegin(CHECKLIST, CHECKLIST.step(step).orElseThrow(), situation())
        .reasons()
        .stream()
        .map(Problem::id)
        .toList();
  }

  private void assertShut() {
    assertThat(gate().open()).isFalse();
    assertThat(toBegin("plating-home-nickel")).contains("gate.closed.home-plating");
    assertThat(toBegin("plating-home-gold")).contains("gate.closed.home-plating");
  }

  @Test
  void theWayIsOpenOnlyWithEveryAnswerAndEveryCaution() {
    assertThat(gate().reasons()).isEmpty();
    assertThat(toBegin("plating-home-nickel")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "plating-who, who-is-there, yes",
    "plating-home-solution, data-sheet, no",
    "plating-home-solution, cyanide, yes",
    "plating-home-solution, acid-bench, yes",
    "plating-home-solution, bath, own",
    "plating-home-solution, metal, aluminium"
  })
  void oneAnswerThatStopsShutsTheWayAndNoWaiverOpensIt(
      String step, String question, String choice) {
    answer(step, question, choice);
    entries.add(SampleBuild.entry("w", step, new Waived(question, "in a hurry")));
    assertShut();
  }

  @Test
  void aClassroomSaidAtTheVeryBeginningShutsTheWayMuchLater() {
    answer("choose-use", "group", "yes");
    assertShut();
    assertThat(reasons("plating-who")).anyMatch(text -> text.contains("young people"));
  }

  @Test
  void aLightMetalInTheDesignShutsTheWayWhateverIsAnswered() {
    // 12.7 mm of aluminium weigh 2.9 g: 2.7 g/cm³ · π/6 · (1.27 cm)³
    design = Map.of(OutcomeId.BALL_MASS, Interval.exact(2.9));
    assertShut();
    assertThat(reasons("plating-who")).anyMatch(text -> text.contains("light metal"));
  }

  @Test
  void eachCautionByItselfKeepsTheWayShut() {
    for (String id : HOME) {
      for (Caution caution : CHECKLIST.step(id).orElseThrow().cautions()) {
        List<JournalEntry> all = List.copyOf(entries);
        entries.removeIf(
            e ->
                e.step().equals(Optional.of(id))
                    && e.event().equals(new CautionAcknowledged(caution.id())));
        assertThat(entries).as(caution.id()).hasSizeLessThan(all.size());
        assertThat(gate().open()).as(caution.id()).isFalse();
        entries.clear();
        entries.addAll(all);
      }
    }
  }

  @Test
  void everyPageOfTheStageSaysLocalRulesFirst() {
    Stage stage =
        CHECKLIST.stages().stream()
            .filter(s -> s.id().equals("03-plating"))
            .findFirst()
            .orElseThrow();
    assertThat(stage.banner()).contains("Local rules and a licensed plater come first");
    assertThat(stage.steps())
        .allSatisfy(
            step -> assertThat(step.text().why()).startsWith("Local rules and a licensed plater"));
  }

  @Test
  void everyCautionOfPlatingNamesItsSourceOrSaysThatThereIsNone() {
    assertThat(CHECKLIST.steps())
        .flatExtracting(Step::cautions)
        .allSatisfy(caution -> assertThat(caution.source()).isNotBlank());
  }

  private List<String> reasons(String step) {
    return Gate.toFinish(CHECKLIST, CHECKLIST.step(step).orElseThrow(), situation())
        .reasons()
        .stream()
        .map(Problem::found)
        .toList();
  }
}
