package faintwind.ui.part;

import faintwind.message.Messages;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One note as it stands in the margin: title with "hide", text, equations, result, source. */
public final class NoteView extends VBox {

  public NoteView(Note note, Messages words, Runnable hide) {
    getStyleClass().add("note");
    setId("note");
    Label title = Words.label(note.title(), "tell", "semibold");
    Region gap = Boxes.gap();
    Hyperlink close = Words.link("note-hide", words.text("window.note.hide"), () -> hide.run());
    close.getStyleClass().add("fine");
    HBox head = Boxes.row("note-head", title, gap, close);
    getChildren().add(head);
    if (!note.text().isEmpty()) {
      getChildren().add(Words.label(note.text()));
    }
    if (!note.equations().isEmpty()) {
      VBox box = Boxes.column("equation");
      note.equations().forEach(line -> box.getChildren().add(Words.label(line)));
      getChildren().add(box);
    }
    if (!note.result().isEmpty()) {
      getChildren().add(Words.label(note.result()));
    }
    if (!note.source().isEmpty()) {
      getChildren().add(Words.label(note.source(), "fine", "soft"));
    }
    setFocusTraversable(true);
    setAccessibleText(
        String.join(
            " ",
            note.title(),
            note.text(),
            String.join(" ", note.equations()),
            note.result(),
            note.source()));
  }
}
