package faintwind.ui.figure;

import faintwind.report.card.StepCard;
import faintwind.report.figure.WiringDrawing;
import faintwind.report.picture.Picture;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Note;
import faintwind.ui.part.WhyLink;
import faintwind.ui.part.Words;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A card in the margin: drawings, then one number a row, each with its Why. */
public final class CardView extends VBox {
  private static final double BALL_EM = 15;
  private static final double WIRING_EM = 32;

  public CardView(StepCard card, Desk desk) {
    setId("step-card");
    getStyleClass().add("aside-part");
    getChildren().add(Words.label(card.title(), "tell", "semibold"));
    for (Picture picture : card.drawings()) {
      getChildren().add(drawing(picture, desk));
    }
    int number = 0;
    for (StepCard.Row row : card.rows()) {
      number++;
      getChildren().add(row(row, "card-why-" + number, desk));
    }
    card.remarks().forEach(remark -> getChildren().add(Words.label(remark, "fine")));
  }

  private static Region drawing(Picture picture, Desk desk) {
    double height_em = picture instanceof WiringDrawing ? WIRING_EM : BALL_EM;
    FigureView view = new FigureView(desk.look(), desk.words().locale(), height_em);
    view.show(picture);
    view.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    view.setAccessibleText(picture.title() + ". " + picture.description());
    return Boxes.column("card-drawing", Words.label(picture.title(), "fine", "soft"), view);
  }

  private static Region row(StepCard.Row row, String id, Desk desk) {
    VBox said = new VBox(Words.label(row.what(), "fine", "soft"), Words.label(row.value()));
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox line = Boxes.row("row card-row", said);
    if (!row.why().isEmpty()) {
      line.getChildren()
          .add(
              new WhyLink(
                  id,
                  row.what(),
                  () -> new Note(row.what(), row.why(), List.of(), row.value(), ""),
                  desk.notes(),
                  desk.words()));
    }
    return line;
  }
}
