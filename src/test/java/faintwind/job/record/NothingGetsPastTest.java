package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.Gate;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Meters;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tries to get past every caution and every stop of every step in each way that the jobs offer.
 * Only reading the caution itself, by name, gets past it.
 */
class NothingGetsPastTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final List<JournalEntry> WHOLE = SampleBuild.complete(CHECKLIST);
  private static final Clock CLOCK =
      Clock.fixed(SampleBuild.LATER.toInstant(), SampleBuild.LATER.getOffset());

  private static final String STEP = "loop-insulation";
  private static final String WORDY = "the borrowed meter had to go back";

  @TempDir Path folder;
  private final AtomicInteger ids = new AtomicInteger();

  private interface Way {
    Checked<JournalEntry> attempt(Enter enter) throws IOException;
  }

  static Stream<Arguments> cautions() {
    return CHECKLIST.steps().stream()
        .flatMap(step -> step.cautions().stream().map(c -> Arguments.of(step.id(), c.id())));
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

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("cautions")
  void aCautionIsPassedOnlyByReadingItByName(String stepId, String caution) throws IOException {
    Step step = CHECKLIST.step(stepId).orElseThrow();
    Event read = new CautionAcknowledged(caution);
    begin(e -> e.step().filter(stepId::equals).isPresent() && e.event().equals(read));
    List<Way> ways = new ArrayList<>(anyStep(step, caution));
    for (Standing<? extends Event> other : state().lines()) {
      if (other.inStep(stepId)) {
        ways.add(e -> e.correct(other.entry(), "in a hurry", Optional.of(read)));
      }
    }
    assertThat(reasons(step, ways)).contains("gate.caution");
    assertThat(enter("  ").acknowledge(stepId, caution).isOk()).isFalse();
    assertThat(enter("Ada Test").acknowledge(stepId, caution).isOk()).isTrue();
    assertThat(reasons(step, List.of())).doesNotContain("gate.caution");
  }

  @ParameterizedTest(name = "{0}: {1} = {2}")
  @MethodSource("stops")
  void anAnswerThatStopsIsPassedOnlyByAnotherAnswer(String stepId, String question, String choice)
      throws IOException {
    Step step = CHECKLIST.step(stepId).orElseThrow();
    begin(e -> false);
    assertThat(enter("Ada Test").answer(stepId, question, choice).isOk()).isTrue();
    List<Way> ways = new ArrayList<>(anyStep(step, question));
    for (Standing<? extends Event> other : state().lines()) {
      boolean answer = other.event() instanceof QuestionAnswered;
      if (!answer) {
        Event kind = new QuestionAnswered(question, otherChoice(step, question, choice));
        ways.add(e -> e.correct(other.entry(), "in a hurry", Optional.of(kind)));
      }
    }
    assertThat(reasons(step, ways)).contains("gate.answer-stops");
  }

  private static String otherChoice(Step step, String question, String choice) {
    return step.asks().questions().stream()
        .filter(q -> q.id().equals(question))
        .flatMap(q -> q.choices().stream())
        .map(Question.Choice::id)
        .filter(id -> !id.equals(choice))
        .findFirst()
        .orElseThrow();
  }

  /** Whatever can be entered without reading a caution or changing an answer. */
  private static List<Way> anyStep(Step step, String what) {
    List<Way> ways = new ArrayList<>();
    String id = step.id();
    ways.add(e -> e.finish(id));
    ways.add(e -> e.waive(id, what, "in a hurry"));
    for (String all : List.of("", "*", "all", "caution", "cautions", "question", "gate", id)) {
      ways.add(e -> e.waive(id, all, "in a hurry"));
      ways.add(e -> e.acknowledge(id, all));
    }
    for (Step other : CHECKLIST.steps()) {
      if (!other.id().equals(id)) {
        ways.add(e -> e.acknowledge(other.id(), what));
        ways.add(e -> e.waive(other.id(), what, "in a hurry"));
      }
    }
    for (Caution other : step.cautions()) {
      ways.add(e -> e.waive(id, other.id(), "in a hurry"));
    }
    step.asks().readings().forEach(r -> ways.add(e -> e.waive(id, r.id(), "in a hurry")));
    step.asks().clock().ifPresent(c -> ways.add(e -> e.waive(id, c.id(), "in a hurry")));
    step.asks().clock().ifPresent(c -> ways.add(e -> e.startClock(id)));
    ways.add(e -> e.waive(id, "photo", "in a hurry"));
    ways.add(e -> e.confirmTime(id));
    ways.add(e -> e.open(id));
    ways.add(e -> e.meter("simple-2000-counts"));
    ways.add(e -> e.plain(Optional.of(id), new Event.NoteWritten("all cautions were read")));
    ways.add(e -> e.finish(id));
    return ways;
  }

  @Test
  void whatHasRulesOfItsOwnCannotBeWrittenPlainly() throws IOException {
    begin(e -> false);
    Enter enter = enter("Ada Test");
    for (Event event :
        List.of(
            new CautionAcknowledged("solder"),
            new StepFinished(),
            new Waived("lead-a-ball", "in a hurry"),
            new QuestionAnswered("sheet", "none"),
            new ReadingEntered(
                "lead-a-ball", "OL", SampleBuild.amount("OL", "MΩ"), Optional.empty()),
            new Event.ClockStarted("coat-cure", 0),
            new Event.ClockConfirmed("coat-cure"),
            new Event.Corrected("e1", "in a hurry", Optional.empty()))) {
      assertThatThrownBy(() -> enter.plain(Optional.of("coat-parts"), event))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-power",
        "sense-check",
        "breath-check",
        "warm-up-run",
        "spin-runs",
        "jar-check"
      })
  void noStepThatHeatsCanBeginWhileHeaterPowerIsLocked(String stepId) throws IOException {
    begin(e -> e.event() instanceof ReadingEntered r && r.reading().equals("loop-heated-ball"));
    Step step = CHECKLIST.step(stepId).orElseThrow();
    assertThat(Gate.check(CHECKLIST, Gate.HEATER_POWER, situation()).open()).isFalse();
    assertThat(Gate.toBegin(CHECKLIST, step, situation()).open()).isFalse();
    assertThat(enter("Ada Test").finish(stepId).isOk()).isFalse();
  }

  @Test
  void aReadingThatWasNotTakenCannotBeWaived() throws IOException {
    begin(e -> e.event() instanceof ReadingEntered r && r.reading().equals("loop-heated-ball"));
    assertThat(waive("Ada Test", WORDY)).containsExactly("waiver.not-taken");
    assertThat(waive("x", "x"))
        .containsExactly("waiver.no-name", "waiver.no-reason", "waiver.not-taken");
  }

  @Test
  void aReadingThatSaysStopCannotBeWaived() throws IOException {
    begin(e -> false);
    enter("Ada Test").reading(STEP, "loop-heated-ball", "420k");
    assertThat(waive("Ada Test", WORDY)).containsExactly("waiver.of-a-stop");
  }

  @Test
  void aDoubtfulReadingIsWaivedByNameAndReason() throws IOException {
    begin(e -> false);
    enter("Ada Test").reading(STEP, "loop-heated-ball", "6M");
    assertThat(waive("", WORDY)).containsExactly("waiver.no-name");
    assertThat(waive("Ada Test", "x")).containsExactly("waiver.no-reason");
    assertThat(waive("Ada Test", WORDY)).isEmpty();
    assertThat(enter("Ada Test").finish(STEP).isOk()).isTrue();
    enter("Ada Test").reading("joined-check", "meter-proof-after", "1.0");
    assertThat(enter("Ada Test").finish("joined-check").isOk()).isTrue();
    assertThat(Gate.check(CHECKLIST, Gate.HEATER_POWER, situation()).reasons()).isEmpty();
  }

  @Test
  void inAClassroomOnlyTheTeacherWaives() throws IOException {
    begin(e -> e.event() instanceof QuestionAnswered q && q.question().equals("group"));
    enter("Mr Teach").answer("choose-use", "group", "yes");
    enter("Pip Pupil").reading(STEP, "loop-heated-ball", "6M");
    assertThat(waive("Pip Pupil", WORDY)).containsExactly("waiver.not-the-teacher");
    assertThat(waive("Mr Teach", WORDY)).isEmpty();
    List<String> early =
        enter("Pip Pupil").waive("check-parts", "diameter-a", WORDY).problems().stream()
            .map(Problem::id)
            .toList();
    assertThat(early).as("no gate stands on it").containsExactly("waiver.not-the-teacher");
    assertThat(enter("Mr Teach").waive("check-parts", "diameter-a", WORDY).isOk()).isTrue();
  }

  private List<String> waive(String who, String reason) throws IOException {
    return enter(who).waive(STEP, "loop-heated-ball", reason).problems().stream()
        .map(Problem::id)
        .toList();
  }

  // ---- the folder ----

  private void begin(Predicate<JournalEntry> without) throws IOException {
    List<JournalEntry> entries = new ArrayList<>(WHOLE);
    entries.removeIf(without);
    InstrumentFolder.create(folder.resolve("rind"), entries.get(0));
    new InstrumentFolder(folder.resolve("rind")).append(entries.subList(1, entries.size()));
  }

  private InstrumentState state() throws IOException {
    return new InstrumentFolder(folder.resolve("rind")).open().state();
  }

  private InstrumentView view() throws IOException {
    return new InstrumentView(
        folder.resolve("rind"),
        CHECKLIST,
        state(),
        List.of(new Situation.DatedSheet(SampleBuild.BEGIN, SampleBuild.sheet())),
        true,
        List.of(),
        Meters.NONE);
  }

  private Situation situation() throws IOException {
    return view().situation(SampleBuild.LATER);
  }

  private Enter enter(String who) throws IOException {
    return new Enter(view(), CLOCK, new Enter.Person(who, () -> "n" + ids.incrementAndGet()));
  }

  /** What is still missing after all those attempts, none of which may finish the step. */
  private List<String> reasons(Step step, List<Way> ways) throws IOException {
    Enter enter = enter("Ada Test");
    for (Way way : ways) {
      Checked<JournalEntry> written = way.attempt(enter);
      boolean finished =
          written instanceof Checked.Ok<JournalEntry> ok
              && ok.value().event() instanceof StepFinished;
      assertThat(finished).isFalse();
    }
    return Gate.toFinish(CHECKLIST, step, situation()).reasons().stream().map(Problem::id).toList();
  }
}
