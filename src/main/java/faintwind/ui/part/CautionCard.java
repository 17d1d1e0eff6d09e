package faintwind.ui.part;

import faintwind.ui.fold.ProseButton;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * One caution, in the reading order before the instruction. Its first words say the kind. One
 * button, "I have read this"; there is none that answers all.
 */
public final class CautionCard extends VBox {

  /**
   * What a caution says.
   *
   * @param id id in its step
   * @param kind such as "Can injure"
   * @param text the reason and what to do
   * @param source where it comes from
   * @param read who read it and when; empty where nobody has
   * @param refusal whether the way ends here, so that there is no button
   */
  public record Caution(
      String id, String kind, String text, String source, String read, boolean refusal) {

    /** Whether it waits for an answer. */
    public boolean isOpen() {
      return read.isEmpty();
    }
  }

  public CautionCard(Caution caution, String readThis, Runnable acknowledge) {
    getStyleClass().addAll("caution", "row");
    setId("caution-" + caution.id());
    Mark mark = caution.isOpen() ? Mark.BLOCKED : Mark.DONE;
    Label kind = Words.label(caution.kind(), "tell", "semibold", "caution-kind");
    HBox head = Boxes.row("mark-label", new MarkShape(mark, caution.kind()), kind);
    Label text = Words.label(caution.text());
    Label source = Words.label(caution.source(), "fine", "soft");
    getChildren().addAll(head, text);
    VBox words = new VBox(source);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox foot = Boxes.row("caution-foot", words);
    getChildren().add(foot);
    if (!caution.isOpen()) {
      getStyleClass().add("caution-read");
      words.getChildren().add(Words.label(caution.read(), "fine", "soft"));
    } else if (!caution.refusal()) {
      Button button = new ProseButton(readThis);
      button.setId("caution-" + caution.id() + "-read");
      button.setAccessibleText(readThis + ": " + caution.kind() + ". " + caution.text());
      button.setOnAction(event -> acknowledge.run());
      foot.getChildren().add(button);
    }
    // The focus comes to the text: the button is one step further, so that no key passes it by.
    setFocusTraversable(caution.isOpen());
    setAccessibleText(caution.kind() + ". " + caution.text() + " " + caution.source());
  }
}
