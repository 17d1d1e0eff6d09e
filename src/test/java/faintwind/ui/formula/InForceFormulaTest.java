package faintwind.ui.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the formula says of the calibration that counts, while it is new and years later. */
class InForceFormulaTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private Next at(OffsetDateTime time) throws Exception {
    Quiet quiet = new Quiet(folder);
    Path cellar = Cellar.shipped(folder, "rind-" + time.getYear());
    Standpoint standpoint = Standpoint.of(quiet.workspace().opening().open(cellar), time);
    OpenInstrument instrument =
        new OpenInstrument(
            quiet.desk(), standpoint, quiet.workspace().opening(), new SimpleStringProperty("Ida"));
    FormulaModel model =
        new FormulaModel(
            quiet.desk().words(),
            quiet.desk().background(),
            new InstrumentFormula(quiet.desk(), instrument));
    model.begin(Optional.empty());
    while (model.view().get().made().isEmpty()) {
      quiet.answer();
    }
    return model.next().get();
  }

  @Test
  void oneThatIsDueNeedsAttentionAndIsNotCalledDone() throws Exception {
    Next fresh = at(Cellar.NOW);
    assertThat(fresh.mark()).isEqualTo(Mark.DONE);
    assertThat(fresh.sentence()).isEqualTo("This formula is in force.");
    Next late = at(Cellar.NOW.plusYears(2));
    assertThat(late.mark()).isEqualTo(Mark.ATTENTION);
    assertThat(late.sentence()).contains("in force").contains("time to calibrate again");
    assertThat(late.detail()).contains("Calibration due since 13 September 2027");
  }
}
