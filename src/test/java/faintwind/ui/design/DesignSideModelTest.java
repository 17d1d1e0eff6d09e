package faintwind.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.design.Sized;
import faintwind.message.Messages;
import faintwind.physics.choice.DesignField;
import faintwind.ui.Quiet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DesignSideModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private Quiet window;
  private DesignSideModel side;
  private Worked worked;

  @BeforeEach
  void ofTheSampleDesign() throws IOException {
    worked = new Worked();
    window = new Quiet(folder);
    side = new DesignSideModel(Messages.of(Locale.ENGLISH), window.desk().background());
  }

  private List<String> names() {
    return side.columns().get().stream().map(DesignSideModel.Compared::name).toList();
  }

  private Sized of(String diameter_mm) {
    return Worked.ok(worked.work.with(worked.sample, Map.of(DesignField.DIAMETER, diameter_mm)));
  }

  @Test
  void thePresentDesignIsThereAtOnceAndTheOthersFollow() throws Exception {
    side.present(worked.work, worked.sample);
    assertThat(names()).containsExactly("Copper 12.7 mm");
    window.answer();
    assertThat(names())
        .containsExactly(
            "Copper 12.7 mm",
            "Copper 12.7 mm, plated",
            "Aluminium 12.7 mm",
            "Copper 10 mm",
            "Copper 16 mm");
  }

  @Test
  void othersOfADesignThatIsNoLongerThereAreLeftOut() throws Exception {
    side.present(worked.work, worked.sample);
    side.present(worked.work, of("20"));
    window.answer();
    assertThat(names()).containsExactly("Copper 20 mm");
    window.answer();
    assertThat(names()).startsWith("Copper 20 mm").contains("Copper 16 mm", "Copper 25 mm");
  }

  @Test
  void aPinnedDesignStaysWhileTheChoicesChange() {
    side.present(worked.work, worked.sample);
    side.pin();
    side.present(worked.work, of("20"));
    assertThat(names()).startsWith("Copper 20 mm", "Copper 12.7 mm");
  }

  @Test
  void twoArePinnedAtMostAndNoneTwice() {
    side.pin();
    assertThat(names()).isEmpty();
    for (String d : List.of("14", "15", "16", "16")) {
      side.present(worked.work, of(d));
      side.pin();
    }
    side.present(worked.work, worked.sample);
    assertThat(names()).containsExactly("Copper 12.7 mm", "Copper 16 mm", "Copper 15 mm");
  }
}
