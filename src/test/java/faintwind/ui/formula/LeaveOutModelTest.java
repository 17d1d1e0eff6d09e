package faintwind.ui.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.job.formula.FittedFormula;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LeaveOutModelTest {
  private static final Path DEMO = Path.of("demo-projects/cellar/calibrations/2026-09-13.json");
  private static final Path FRESH = Path.of("runs-2.csv");

  private final LeaveOutModel model = new LeaveOutModel(Messages.of(Locale.ENGLISH));
  private final List<Path> fitted = new ArrayList<>();
  private final Calibration demo = ((Checked.Ok<Calibration>) OpenCalibration.read(DEMO)).value();

  LeaveOutModelTest() throws IOException {}

  private Kept kept(String file) {
    Problem noRuns = Problem.error("file.missing", Where.file("runs.csv"), "");
    return new Kept(new FittedFormula(demo, List.of(), Checked.refused(noRuns)), file, "");
  }

  @Test
  void aRefusalIsSaidAndNothingIsFitted() {
    Problem why = Problem.error("file.missing", Where.file("spin07.csv"), "");
    model.told(Checked.refused(why), Optional.of(kept("a.json")), fitted::add);
    assertThat(model.refused().get()).contains("spin07.csv");
    assertThat(fitted).isEmpty();
    assertThat(model.changes(kept("b.json"))).isEmpty();
  }

  @Test
  void theNextChoiceTakesTheRefusalBackAndFitsWhatCountsNow() {
    aRefusalIsSaidAndNothingIsFitted();
    model.told(Checked.ok(FRESH), Optional.of(kept("a.json")), fitted::add);
    assertThat(model.refused().get()).isEmpty();
    assertThat(fitted).containsExactly(FRESH);
  }

  @Test
  void whatTheFitChangedIsSaidAtFiveSpeeds() {
    model.told(Checked.ok(FRESH), Optional.of(kept("a.json")), fitted::add);
    assertThat(model.changes(kept("a.json"))).isEmpty();
    List<String> changes = model.changes(kept("b.json"));
    assertThat(changes).hasSize(6);
    assertThat(changes.get(0)).contains("agree within their uncertainty");
    assertThat(changes.subList(1, 6)).doesNotHaveDuplicates().allMatch(l -> l.contains("0.0"));
  }

  @Test
  void theFirstFitHasNothingToBeComparedWith() {
    model.told(Checked.ok(FRESH), Optional.empty(), fitted::add);
    assertThat(model.changes(kept("b.json"))).isEmpty();
  }
}
