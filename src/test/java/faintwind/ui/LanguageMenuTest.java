package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.WriterLock;
import faintwind.job.WindowChoices;
import faintwind.job.language.Spoken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.geometry.NodeOrientation;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.stage.Window;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** A language read from the right turns the window; another one is chosen and spoken at once. */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class LanguageMenuTest {
  private static final String FROM_THE_RIGHT =
      """
      {"format": "faintwind-language/1", "language": "ar", "direction": "rtl",
       "texts": {"window.place.record": "سجل"}}
      """;

  private static final String LOOK = "[Ļóóóķ]";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void theWindowIsTurnedAndAnotherLanguageIsKept(FxRobot robot) throws IOException {
    Files.writeString(
        Files.createDirectories(folder.resolve("lang")).resolve("ar.json"), FROM_THE_RIGHT);
    Spoken spoken = Spoken.in("ar", folder);
    assertThat(spoken.problems()).isEmpty();
    Journey journey = Journey.of(robot, folder).asked().in(spoken.words());
    journey.open();
    assertThat(journey.stage().getScene().getRoot().getEffectiveNodeOrientation())
        .isEqualTo(NodeOrientation.RIGHT_TO_LEFT);
    journey.fire("#look");
    List<MenuItem> languages = menu();
    assertThat(languages)
        .extracting(MenuItem::getId)
        .containsExactly("language-system", "language-ar", "language-en", "language-en-XA");
    robot.interact(languages.get(3)::fire);
    Waiting.until(() -> journey.words("#look").equals(LOOK));
    assertThat(journey.stage().getScene().getRoot().getEffectiveNodeOrientation())
        .isEqualTo(NodeOrientation.LEFT_TO_RIGHT);
    Waiting.until(() -> kept().equals("en-XA"));
    journey.close();
  }

  @Test
  void theSameInstrumentStaysOpenAtTheSamePlaceAndCanBeWrittenTo(FxRobot robot) throws IOException {
    Cellar.begin("Attic").design().into(folder, "attic");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("attic");
    journey.fire("#place-record");
    Waiting.until(() -> journey.there("#ledger"));
    double wide = journey.stage().getWidth();
    choose(robot, journey, "language-en-XA");
    Waiting.until(() -> journey.words("#place-record").equals("[Řéççóřřď]"));
    Waiting.until(() -> journey.there("#ledger"));
    assertThat(journey.stage().getWidth()).isEqualTo(wide);
    assertThat(WriterLock.heldBy(folder.resolve("attic"))).isPresent();
    choose(robot, journey, "language-en");
    Waiting.until(() -> journey.words("#place-record").equals("Record"));
    Waiting.until(() -> kept().equals("en"));
    journey.close();
  }

  @Test
  void whatIsNotKeptIsAskedAboutFirst(FxRobot robot) throws IOException {
    Cellar.begin("Attic").design().into(folder, "attic");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("attic");
    journey.fire("#place-design");
    Waiting.until(() -> journey.there("#outcome-smallest-speed-m-s"));
    robot.interact(
        () -> {
          TextField diameter = robot.lookup("#design-diameter").queryAs(TextField.class);
          diameter.requestFocus();
          diameter.setText("16");
        });
    choose(robot, journey, "language-en-XA");
    Waiting.until(() -> journey.there("#unsaved-stay"));
    journey.fire("#unsaved-stay");
    assertThat(journey.words("#place-design")).isEqualTo("Design");
    choose(robot, journey, "language-en-XA");
    Waiting.until(() -> journey.there("#unsaved-drop"));
    journey.fire("#unsaved-drop");
    Waiting.until(() -> journey.words("#place-design").equals("[Ďéššíğğñ]"));
    journey.close();
  }

  private static void choose(FxRobot robot, Journey journey, String language) {
    journey.fire("#look");
    Waiting.until(() -> !menu().isEmpty());
    MenuItem item =
        menu().stream().filter(each -> language.equals(each.getId())).findFirst().orElseThrow();
    robot.interact(item::fire);
  }

  private static List<MenuItem> menu() {
    return Window.getWindows().stream()
        .filter(ContextMenu.class::isInstance)
        .flatMap(menu -> ((ContextMenu) menu).getItems().stream())
        .filter(item -> "language".equals(item.getId()))
        .flatMap(item -> ((Menu) item).getItems().stream())
        .toList();
  }

  private String kept() {
    try {
      return WindowChoices.read(folder).map(WindowChoices::language).orElse("");
    } catch (IOException e) {
      return "";
    }
  }
}
