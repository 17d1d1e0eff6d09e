package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.WindowChoices;
import faintwind.message.Messages;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.frame.Place;
import faintwind.ui.frame.Theme;
import faintwind.ui.make.StepScreen;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Makes the pictures of the screens in docs/screenshots, at two sizes, light and dark. */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class ScreenshotsTest {
  private static final Path PICTURES = Path.of("docs/screenshots");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path parent;

  @SuppressWarnings("NullAway.Init") // each test opens its window
  private Stage stage;

  @SuppressWarnings("NullAway.Init")
  private FaintwindWindow window;

  private final ChosenFiles files = new ChosenFiles();

  private int width;

  @ParameterizedTest
  @CsvSource({"1280, 800", "1920, 1080"})
  void everyScreenHasItsPictures(int wide, int high, FxRobot robot) throws IOException {
    width = wide;
    Path folder = parent.resolve("Cheese cellar");
    new WindowChoices(100, "light", false, "Ida", "").write(folder);
    build(folder);
    robot.interact(() -> openWindow(folder, wide, high));
    walk(robot);
    robot.interact(() -> stage.close());
    assertThat(PICTURES.resolve("home-" + wide + "-light.png")).isNotEmptyFile();
  }

  private void openWindow(Path folder, int wide, int high) {
    FaintwindApp.dressProgram();
    stage = new Stage();
    stage.setWidth(wide);
    stage.setHeight(high);
    window =
        new FaintwindWindow(
            stage,
            Messages.of(Locale.ENGLISH),
            KeptLook.in(folder),
            Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC),
            files);
    window.show();
  }

  private static void build(Path folder) throws IOException {
    Cellar.begin("Rind 2, by the door")
        .design()
        .before("heater-insulation")
        .open("heater-insulation")
        .cautions("heater-insulation")
        .type("heater-insulation", "lead-a-ball", "27 Ω")
        .type("heater-insulation", "lead-b-ball", "127,4 Ω")
        .type("heater-insulation", "lead-to-lead", "100,3")
        .into(folder, "rind-2");
    Cellar.begin("Rind 3, floor drain")
        .design()
        .before("coat-parts")
        .open("coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 24 * 3600, 21 * 60)
        .into(folder, "rind-3");
    Cellar.shipped(folder, "rind-1");
    Cellar.begin("Rind 6, new").into(folder, "rind-6");
  }

  private void walk(FxRobot robot) {
    Waiting.until(() -> robot.lookup("#instrument-rind-2").tryQuery().isPresent());
    picture(robot, "home");
    open(robot, "rind-2");
    picture(robot, "step-insulation");
    if (width == 1280) {
      robot.interact(() -> window.desk().look().textPct().set(200));
      Waiting.until(() -> true);
      robot.interact(() -> keep(PICTURES.resolve("step-200-percent.png")));
      robot.interact(() -> window.desk().look().textPct().set(100));
    }
    place(robot, Place.RECORD, () -> robot.lookup("#ledger .row").tryQuery().isPresent());
    picture(robot, "record");
    place(robot, Place.DESIGN, () -> true);
    designPages(robot);
    robot.interact(() -> window.desk().go().accept(Place.HOME));
    Waiting.until(() -> robot.lookup("#instrument-rind-3").tryQuery().isPresent());
    open(robot, "rind-3");
    picture(robot, "step-clock");
    step(robot, "plating-home-cautions");
    picture(robot, "plating");
    robot.interact(() -> window.desk().go().accept(Place.HOME));
    Waiting.until(() -> robot.lookup("#instrument-rind-1").tryQuery().isPresent());
    data(robot);
  }

  private void designPages(FxRobot robot) {
    Waiting.until(() -> robot.lookup("#outcome-smallest-speed-m-s").tryQuery().isPresent());
    Waiting.until(() -> robot.lookup("#beside-table").tryQuery().isPresent());
    picture(robot, "design");
    if (width == 1280) {
      robot.interact(() -> window.desk().look().textPct().set(200));
      Waiting.until(() -> true);
      robot.interact(() -> keep(PICTURES.resolve("design-200-percent.png")));
      robot.interact(() -> window.desk().look().textPct().set(100));
    }
    page(robot, "wish", "#wish-table");
    page(robot, "others", "#other-all");
    page(robot, "side", "#side-look-4");
    page(robot, "parts", "#parts-cost");
  }

  private void page(FxRobot robot, String page, String there) {
    robot.interact(() -> robot.lookup("#design-page-" + page).queryAs(Hyperlink.class).fire());
    Waiting.until(() -> robot.lookup(there).tryQuery().isPresent());
    picture(robot, "design-" + page);
  }

  /** The screens that need recordings: those of the shipped cellar. */
  private void data(FxRobot robot) {
    open(robot, "rind-1");
    place(
        robot,
        Place.TURNTABLE,
        () -> robot.lookup("#caution-spinning-arm-read").tryQuery().isPresent());
    robot.interact(() -> robot.lookup("#caution-spinning-arm-read").queryButton().fire());
    Waiting.until(() -> robot.lookup("#recording-1").tryQuery().isPresent());
    picture(robot, "turntable");
    place(robot, Place.FORMULA, () -> robot.lookup("#formula-loss").tryQuery().isPresent());
    picture(robot, "formula");
    place(robot, Place.FIELD, () -> robot.lookup("#field-plot").tryQuery().isPresent());
    picture(robot, "field");
    new AirWalk(robot, name -> picture(robot, name)).all();
  }

  private void open(FxRobot robot, String folder) {
    robot.clickOn("#instrument-" + folder);
    Waiting.until(() -> robot.lookup("#step-title").tryQuery().isPresent());
  }

  private void step(FxRobot robot, String id) {
    robot.interact(() -> ((StepScreen) window.screen().orElseThrow()).openStep(id));
    Waiting.until(() -> robot.lookup("#path-step-" + id).tryQuery().isPresent());
  }

  private void place(FxRobot robot, Place place, BooleanSupplier there) {
    robot.interact(() -> window.desk().go().accept(place));
    Waiting.until(there);
  }

  private void picture(FxRobot robot, String name) {
    for (Theme theme : new Theme[] {Theme.DARK, Theme.LIGHT}) {
      robot.interact(() -> window.desk().look().theme().set(theme));
      String kind = theme == Theme.LIGHT ? "light" : "dark";
      String file = name + "-" + width + "-" + kind + ".png";
      robot.interact(() -> keep(PICTURES.resolve(file)));
    }
  }

  private void keep(Path file) {
    Node root = stage.getScene().getRoot();
    root.applyCss();
    stage.getScene().getRoot().layout();
    Pictures.keep(stage.getScene(), file);
  }
}
