package faintwind.ui.part;

import faintwind.ui.fold.Prose;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.VBox;

/** A place that takes a dropped file, with a button for those who do not drag. */
public final class FileDrop extends VBox {
  private static final PseudoClass OVER = PseudoClass.getPseudoClass("over");

  /**
   * An empty place.
   *
   * @param id stable id; its button has the same with "-choose" after it
   * @param sentence what will stand here and how it gets there
   * @param choose words on the button
   * @param ask opens the file dialog
   * @param dropped takes what was dropped
   */
  public FileDrop(
      String id, String sentence, String choose, Runnable ask, Consumer<List<Path>> dropped) {
    setId(id);
    getStyleClass().add("file-drop");
    Label words = new Prose(sentence);
    words.setWrapText(true);
    Button button = Words.button(id + "-choose", choose, () -> ask.run());
    getChildren().addAll(words, button);
    setOnDragOver(
        event -> {
          if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
          }
          event.consume();
        });
    setOnDragEntered(event -> pseudoClassStateChanged(OVER, event.getDragboard().hasFiles()));
    setOnDragExited(event -> pseudoClassStateChanged(OVER, false));
    setOnDragDropped(event -> take(event, dropped));
  }

  private static void take(DragEvent event, Consumer<List<Path>> dropped) {
    boolean hasFiles = event.getDragboard().hasFiles();
    if (hasFiles) {
      dropped.accept(event.getDragboard().getFiles().stream().map(File::toPath).toList());
    }
    event.setDropCompleted(hasFiles);
    event.consume();
  }
}
