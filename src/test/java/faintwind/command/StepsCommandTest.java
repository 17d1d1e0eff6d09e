package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StepsCommandTest {
  private static final String CELLAR = "demo-projects/cellar";

  @TempDir Path temp;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    Terminal terminal =
        Terminal.of(new ByteArrayInputStream(new byte[0]), out, err, Messages.of(Locale.ENGLISH));
    return Main.run(terminal, arguments);
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void orderOfAFinishedInstrumentHasNothingLeft() {
    assertThat(run("steps", CELLAR)).isZero();
    assertThat(said()).contains("Can be done now:").contains("Waits for a clock:");
  }

  @Test
  void aStageGoesOnPaperAndIsNotOverwrittenUnasked() throws Exception {
    Path page = temp.resolve("make.html");
    String[] print = {"steps", CELLAR, "--stage", "02-make", "--out", page.toString()};
    assertThat(run(print)).isZero();
    String first = Files.readString(page);
    assertThat(first).contains("Drilling card").contains("made-up data");
    assertThat(run(print)).isEqualTo(2);
    assertThat(page).hasContent(first);
  }

  @Test
  void aTimeIsPlannedOverAFolderOfInstrumentsOnLinesAndOnPaper() throws Exception {
    run("new", temp.resolve("attic").toString(), "--name", "Attic");
    assertThat(run("steps", temp.toString(), "--minutes", "40")).isZero();
    assertThat(said())
        .contains("In 40 minutes: 3 steps, about 40 minutes together.")
        .contains("Attic: Choose balls, heater, wires and logger, about 20 min")
        .contains("Tools: ");
    Path page = temp.resolve("today.html");
    assertThat(run("steps", temp.toString(), "--minutes", "40", "--out", page.toString())).isZero();
    assertThat(page).content().contains("Lay out", "class=\"tick\"");
    assertThat(run("steps", page.toString(), "--minutes", "40")).isEqualTo(3);
  }

  @Test
  void anUnknownStageIsRefusedAndNothingIsWritten() {
    Path page = temp.resolve("moon.pdf");
    assertThat(run("steps", CELLAR, "--stage", "moon", "--out", page.toString())).isEqualTo(3);
    assertThat(told()).contains("There is no stage moon. Expected one of: 01-design");
    assertThat(page).doesNotExist();
  }

  @Test
  void aStageWithoutAPlaceToGoIsMisuse() {
    assertThat(run("steps", CELLAR, "--stage", "02-make")).isEqualTo(2);
    assertThat(told()).contains("--out");
  }

  @Test
  void aFolderThatIsNoInstrumentIsRefused() {
    assertThat(run("steps", temp.toString())).isEqualTo(3);
    assertThat(told()).isNotBlank();
  }
}
