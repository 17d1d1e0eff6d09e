package faintwind.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.choice.DesignField;
import faintwind.ui.Quiet;
import faintwind.ui.design.DesignOthersModel.Tried;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DesignOthersModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private Quiet window;
  private DesignOthersModel others;
  private Worked worked;

  @BeforeEach
  void ofTheSampleDesign() throws Exception {
    worked = new Worked();
    window = new Quiet(folder);
    others = new DesignOthersModel(Messages.of(Locale.ENGLISH), window.desk().background());
    others.begin(worked.work, worked.sample);
    window.answer();
  }

  private List<Tried> tried() {
    return others.tried().get();
  }

  private Tried tried(String id) {
    return tried().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  private void keepOnly(String id) throws InterruptedException {
    if (!id.equals("ball")) {
      others.ball().set("");
      window.answer();
    }
    if (!id.equals("resistor")) {
      others.resistor().set("");
      window.answer();
    }
    if (!id.equals("thermocouple")) {
      others.thermocouple().set("");
      window.answer();
    }
    if (!id.equals("leads")) {
      others.leads().set("");
      window.answer();
    }
  }

  @Test
  void usualSubstitutionsAreTriedOneByOneAndTogether() {
    assertThat(tried())
        .extracting(Tried::id)
        .containsExactly("ball", "resistor", "thermocouple", "leads", "all");
    assertThat(tried("ball").consequences()).isNotEmpty();
  }

  @Test
  void oneOtherPartAloneHasNothingTogether() throws InterruptedException {
    keepOnly("resistor");
    assertThat(tried()).extracting(Tried::id).containsExactly("resistor");
    assertThat(tried("resistor").by()).endsWith(" Ω");
  }

  @Test
  void thePartOfTheDesignItselfIsNoOther() throws InterruptedException {
    keepOnly("ball");
    others.ball().set("12.7");
    window.answer();
    assertThat(tried()).isEmpty();
  }

  @Test
  void aPartThatDoesNotGoIsRefusedInWords() throws InterruptedException {
    keepOnly("ball");
    others.ball().set("600");
    window.answer();
    assertThat(tried("ball").result()).isEmpty();
    assertThat(tried("ball").problems()).extracting(Problem::id).contains("field.outside");
  }

  @Test
  void theAnswerThatWasAskedLastStands() throws InterruptedException {
    keepOnly("ball");
    others.ball().set("14");
    others.ball().set("15");
    window.answer();
    window.answer();
    assertThat(tried("ball").by()).isEqualTo("15 mm");
  }

  @Test
  void whatWasTypedStaysWhenTheDesignChanges() throws Exception {
    others.ball().set("14");
    window.answer();
    others.begin(
        worked.work,
        Worked.ok(worked.work.with(worked.sample, Map.of(DesignField.DIAMETER, "20"))));
    window.answer();
    assertThat(tried("ball").by()).isEqualTo("14 mm");
  }
}
