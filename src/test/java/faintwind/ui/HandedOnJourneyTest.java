package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.WindowChoices;
import faintwind.record.Event.HandedOver;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.Repaired;
import faintwind.ui.frame.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * An instrument that is mended and given away, with the window alone: a note, a repair, a hand-over
 * in its record, one file of it, and somebody else who takes it in.
 */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class HandedOnJourneyTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void idaMendsHandsOverAndPacksAndBoTakesIn(FxRobot robot) throws IOException {
    Path idas = Files.createDirectory(folder.resolve("ida"));
    Cellar.shipped(idas, "rind-1");
    Journey ida = Journey.of(robot, idas).asked();
    ida.open(1280, 800);
    ida.openInstrument("rind-1");
    robot.interact(() -> ida.window().desk().go().accept(Place.RECORD));
    Waiting.until(() -> ida.there("#happened-note"));
    note(ida);
    repair(robot, ida);
    handOver(ida);
    Path packed = folder.resolve("rind-1.zip");
    pack(ida, idas, packed);
    ida.press(KeyCode.ALT, KeyCode.HOME);
    Waiting.until(() -> ida.words("#instrument-rind-1").contains("Handed over To Bo"));
    ida.pictures("handed-home");
    ida.close();

    Path bos = Files.createDirectory(folder.resolve("bo"));
    new WindowChoices(100, "light", false, "Bo", "").write(bos);
    Journey bo = Journey.of(robot, bos);
    bo.open(1280, 800);
    takeIn(bo, packed);
    bo.close();
    assertThat(bo.state("rind-1-north-shelf").last(HandedOver.class)).isPresent();
  }

  private static void note(Journey ida) {
    ida.fire("#happened-note");
    Waiting.until(() -> ida.there("#happened-leave"));
    assertThat(ida.there("#happened-enter")).as("nothing to enter yet").isFalse();
    ida.write("#happened-text", "the shelf was painted");
    ida.fire("#happened-leave");
    Waiting.until(() -> !ida.there("#happened-text"));
    assertThat(ida.state("rind-1").standing(NoteWritten.class))
        .noneMatch(line -> line.event().text().contains("painted"));
    ida.fire("#happened-note");
    ida.write("#happened-text", "moved to the south shelf");
    ida.pictures("happened-note");
    ida.fire("#happened-enter");
    Waiting.until(() -> ida.words("#next-line").contains("The note is entered."));
    assertThat(ida.state("rind-1").last(NoteWritten.class).orElseThrow().event().text())
        .isEqualTo("moved to the south shelf");
    assertThat(ida.words("#ledger")).contains("moved to the south shelf");
  }

  private static void repair(FxRobot robot, Journey ida) {
    ida.fire("#happened-repair");
    ida.write("#happened-text", "new leads soldered");
    assertThat(ida.there("#happened-enter")).as("which work is not said").isFalse();
    ComboBox<?> work = robot.lookup("#happened-step").queryAs(ComboBox.class);
    robot.interact(() -> work.getSelectionModel().select(indexOf(work, "lead")));
    ida.pictures("happened-repair");
    ida.fire("#happened-enter");
    Waiting.until(() -> ida.words("#next-line").contains("The repair is entered."));
    assertThat(ida.state("rind-1").last(Repaired.class).orElseThrow().step()).isPresent();
    Waiting.until(() -> ida.words("#record-calibrations").contains("after a repair"));
    ida.pictures("happened-repaired");
  }

  private static int indexOf(ComboBox<?> choice, String word) {
    List<String> titles =
        choice.getItems().stream()
            .map(item -> ((Optional<?>) item).orElseThrow().toString())
            .toList();
    return titles.indexOf(titles.stream().filter(t -> t.contains(word)).findFirst().orElseThrow());
  }

  private static void handOver(Journey ida) {
    ida.fire("#happened-hand-over");
    ida.write("#happened-to", "Bo");
    ida.write("#happened-text", "supply and arm go along");
    ida.pictures("happened-hand-over");
    ida.fire("#happened-enter");
    Waiting.until(() -> ida.words("#next-line").contains("Pack it now"));
    assertThat(ida.state("rind-1").last(HandedOver.class).orElseThrow().event())
        .isEqualTo(new HandedOver("Bo", "supply and arm go along"));
  }

  private void pack(Journey ida, Path idas, Path packed) {
    ida.choose(idas.resolve("rind-1/within.zip"));
    ida.fire("#record-pack");
    Waiting.until(() -> ida.words("#next-line").contains("would lie in the folder"));
    assertThat(idas.resolve("rind-1/within.zip")).doesNotExist();
    ida.choose(packed);
    ida.fire("#record-pack-again");
    Waiting.until(() -> ida.words("#next-line").contains("rind-1.zip"));
    assertThat(ida.words("#next-line")).contains(ida.state("rind-1").head());
    ida.pictures("happened-packed");
  }

  private void takeIn(Journey bo, Path packed) throws IOException {
    Waiting.until(() -> bo.there("#first-take-in"));
    bo.pictures("take-in-first");
    bo.choose(Files.writeString(folder.resolve("no.zip"), "no archive"));
    bo.fire("#first-take-in");
    Waiting.until(() -> bo.words("#next-line").contains("It was not taken in."));
    bo.choose(packed);
    bo.fire("#take-in-again");
    Waiting.until(() -> bo.words("#next-line").contains("Taken in"));
    bo.pictures("taken-in");
    bo.fire("#take-in");
    Waiting.until(() -> bo.words("#next-line").contains("already"));
    bo.choose(folder.resolve("gone.zip"));
    bo.openInstrument("rind-1-north-shelf");
  }
}
