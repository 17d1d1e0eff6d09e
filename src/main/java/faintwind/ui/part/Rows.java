package faintwind.ui.part;

import faintwind.message.Messages;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Rows that several screens show alike. */
public final class Rows {
  private Rows() {}

  public static Label soft(String text) {
    return Words.label(text, "soft");
  }

  /** One row a problem: a cut where the input is refused, a kink where it is a note. */
  public static List<Node> problems(List<String> sentences, boolean refused, Messages messages) {
    Mark mark = refused ? Mark.BLOCKED : Mark.ATTENTION;
    return sentences.stream().map(s -> problem(mark, s, messages)).toList();
  }

  private static Node problem(Mark mark, String sentence, Messages messages) {
    Label text = Words.label(sentence);
    Boxes.grow(text);
    return Boxes.row("problem row", new MarkShape(mark, messages.text(mark.key())), text);
  }

  /** A mark, a name, and fine words at the right. */
  public static Node run(Mark mark, String name, String detail, Messages messages) {
    Label said = Words.label(name);
    Label fine = Words.label(detail, "fine", "soft");
    Boxes.grow(said);
    return Boxes.row("run-line", new MarkShape(mark, messages.text(mark.key())), said, fine);
  }

  /** A mark with a strong line and a fine line under it. */
  public static Node check(Mark mark, String name, String detail, Messages messages) {
    Label strong = Words.label(name, "semibold", mark.styleClass());
    VBox said = new VBox(strong);
    if (!detail.isEmpty()) {
      said.getChildren().add(Words.label(detail, "fine", "soft"));
    }
    HBox.setHgrow(said, Priority.ALWAYS);
    return Boxes.row("run-line", new MarkShape(mark, messages.text(mark.key())), said);
  }
}
