package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PathModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final PathModel path = new PathModel(Messages.of(Locale.ENGLISH));

  private OpenInstrument at(String step) throws IOException {
    Quiet quiet = new Quiet(folder);
    return quiet.open(Cellar.begin("Rind 1").design().before(step).open(step).into(folder, "r"));
  }

  @Test
  void onlyTheStageOfTheOpenStepShowsItsSteps() throws IOException {
    OpenInstrument instrument = at("drill-heated");
    List<PathModel.StageLine> lines =
        path.lines(instrument.checklist(), instrument.now().get().progress(), "drill-heated");
    assertThat(lines).hasSize(instrument.checklist().stages().size());
    assertThat(lines)
        .filteredOn(PathModel.StageLine::isOpen)
        .singleElement()
        .satisfies(
            stage ->
                assertThat(stage.steps())
                    .filteredOn(PathModel.StepLine::here)
                    .singleElement()
                    .satisfies(step -> assertThat(step.mark()).isEqualTo(Mark.DOING)));
  }

  @Test
  void aStageIsOpenedAtItsFirstUnsettledStep() throws IOException {
    OpenInstrument instrument = at("drill-heated");
    PathModel.StageLine stage =
        path
            .lines(instrument.checklist(), instrument.now().get().progress(), "drill-heated")
            .stream()
            .filter(PathModel.StageLine::isOpen)
            .findFirst()
            .orElseThrow();
    assertThat(stage.first()).isEqualTo("drill-heated");
  }

  @Test
  void theOrderBeginsWithWhatCanBeDoneAndCountsTheRest() throws IOException {
    OpenInstrument instrument = at("drill-heated");
    List<PathModel.OrderLine> order =
        path.order(instrument.checklist(), instrument.now().get().progress());
    assertThat(order).anyMatch(line -> line.id().equals("drill-heated"));
    assertThat(order.get(order.size() - 1).id()).isEmpty();
    assertThat(order.get(order.size() - 1).text()).matches(".*\\d+.*");
  }
}
