package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import faintwind.guide.Gate;
import faintwind.guide.checklist.Step;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.InstrumentView;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands about one step keep every rule of the window. */
class StepCommandTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final String WORDY = "the borrowed meter had to go back";

  @TempDir Path temp;
  private Path folder;
  private final Shell shell = new Shell();

  @BeforeEach
  void begin() {
    folder = temp.resolve("Rind ü");
    shell.run("new", folder, "--who", "Ada Test");
  }

  private void copyTheCellar() throws IOException {
    folder = temp.resolve("cellar");
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, folder.resolve(CELLAR.relativize(file).toString()));
      }
    }
  }

  private int step(String id, Object... more) {
    List<Object> words = new ArrayList<>(List.of("step", folder, id, "--who", "Ada Test"));
    words.addAll(List.of(more));
    return shell.run(words.toArray());
  }

  private InstrumentView view() throws IOException {
    return InstrumentView.open(folder, KeptDesigns.withShippedParts()::sheet)
        .fold((view, notes) -> view, problems -> null);
  }

  private int lines() throws IOException {
    return Journal.in(folder).content().entries().size();
  }

  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "no-such-step | --open | 3 | There is no step",
        "first-power | --finish | 3 | Heater power is locked",
        "loop-insulation | --finish | 3 | First finish",
        "choose-design | --finish | 3 | A caution is not read yet",
        "choose-design | --read no-such-caution | 3 | nothing called",
        "choose-design | --read | 2 | --read",
        "choose-design | --read hot-ball --read children | 2 | --read",
        "choose-design | --waive hot-ball --because WORDY | 3 | A caution cannot be waived",
        "choose-design | --waive sheet --because WORDY | 3 | nothing called",
        "choose-design | --answer sheet=perhaps | 3 | nothing called",
        "choose-design | --answer sheet | 2 | QUESTION=CHOICE",
        "choose-design | --answer =none | 2 | QUESTION=CHOICE",
        "choose-design | --open --finish | 2 | --open, --finish",
        "choose-design | --start-clock | 3 | nothing called",
        "choose-design | --tin-hours 12 | 3 | nothing called",
        "coat-parts | --tin-hours 2 | 3 | A time from 4 to 168 h is expected",
        "coat-parts | --tin-hours 200 | 3 | A time from 4 to 168 h is expected",
        "coat-parts | --tin-hours soon | 2 | --tin-hours",
        "choose-design | --time-is-right | 3 | nothing called",
        "heater-insulation | --waive lead-a-ball --because WORDY | 3 | was not measured",
        "drill-heated | --waive photo | 3 | Expected a reason",
        "drill-heated | --waive photo --because xxxxxxxxxxxxxxx | 3 | Expected a reason",
        "drill-heated | --waive heated-depth --because no | 3 | Expected a reason",
        "weigh-blanks | --waive no-reading --because WORDY | 3 | nothing called",
      })
  void nothingGoesRoundARule(String id, String words, int code, String said) throws IOException {
    String[] more = words.split(" ", -1);
    for (int i = 0; i < more.length; i++) {
      more[i] = more[i].replace("WORDY", WORDY);
    }
    assertThat(step(id, (Object[]) more)).as(shell.said()).isEqualTo(code);
    assertThat(shell.said()).contains(said);
    assertThat(lines()).isOne();
  }

  @Test
  void theTimeOnTheTinStartsTheClock() throws IOException {
    assertThat(step("coat-parts")).isZero();
    assertThat(shell.said()).contains("Drying time on the tin, from 4 to 168 h: --tin-hours");
    assertThat(step("coat-parts", "--tin-hours", "36")).as(shell.said()).isZero();
    assertThat(view().state().standing(Event.ClockStarted.class))
        .singleElement()
        .satisfies(clock -> assertThat(clock.event().duration_s()).isEqualTo(36 * 3600));
  }

  @Test
  void noGateOpensWhateverIsTriedInEachStepWithoutItsCautions() throws IOException {
    List<Step> openers =
        view().checklist().steps().stream().filter(s -> s.order().gate().isPresent()).toList();
    for (Step step : openers) {
      step(step.id(), "--start-clock");
      for (var question : step.asks().questions()) {
        step(step.id(), "--answer", question.id() + "=" + question.choices().get(0).id());
      }
      step(step.id(), "--waive", "photo", "--because", WORDY);
      assertThat(step(step.id(), "--finish")).isIn(0, 3);
    }
    for (String gate : List.of(Gate.HEATER_POWER, Gate.FIRST_SPIN, Gate.FIRST_FIELD_LOG)) {
      assertThat(
              Gate.check(
                      view().checklist(),
                      gate,
                      view().situation(OffsetDateTime.now(ZoneId.systemDefault())))
                  .open())
          .isFalse();
    }
    assertThat(new InstrumentFolder(folder).audit().problems()).isEmpty();
  }

  @Test
  void theInstructionIsCoveredUntilEachCautionIsRead() throws IOException {
    shell.run("note", folder, "--design", design(), "first", "--who", "Ada Test");
    assertThat(step("choose-use", "--open")).isZero();
    assertThat(step("choose-use", "--answer", "place=indoors")).isZero();
    assertThat(step("choose-use", "--answer", "group=no")).isZero();
    assertThat(step("choose-use", "--finish")).as(shell.said()).isZero();
    assertThat(step("choose-design")).isZero();
    assertThat(shell.said()).contains("--read hot-ball").contains("is covered");
    assertThat(step("choose-design", "--read", "hot-ball")).isZero();
    assertThat(step("choose-design")).isZero();
    assertThat(shell.said()).contains("read by Ada Test").contains("is covered");
    assertThat(step("choose-design", "--read", "children")).isZero();
    assertThat(step("choose-design")).isZero();
    assertThat(shell.said()).doesNotContain("is covered").contains("  - ");
  }

  private Path design() throws IOException {
    Event.DesignChosen chosen =
        Journal.in(CELLAR).content().entries().stream()
            .flatMap(e -> e.event() instanceof Event.DesignChosen d ? Stream.of(d) : Stream.empty())
            .findFirst()
            .orElseThrow();
    return Files.writeString(temp.resolve("design.json"), chosen.json());
  }

  @Test
  void anotherAnswerStrikesTheFirst() throws IOException {
    step("choose-use", "--answer", "place=indoors");
    step("choose-use", "--answer", "place=sun");
    assertThat(view().state().answer("choose-use", "place").orElseThrow().event().choice())
        .isEqualTo("sun");
    assertThat(view().state().all(QuestionAnswered.class)).hasSize(2);
    assertThat(view().state().standing(QuestionAnswered.class)).hasSize(1);
    step("choose-use");
    assertThat(shell.said()).contains("* sun:");
  }

  @Test
  void aReadingIsCorrectedByReasonAndBothStayInSight() throws IOException {
    copyTheCellar();
    String entry = view().state().reading("heater-alone", "heater-alone").orElseThrow().entry();
    assertThat(shell.run("correct", folder, entry, "--because", " ")).isEqualTo(3);
    assertThat(shell.run("correct", folder, "none", "--because", WORDY)).isEqualTo(3);
    assertThat(shell.run("correct", folder, entry)).isEqualTo(2);
    assertThat(shell.run("correct", folder, entry, "--because", WORDY, "--value", "x"))
        .isEqualTo(3);
    assertThat(shell.run("correct", folder, entry, "--because", WORDY, "--value", "100.1"))
        .isZero();
    step("heater-alone");
    assertThat(shell.said()).contains("struck: ").contains(WORDY).contains("100.1: good");
  }

  @Test
  void theMeterIsChosenAmongThoseThatAreKnown() throws IOException {
    assertThat(shell.run("note", folder, "--meter", "hand-6000-counts")).isZero();
    assertThat(shell.run("note", folder, "--meter", "the-red-one")).isEqualTo(3);
    assertThat(shell.run("note", folder, "--meter", "hand-6000-counts", "--retire", "x"))
        .isEqualTo(2);
  }

  @Test
  void aReadingIsTakenFromARecording() throws IOException {
    copyTheCellar();
    Path recording = CELLAR.resolve("runs/first-session/zero.csv");
    assertThat(shell.run("reading", folder, "zero-check", "zero-signal", "--from", recording))
        .as(shell.said())
        .isIn(0, 4);
    List<Event> events =
        Journal.in(folder).content().entries().stream().map(e -> e.event()).toList();
    assertThat(events.get(events.size() - 2)).isInstanceOf(ReadingEntered.class);
    assertThat(((Event.NoteWritten) events.get(events.size() - 1)).text())
        .contains("zero.csv, SHA-256 ");
    assertThat(shell.run("reading", folder, "heater-alone", "heater-alone", "--from", recording))
        .isEqualTo(3);
    assertThat(shell.run("reading", folder, "heater-alone", "heater-alone")).isEqualTo(2);
    assertThat(
            shell.run("reading", folder, "zero-check", "zero-signal", "--from", temp.resolve("x")))
        .isEqualTo(1);
    assertThat(view().problems()).extracting(Problem::id).isEmpty();
  }
}
