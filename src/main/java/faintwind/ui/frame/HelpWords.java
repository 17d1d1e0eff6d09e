package faintwind.ui.frame;

import faintwind.message.Glossary;
import faintwind.message.Messages;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;

/** The glossary in the margin: first the words of the screen that is shown, all by a search. */
final class HelpWords extends VBox {
  private final Messages words;
  private final Glossary all;
  private final Glossary here;
  private final Label head;
  private final VBox list = Boxes.column("aside-part");

  HelpWords(Messages words, Screen screen) {
    this.words = words;
    all = Glossary.of(words);
    here = all.usedIn(texts(screen));
    head = Words.label("", "semibold");
    TextField find = new TextField();
    find.setId("help-find");
    find.getStyleClass().add("optional");
    find.setPromptText(words.text("help.words.find"));
    find.setAccessibleText(words.text("help.words.find"));
    find.textProperty().addListener((property, was, now) -> show(now));
    list.setId("help-words");
    getStyleClass().add("aside-part");
    getChildren().addAll(head, find, list);
    show("");
  }

  private void show(String typed) {
    boolean searched = !typed.isBlank() || here.terms().isEmpty();
    head.setText(words.text(searched ? "help.words.all" : "help.words"));
    List<Node> shown = new ArrayList<>();
    for (Glossary.Term term : (searched ? all.having(typed) : here).terms()) {
      shown.add(
          new VBox(
              Words.label(String.join(", ", term.words()), "semibold"),
              Words.label(term.meaning(), "soft")));
    }
    list.getChildren()
        .setAll(shown.isEmpty() ? List.of(Words.label(words.text("help.words.none"))) : shown);
  }

  private static List<String> texts(Screen screen) {
    List<String> texts = new ArrayList<>();
    collect(screen.sheet(), texts);
    screen.path().ifPresent(path -> collect(path, texts));
    screen.margin().forEach(node -> collect(node, texts));
    return texts;
  }

  private static void collect(Node node, List<String> texts) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Labeled labeled && labeled.getText() != null) {
      texts.add(labeled.getText());
    } else if (node instanceof Text text) {
      texts.add(text.getText());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, texts));
    }
  }
}
