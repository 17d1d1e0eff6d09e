package faintwind.ui.part;

import faintwind.guide.checklist.Caution.Ask;
import faintwind.message.Messages;
import faintwind.ui.fold.ProseButton;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * One caution, in the reading order before the instruction. Its first words say the kind. A short
 * question is answered from its text, once an instrument and person; after that one button says "I
 * have read this". There is none that answers all.
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
   * @param ask the question to be answered; where there is none, reading it is enough
   */
  public record Content(
      String id,
      String kind,
      String text,
      String source,
      String read,
      boolean refusal,
      Optional<Ask> ask) {

    /** Whether it waits for an answer. */
    public boolean isOpen() {
      return read.isEmpty();
    }
  }

  public CautionCard(Content caution, Messages words, Runnable acknowledge) {
    getStyleClass().addAll("caution", "row");
    setId("caution-" + caution.id());
    Mark mark = caution.isOpen() ? Mark.BLOCKED : Mark.DONE;
    Label kind = Words.label(caution.kind(), "tell", "semibold", "caution-kind");
    HBox head = Boxes.row("mark-label", new MarkShape(mark, caution.kind()), kind);
    Label text = Words.label(caution.text());
    Label source = Words.label(caution.source(), "fine", "soft");
    getChildren().addAll(head, text);
    VBox below = new VBox(source);
    HBox.setHgrow(below, Priority.ALWAYS);
    HBox foot = Boxes.row("caution-foot", below);
    getChildren().add(foot);
    if (!caution.isOpen()) {
      getStyleClass().add("caution-read");
      below.getChildren().add(Words.label(caution.read(), "fine", "soft"));
    } else if (!caution.refusal() && caution.ask().isPresent()) {
      getChildren().add(question(caution, caution.ask().get(), words, acknowledge));
    } else if (!caution.refusal()) {
      foot.getChildren().add(button(caution, words.text("window.step.read-this"), acknowledge));
    }
    // The focus comes to the text: the button is one step further, so that no key passes it by.
    setFocusTraversable(caution.isOpen());
    setAccessibleText(caution.kind() + ". " + caution.text() + " " + caution.source());
  }

  private static Button button(Content caution, String said, Runnable acknowledge) {
    Button button = new ProseButton(said);
    button.setId("caution-" + caution.id() + "-read");
    button.setAccessibleText(said + ": " + caution.kind() + ". " + caution.text());
    button.setOnAction(event -> acknowledge.run());
    return button;
  }

  /** The answers, the right one at a place that its caution decides: nobody learns where. */
  private static VBox question(Content caution, Ask ask, Messages words, Runnable acknowledge) {
    Label again = Words.label(words.text("window.step.read-again"), "mark-attention");
    Boxes.present(again, false);
    FlowPane answers = new FlowPane(12, 8);
    for (int i = 0; i < ask.wrong().size(); i++) {
      Button wrong = new ProseButton(ask.wrong().get(i));
      wrong.setId("caution-" + caution.id() + "-not-" + (i + 1));
      wrong.setOnAction(event -> Boxes.present(again, true));
      answers.getChildren().add(wrong);
    }
    int place = Math.floorMod(caution.text().hashCode(), ask.wrong().size() + 1);
    answers.getChildren().add(place, button(caution, ask.right(), acknowledge));
    return Boxes.column("caution-ask", Words.label(ask.question(), "semibold"), answers, again);
  }
}
