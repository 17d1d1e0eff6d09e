package faintwind.ui.make;

import faintwind.ui.frame.Desk;
import faintwind.ui.part.FileDrop;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.layout.VBox;

/** Below the readings of a wiring step: a recording that gives the reading, and what it shows. */
final class BenchCard extends VBox {

  BenchCard(List<String> lines, StepModel model, Desk desk) {
    getStyleClass().add("bench-card");
    getChildren()
        .add(
            new FileDrop(
                "bench-drop",
                desk.text("window.bench.drop"),
                desk.text("window.bench.choose"),
                () -> ask(model, desk),
                files -> take(files, model)));
    VBox said = new VBox();
    said.setId("bench-lines");
    lines.forEach(line -> said.getChildren().add(Words.label(line)));
    getChildren().add(said);
  }

  private static void ask(StepModel model, Desk desk) {
    desk.files()
        .open(desk.text("window.bench.choose"), desk.text("window.bench.files"), "*.csv")
        .ifPresent(model::lookAt);
  }

  private static void take(List<Path> files, StepModel model) {
    files.stream().findFirst().ifPresent(model::lookAt);
  }
}
