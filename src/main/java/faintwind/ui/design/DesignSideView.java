package faintwind.ui.design;

import faintwind.ui.figure.FigureCard;
import faintwind.ui.fold.ProseLink;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Designs side by side in one table and two plots, with a link to look closer at each. */
final class DesignSideView {
  private static final double PLOT_EM = 15;

  private final Desk desk;
  private final DesignModel model;
  private final DesignCompareWords said;
  private final VBox box = Boxes.column("design-page");

  DesignSideView(Desk desk, DesignModel model) {
    this.desk = desk;
    this.model = model;
    said = new DesignCompareWords(desk.words());
    box.setId("design-side");
    model.side().columns().addListener((property, was, now) -> fill(now));
    fill(model.side().columns().get());
  }

  Node node() {
    return box;
  }

  private void fill(List<DesignSideModel.Compared> columns) {
    if (columns.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>(said.rows(columns, DesignCompareWords.ALL));
    rows.addAll(said.lastRows(columns));
    FlowPane links = new FlowPane();
    links.getStyleClass().add("page-links");
    links.getChildren().add(pin());
    for (int i = 1; i < columns.size(); i++) {
      links.getChildren().add(look(i, columns.get(i)));
    }
    box.getChildren()
        .setAll(
            DesignTable.of("side-table", DesignCompareWords.heads(columns), rows),
            links,
            Words.label(desk.words().text("design.side.how"), "fine", "soft"),
            FigureCard.of("side-delta", said.deltas(columns), PLOT_EM, desk),
            FigureCard.of("side-time", said.timeConstants(columns), PLOT_EM, desk));
  }

  private Hyperlink pin() {
    Hyperlink pin = new ProseLink(desk.words().text("design.side.add"));
    pin.setId("design-compare");
    pin.setOnAction(event -> model.side().pin());
    return pin;
  }

  private Hyperlink look(int i, DesignSideModel.Compared other) {
    Hyperlink look = new ProseLink(desk.words().text("design.side.look", other.name()));
    look.setId("side-look-" + i);
    look.setOnAction(event -> model.use(other.worked()));
    return look;
  }
}
