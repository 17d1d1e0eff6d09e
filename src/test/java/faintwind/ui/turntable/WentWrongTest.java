package faintwind.ui.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.run.SignalUnit;
import faintwind.job.live.RehearsalPlan;
import faintwind.message.Messages;
import faintwind.ui.Quiet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** What is said beside the live table: what went wrong, what is typed, what is planned. */
@ExtendWith(ApplicationExtension.class)
class WentWrongTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final List<String> noted = new ArrayList<>();

  @ParameterizedTest
  @ValueSource(strings = {"arm", "count", "draught", "logger", "heater"})
  void eachSaysWhatItDoesToTheDataAndWhatToDoAndIsNoted(String what) {
    WentWrong list = new WentWrong(new Quiet(folder).desk(), noted::add, () -> noted.add("closed"));
    List<String> said =
        list.lookupAll(".label").stream().map(node -> ((Label) node).getText()).toList();
    assertThat(said)
        .contains(
            WORDS.text("turntable.wrong." + what),
            WORDS.text("turntable.wrong." + what + ".does"),
            WORDS.text("turntable.wrong." + what + ".now"));
    ((Hyperlink) list.lookup("#wrong-" + what)).fire();
    assertThat(noted).containsExactly(WORDS.text("turntable.wrong." + what + ".noted"), "closed");
  }

  @Test
  void aReadingThatIsNoneIsSaidAndOneThatIsWasTaken() {
    TypedMeter meter =
        new TypedMeter(WORDS, new SourceAddress.Typed(30, SignalUnit.SIGNAL_MV), "typed");
    assertThat(meter.enter("none")).contains("none").endsWith(".");
    assertThat(meter.enter("0,82")).isEmpty();
    assertThat(meter.asked().get()).isEmpty();
  }

  @Test
  void separateRunsAreNotCalledOneWarmUp() {
    Plan plan = RehearsalPlan.preparation(RehearsalPlan.Length.SHORT).plan();
    assertThat(new LiveTableWords(WORDS, plan).planned()).isEqualTo("One warm-up, 3 speeds");
    Plan separate = new Plan(Plan.Form.SEPARATE, plan.steps(), plan.promise());
    assertThat(new LiveTableWords(WORDS, separate).planned())
        .isEqualTo("3 speeds, warmed up before each");
  }
}
