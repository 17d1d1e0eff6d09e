package faintwind.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Typeset;
import faintwind.physics.choice.DesignField;
import faintwind.physics.sheet.OutcomeId;
import faintwind.ui.Presses;
import faintwind.ui.ScreenStage;
import faintwind.ui.Waiting;
import faintwind.ui.frame.Theme;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class DesignScreenTest {
  private final List<String> journal = new ArrayList<>();

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @SuppressWarnings("NullAway.Init")
  private DesignModel model;

  @Start
  void start(Stage stage) {
    window = new ScreenStage(stage);
    model =
        new DesignModel(
            window.words,
            window.background,
            new DesignModel.Ways(
                journal::add,
                name -> Optional.of(folder.resolve(name)),
                () -> journal.add("make")));
    window.show(new DesignScreen(window.desk, model));
    model.begin(Optional.empty(), Optional.empty());
  }

  private void waitForDesign() throws TimeoutException {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> model.view().get().worked().isPresent());
    WaitForAsyncUtils.waitForFxEvents();
    Platform.runLater(() -> model.open(DesignPage.DESIGN));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void open(FxRobot robot, DesignPage page) {
    robot.interact(() -> model.open(page));
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** The nominal; negative where this design has no such quantity. */
  private double nominal(OutcomeId id) {
    return model
        .view()
        .get()
        .worked()
        .flatMap(worked -> worked.sheet().quantity(id))
        .map(q -> q.value().nominal())
        .orElse(-1.0);
  }

  @Test
  void aTypedDiameterChangesEveryOutcome(FxRobot robot) throws TimeoutException {
    waitForDesign();
    robot.interact(() -> window.picture("design-light"));
    double before = nominal(OutcomeId.TIME_CONSTANT_STILL);
    TextField field = robot.lookup("#design-diameter").queryAs(TextField.class);
    robot.interact(
        () -> {
          field.requestFocus();
          field.setText("3/8 in");
        });
    robot.press(KeyCode.TAB).release(KeyCode.TAB);
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> nominal(OutcomeId.BALL_DIAMETER) < 10);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(nominal(OutcomeId.BALL_DIAMETER)).isCloseTo(9.525, Offset.offset(1e-3));
    assertThat(nominal(OutcomeId.TIME_CONSTANT_STILL)).isLessThan(before);
    robot.interact(() -> window.theme(Theme.DARK));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("design-dark"));
  }

  @Test
  void choiceThatCannotBeIsRefusedAndTheDesignBeforeItStays(FxRobot robot) throws TimeoutException {
    waitForDesign();
    double before = nominal(OutcomeId.BORE);
    robot.interact(() -> model.choices().number(DesignField.BORE).set("20"));
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !model.view().get().problems().isEmpty());
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(nominal(OutcomeId.BORE)).isEqualTo(before);
    assertThat(model.next().get().mark()).isEqualTo(Mark.BLOCKED);
    assertThat(model.next().get().act()).isEmpty();
  }

  @Test
  void designIsTakenAndItsPartsListSaved(FxRobot robot) throws TimeoutException, IOException {
    waitForDesign();
    Presses.fire(robot, "#design-keep");
    assertThat(journal).hasSize(1);
    assertThat(journal.get(0)).contains("faintwind-design/1");
    Presses.fire(robot, "#design-parts");
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("design-parts"));
    Presses.fire(robot, "#parts-csv");
    Path list = folder.resolve("parts.csv");
    WaitForAsyncUtils.waitFor(
        20,
        TimeUnit.SECONDS,
        () -> model.next().get().act().filter(act -> act.id().equals("design-make")).isPresent());
    Waiting.until(() -> Files.exists(list));
    assertThat(Files.readAllLines(list).get(0))
        .startsWith("part,what,tolerance,needed,spare,to buy,unit,look for");
    assertThat(Files.readString(list)).contains("100 Ω").contains("12.7 mm");
    Presses.fire(robot, "#design-make");
    assertThat(journal).endsWith("make");
  }

  @Test
  void pricesTypedAreAddedUpAndKeptWithTheDesignOnRecord(FxRobot robot)
      throws TimeoutException, IOException {
    waitForDesign();
    robot.interact(() -> model.keep());
    open(robot, DesignPage.PARTS);
    robot.interact(
        () -> {
          robot.lookup("#parts-currency").queryAs(TextField.class).setText("Kr");
          model.partsList().currencyTyped();
        });
    Waiting.until(() -> model.view().get().worked().orElseThrow().prices().currency().equals("Kr"));
    type(robot, "#price-ball-copper-12-7mm", "12,50");
    Waiting.until(() -> cost(robot).contains("50.00 Kr"));
    type(robot, "#parts-instruments", "4");
    Waiting.until(
        () -> cost(robot).contains("137.50 Kr")); // 8 balls, 2 spare ones, one for practice
    robot.interact(() -> window.picture("design-parts-priced"));
    robot.interact(() -> model.saveParts("html"));
    Path page = folder.resolve("parts.html");
    Waiting.until(() -> Files.exists(page) && journal.size() == 2);
    assertThat(Files.readString(page)).contains("137.50 Kr");
    assertThat(journal.get(1)).contains("\"ball-copper-12.7mm\" : 12.5");
  }

  private static String cost(FxRobot robot) {
    return robot.lookup("#parts-cost").queryLabeled().getText();
  }

  private static void type(FxRobot robot, String id, String text) {
    TextField field = robot.lookup(id).queryAs(TextField.class);
    robot.interact(
        () -> {
          field.requestFocus();
          field.setText(text);
        });
    robot.press(KeyCode.TAB).release(KeyCode.TAB);
  }

  @Test
  void wishIsAnsweredByDesignsWithReasonsAndOneIsTaken(FxRobot robot) throws TimeoutException {
    waitForDesign();
    open(robot, DesignPage.WISH);
    Waiting.until(() -> robot.lookup("#suggestion-1").tryQuery().isPresent());
    robot.interact(() -> window.picture("design-wish"));
    assertThat(model.wish().answer().get().suggestions()).hasSizeBetween(2, 3);
    String first = model.wish().answer().get().suggestions().get(0).design().name();
    assertThat(robot.lookup("#wish-table").tryQuery()).isPresent();
    assertThat(robot.lookup("#wish-plot").tryQuery()).isPresent();
    assertThat(robot.lookup("#suggestion-1 .mark-word").queryLabeled().getText())
        .as("its verdict, as the table below says it")
        .isIn("good", "improve");
    robot.interact(() -> robot.lookup("#take-1").queryButton().fire());
    Waiting.until(() -> journal.size() == 1);
    assertThat(journal.get(0)).contains(first);
    assertThat(model.page().get()).isEqualTo(DesignPage.DESIGN);
    assertThat(model.next().get().act().orElseThrow().id()).isEqualTo("design-parts");
  }

  @Test
  void quickerAndMoreTouchedGivesOtherDesigns(FxRobot robot) throws TimeoutException {
    waitForDesign();
    open(robot, DesignPage.WISH);
    Waiting.until(() -> model.wish().answer().get().known());
    double cool = hottest();
    robot.interact(() -> model.wish().pick(DesignWishModel.Pick.CONTACT).set("28800"));
    Waiting.until(() -> model.wish().answer().get().known() && hottest() < cool);
    assertThat(hottest()).isLessThanOrEqualTo(43);
  }

  private double hottest() {
    return model.wish().answer().get().suggestions().stream()
        .map(s -> s.sheet().quantity(OutcomeId.HEATED_BALL_TEMPERATURE).orElseThrow())
        .mapToDouble(q -> q.value().nominal())
        .max()
        .orElse(1000);
  }

  @Test
  void otherPartsSayWhatTheyChange(FxRobot robot) throws TimeoutException {
    waitForDesign();
    open(robot, DesignPage.OTHERS);
    Waiting.until(() -> robot.lookup("#other-all").tryQuery().isPresent());
    robot.interact(() -> window.picture("design-others"));
    assertThat(model.others().tried().get())
        .extracting(DesignOthersModel.Tried::id)
        .containsExactly("ball", "resistor", "thermocouple", "leads", "all");
    assertThat(model.others().tried().get())
        .extracting(DesignOthersModel.Tried::by)
        .startsWith("12 mm", "120 Ω", "K");
    type(robot, "#others-ball", "2");
    Waiting.until(() -> !model.others().tried().get().get(0).problems().isEmpty());
    robot.interact(() -> robot.lookup("#use-resistor").queryAs(Hyperlink.class).fire());
    Waiting.until(() -> model.page().get() == DesignPage.DESIGN);
    Waiting.until(() -> nominal(OutcomeId.HEATER_RESISTANCE) == 120);
    assertThat(journal).isEmpty();
  }

  @Test
  void designsStandSideBySideWithGoldAluminiumThinnerAndThicker(FxRobot robot)
      throws TimeoutException {
    waitForDesign();
    open(robot, DesignPage.SIDE);
    Waiting.until(() -> model.side().columns().get().size() == 5);
    robot.interact(() -> window.picture("design-side"));
    assertThat(DesignCompareWords.heads(model.side().columns().get()))
        .containsExactly(
            "Copper 12.7 mm",
            "Copper 12.7 mm, plated",
            "Aluminium 12.7 mm",
            "Copper 10 mm",
            "Copper 16 mm");
    robot.interact(() -> robot.lookup("#design-compare").queryAs(Hyperlink.class).fire());
    Waiting.until(() -> model.side().columns().get().size() == 6);
    robot.interact(() -> model.use(model.side().columns().get().get(4).worked()));
    Waiting.until(() -> nominal(OutcomeId.BALL_DIAMETER) == 10);
    assertThat(journal).isEmpty();
  }

  @Test
  void whatCannotWorkIsSaidOnTheScreenWithTheNearestThingThatDoes(FxRobot robot)
      throws TimeoutException {
    waitForDesign();
    refused(DesignField.BORE, "14", "does not fit into a ball");
    refused(DesignField.ALTITUDE, "12000", "from -500 to 9000");
    robot.interact(() -> model.choices().number(DesignField.BORE).set("3"));
    stopped(robot, "#outcome-bore-clearance-mm", "Drill 3.2 mm");
    robot.interact(() -> model.choices().number(DesignField.BORE).set("3.3"));
    pick(robot, DesignField.REGULATOR, "linear");
    pick(robot, DesignField.BATTERY, "4xaa-alkaline");
    stopped(robot, "#outcome-battery-h", "Choose a battery of more cells");
    pick(robot, DesignField.BATTERY, "");
    pick(robot, DesignField.RESISTOR, "metal-film-quarter-watt");
    stopped(robot, "#outcome-heater-rating-derated-w", "Choose one rated 0.5 W");
  }

  private void refused(DesignField figure, String typed, String expected) {
    Platform.runLater(() -> model.choices().number(figure).set(typed));
    Waiting.until(() -> model.view().get().problems().stream().anyMatch(p -> p.contains(expected)));
    assertThat(model.next().get().act()).isEmpty();
  }

  private void pick(FxRobot robot, DesignField pick, String id) {
    robot.interact(
        () -> {
          model.choices().pick(pick).set(id);
          model.said(pick);
        });
  }

  @Test
  void twoChoicesInOneGoBothCount(FxRobot robot) throws TimeoutException {
    waitForDesign();
    robot.interact(
        () -> {
          model.choices().number(DesignField.DIAMETER).set("16");
          model.choices().pick(DesignField.METAL).set("aluminium");
          model.said(DesignField.METAL);
        });
    Waiting.until(
        () ->
            nominal(OutcomeId.BALL_DIAMETER) == 16
                && model
                    .view()
                    .get()
                    .worked()
                    .orElseThrow()
                    .design()
                    .ball()
                    .metal()
                    .label()
                    .id()
                    .equals("aluminium"));
  }

  @Test
  void seriesCableGainHumidityAndContactCount(FxRobot robot) throws TimeoutException {
    waitForDesign();
    robot.interact(() -> model.choices().number(DesignField.POWER).set("0.243"));
    pick(robot, DesignField.SERIES, "E96");
    Waiting.until(() -> nominal(OutcomeId.HEATER_RESISTANCE) == 102);
    pick(robot, DesignField.CABLE, "copper-28awg");
    Waiting.until(() -> nominal(OutcomeId.CABLE_RESISTANCE) > 0.8); // 2 m there and back
    robot.interact(() -> model.choices().number(DesignField.CABLE_LENGTH).set("10"));
    Waiting.until(() -> nominal(OutcomeId.CABLE_RESISTANCE) > 4);
    double density = nominal(OutcomeId.AIR_DENSITY);
    robot.interact(() -> model.choices().number(DesignField.HUMIDITY).set("100"));
    Waiting.until(() -> nominal(OutcomeId.AIR_DENSITY) < density);
    robot.interact(() -> model.choices().number(DesignField.GAIN).set("300"));
    stopped(robot, "#outcome-range-share-pct", "Choose a gain of");
    robot.interact(() -> model.choices().number(DesignField.CONTACT).set("600"));
    Waiting.until(() -> nominal(OutcomeId.TOUCH_LIMIT) == 48);
    assertThat(model.view().get().problems()).isEmpty();
  }

  private static void stopped(FxRobot robot, String row, String todo) {
    Waiting.until(
        () ->
            Presses.onScreen(
                robot,
                () ->
                    robot
                        .lookup(row)
                        .tryQuery()
                        .map(node -> node.lookup(".outcome-reason"))
                        .filter(
                            node ->
                                node instanceof Label label
                                    && label.getText().contains(Typeset.of(todo)))
                        .isPresent()));
    assertThat(robot.lookup(row).query().getStyleClass()).contains("stop");
  }

  @Test
  void whyShowsTheEquationWithThisDesignsNumbers(FxRobot robot) throws TimeoutException {
    waitForDesign();
    Presses.fire(robot, "#why-still-delta-k");
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(window.notes.open().get().orElseThrow().note().equations().get(0)).contains("K");
    robot.interact(() -> window.picture("design-why"));
  }

  @Test
  void anotherMetalTakesItsOwnSurface(FxRobot robot) throws TimeoutException {
    waitForDesign();
    robot.interact(
        () -> {
          model.choices().pick(DesignField.METAL).set("aluminium");
          model.said(DesignField.METAL);
        });
    WaitForAsyncUtils.waitFor(
        20,
        TimeUnit.SECONDS,
        () -> model.choices().pick(DesignField.COAT).get().equals("bare-polished-aluminium"));
    assertThat(model.view().get().problems()).isEmpty();
  }
}
