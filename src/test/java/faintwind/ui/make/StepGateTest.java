package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Gate;
import faintwind.record.Event.Waived;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.instrument.OpenInstrument;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ways round the gate of heater power through the window's model of a step, without a window. */
class StepGateTest {
  private static final String WORDY = "the borrowed meter had to go back";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // made before each test
  private Quiet quiet;

  @BeforeEach
  void quiet() {
    quiet = new Quiet(folder);
  }

  private record Window(OpenInstrument instrument, StepModel model) {}

  private Window at(Cellar cellar, String step, String who) throws IOException {
    Path path = cellar.open(step).into(folder, "rind");
    OpenInstrument open = quiet.open(path, who);
    return new Window(open, new StepModel(quiet.desk(), open, () -> {}));
  }

  /** Waits for so many answers from the disk. */
  private void settle(int answers) throws InterruptedException {
    for (int i = 0; i < answers; i++) {
      quiet.answer();
    }
  }

  private static boolean isPowerOpen(Window window) {
    var now = window.instrument().now().get();
    return Gate.check(now.view().checklist(), Gate.HEATER_POWER, now.situation()).open();
  }

  @ParameterizedTest(name = "{0}, waived by {1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "420k | Ada | the borrowed meter had to go back",
        "27 Ω | Ada | the borrowed meter had to go back",
        "5M | Ada | x",
        "5M | x | the borrowed meter had to go back",
        "5M | Ada | xxxxxxxxx xxxxxxx",
        "'' | Ada | the borrowed meter had to go back"
      })
  void whatDoesNotCountIsNotWrittenAndTheStepIsNotFinished(String typed, String name, String reason)
      throws Exception {
    Cellar cellar =
        Cellar.begin("Rind").design().before("heater-insulation").cautions("heater-insulation");
    cellar.type("heater-insulation", "lead-b-ball", "OL 20M");
    cellar.type("heater-insulation", "lead-to-lead", "100.2");
    if (!typed.isEmpty()) {
      cellar.type("heater-insulation", "lead-a-ball", typed);
    }
    Window window = at(cellar, "heater-insulation", "Ida");
    StepModel model = window.model();
    assertThat(model.canWaive("lead-a-ball", name, reason)).isFalse();
    assertThat(model.whyNotWaived("lead-a-ball", name, reason)).isNotEmpty();
    model.waive("lead-a-ball", name, reason);
    model.finish();
    assertThat(quiet.unanswered()).isZero();
    assertThat(model.canFinish()).isFalse();
    assertThat(window.instrument().state().standing(Waived.class)).isEmpty();
    assertThat(window.instrument().state().finished("heater-insulation")).isEmpty();
  }

  @Test
  void aStopOffersNoWayToGoOnWithoutIt() throws Exception {
    Cellar cellar = Cellar.begin("Rind").design().before("heater-insulation");
    Window window = at(cellar, "heater-insulation", "Ida");
    window.model().enterReading("lead-a-ball", "27 Ω");
    settle(1);
    assertThat(trouble(window).waivable()).isEmpty();
    window.model().correctReading("lead-a-ball", "5M", "typed in error");
    settle(1);
    assertThat(trouble(window).waivable()).isEqualTo("lead-a-ball");
  }

  private static StepView.Trouble trouble(Window window) {
    return window.model().view().get().outcome().trouble().orElseThrow();
  }

  @Test
  void aReadingTakenAnewShutsTheOpenGateUntilItIsFollowedThrough() throws Exception {
    Window window = at(Cellar.begin("Rind").design().before("first-power"), "first-power", "Ida");
    assertThat(isPowerOpen(window)).isTrue();
    window.model().open("heater-insulation");
    settle(1);
    window.model().enterReading("lead-a-ball", "5M");
    settle(1);
    assertThat(isPowerOpen(window)).isFalse();
    window.model().waive("lead-a-ball", "Ida", WORDY);
    settle(1);
    assertThat(isPowerOpen(window)).isFalse();
    assertThat(closing(window)).startsWith("Something changed since");
    window.model().finish();
    settle(2);
    window.model().open("joined-check");
    settle(1);
    window.model().enterReading("meter-proof-after", "1.01");
    settle(1);
    window.model().finish();
    settle(2);
    assertThat(isPowerOpen(window)).isTrue();
  }

  private static String closing(Window window) {
    return window.model().next().get().sentence();
  }

  @Test
  void goodIsNotSaidOfWhatWasOnlyAccepted() throws Exception {
    Cellar cellar =
        Cellar.begin("Rind").design().before("heater-insulation").cautions("heater-insulation");
    cellar.type("heater-insulation", "lead-b-ball", "OL 20M");
    cellar.type("heater-insulation", "lead-to-lead", "100.2");
    cellar.type("heater-insulation", "lead-a-ball", "5M");
    Window window = at(cellar, "heater-insulation", "Ida");
    window.model().waive("lead-a-ball", "Ida", WORDY);
    settle(1);
    assertThat(closing(window)).startsWith("Not every reading here is good; somebody accepted");
    window.model().enterReading("lead-a-ball", "OL 20M");
    settle(1);
    assertThat(closing(window)).startsWith("Everything here is good.");
  }

  @Test
  void withoutADesignTheGateStaysShutWhateverElseIsDone() throws Exception {
    Window window = at(Cellar.begin("Rind").before("first-power"), "first-power", "Ida");
    assertThat(isPowerOpen(window)).isFalse();
    window.model().enterReading("supply-volts", "5.0");
    window.model().enterReading("supply-current", "50 mA");
    settle(2);
    window.model().finish();
    assertThat(quiet.unanswered()).isZero();
    assertThat(window.instrument().state().finished("first-power")).isEmpty();
  }

  @Test
  void anAnswerAboutTheSheetOpensNothing() throws Exception {
    Window window =
        at(
            Cellar.begin("Rind").before("choose-design").cautions("choose-design"),
            "choose-design",
            "Ida");
    window.model().answer("sheet", "none");
    settle(1);
    assertThat(window.model().canFinish()).isFalse();
  }
}
