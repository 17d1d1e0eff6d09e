package faintwind.ui.field;

import faintwind.ui.frame.Desk;
import faintwind.ui.part.Words;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.FlowPane;

/** The links to the pages of the field, at the head of each. */
public final class FieldPages extends FlowPane {
  private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  /**
   * The links.
   *
   * @param here the page that is shown
   * @param go shows another
   */
  public FieldPages(Desk desk, FieldPage here, Consumer<FieldPage> go) {
    setId("field-pages");
    getStyleClass().add("page-links");
    for (FieldPage page : FieldPage.values()) {
      Hyperlink link =
          Words.link(
              "field-page-" + page.word(),
              desk.text("field.page." + page.word()),
              () -> {
                if (page != here) {
                  go.accept(page);
                }
              });
      link.getStyleClass().add("page-link");
      link.pseudoClassStateChanged(HERE, page == here);
      getChildren().add(link);
    }
  }
}
