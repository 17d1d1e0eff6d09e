package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.physics.design.QuantityId;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
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
            new DesignModel.Ways(journal::add, name -> Optional.of(folder.resolve(name))));
    window.show(new DesignScreen(window.desk, model).screen());
    model.begin(Optional.empty(), Optional.empty());
  }

  private void waitForDesign() throws TimeoutException {
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> model.view().get().worked().isPresent());
    WaitForAsyncUtils.waitForFxEvents();
  }

  private double nominal(QuantityId id) {
    return model
        .view()
        .get()
        .worked()
        .orElseThrow()
        .sheet()
        .quantity(id)
        .orElseThrow()
        .value()
        .nominal();
  }

  @Test
  void aTypedDiameterChangesEveryOutcome(FxRobot robot) throws TimeoutException {
    waitForDesign();
    robot.interact(() -> window.picture("design-light"));
    double before = nominal(QuantityId.TIME_CONSTANT_STILL);
    TextField field = robot.lookup("#design-diameter").queryAs(TextField.class);
    robot.interact(
        () -> {
          field.requestFocus();
          field.setText("3/8 in");
        });
    robot.press(KeyCode.TAB).release(KeyCode.TAB);
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> nominal(QuantityId.BALL_DIAMETER) < 10);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(nominal(QuantityId.BALL_DIAMETER))
        .isCloseTo(9.525, org.assertj.core.data.Offset.offset(1e-3));
    assertThat(nominal(QuantityId.TIME_CONSTANT_STILL)).isLessThan(before);
    robot.interact(() -> window.theme(Theme.DARK));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("design-dark"));
  }

  @Test
  void choiceThatCannotBeIsRefusedAndTheDesignBeforeItStays(FxRobot robot) throws TimeoutException {
    waitForDesign();
    double before = nominal(QuantityId.BORE);
    robot.interact(() -> model.choices().number(DesignChoices.Figure.BORE).set("20"));
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !model.view().get().problems().isEmpty());
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(nominal(QuantityId.BORE)).isEqualTo(before);
    assertThat(model.next().get().mark()).isEqualTo(Mark.BLOCKED);
    assertThat(model.next().get().act()).isEmpty();
  }

  @Test
  void designIsTakenAndItsPartsListSaved(FxRobot robot) throws TimeoutException, IOException {
    waitForDesign();
    robot.clickOn("#design-keep");
    assertThat(journal).hasSize(1);
    assertThat(journal.get(0)).contains("faintwind-design/1");
    robot.clickOn("#design-parts");
    Path list = folder.resolve("parts.csv");
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> Files.exists(list));
    assertThat(Files.readAllLines(list).get(0))
        .startsWith("part,what,tolerance,needed,spare,to buy,unit,look for");
    assertThat(Files.readString(list)).contains("100 Ω").contains("12.7 mm");
  }

  @Test
  void whyShowsTheEquationWithThisDesignsNumbers(FxRobot robot) throws TimeoutException {
    waitForDesign();
    robot.clickOn("#why-still-delta-k");
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(window.notes.open().get().orElseThrow().note().equations().get(0)).contains("K");
    robot.interact(() -> window.picture("design-why"));
  }

  @Test
  void anotherMetalTakesItsOwnSurface(FxRobot robot) throws TimeoutException {
    waitForDesign();
    robot.interact(
        () -> {
          model.choices().pick(DesignChoices.Pick.METAL).set("aluminium");
          model.picked(DesignChoices.Pick.METAL);
        });
    WaitForAsyncUtils.waitFor(
        20,
        TimeUnit.SECONDS,
        () ->
            model.choices().pick(DesignChoices.Pick.COAT).get().equals("bare-polished-aluminium"));
    assertThat(model.view().get().problems()).isEmpty();
  }
}
