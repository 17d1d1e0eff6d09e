package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

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
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** A language read from the right turns the window; another one is chosen in the menu and kept. */
@ExtendWith(ApplicationExtension.class)
class LanguageMenuTest {
  private static final String FROM_THE_RIGHT =
      """
      {"format": "faintwind-language/1", "language": "ar", "direction": "rtl",
       "texts": {"window.language.later": "لاحقا"}}
      """;

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
    Waiting.until(() -> journey.there("#note"));
    assertThat(journey.words("#note")).contains("لاحقا");
    Waiting.until(() -> kept().equals("en-XA"));
    journey.close();
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
