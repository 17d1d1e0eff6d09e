package faintwind.ui.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.UsualAverage;
import faintwind.message.DateText;
import faintwind.message.Numerals;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Note;
import faintwind.ui.part.Rows;
import faintwind.ui.part.WhyLink;
import faintwind.ui.part.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Beside the plot: what stands out, the shares of the time, and what it was converted by. */
final class FieldMargin extends VBox {
  private static final double BAR_EM = 9;

  private final Desk desk;

  FieldMargin(Desk desk) {
    this.desk = desk;
    setId("field-margin");
    getStyleClass().add("data-body");
  }

  void log(FieldWords said) {
    getChildren().add(Words.label(desk.text("field.standouts"), "tell", "semibold"));
    said.standouts().forEach(this::block);
    if (!said.figures().isEmpty()) {
      getChildren().add(Words.rule());
      getChildren().add(Words.label(desk.text("field.figures"), "tell", "semibold"));
      said.figures().forEach(this::block);
    }
    getChildren().add(Words.rule());
    getChildren().add(Words.label(desk.text("field.shares"), "tell", "semibold"));
    VBox shares = new VBox();
    said.shares().forEach(line -> shares.getChildren().add(share(line)));
    getChildren().add(shares);
  }

  private void block(FieldWords.Standout said) {
    getChildren().add(new VBox(Words.label(said.name(), "bold"), Words.label(said.text())));
  }

  /** Several logs, each in its sentence. */
  void logs(List<FieldWords> all) {
    getChildren().add(Words.label(desk.text("field.together.each"), "tell", "semibold"));
    for (FieldWords said : all) {
      String name = String.valueOf(said.look().log().getFileName());
      getChildren().add(new VBox(Words.label(said.title()), Words.label(name, "fine", "soft")));
    }
  }

  private static Node share(FieldWords.ShareLine line) {
    Label name = Words.label(line.name(), "share-name");
    Region bar = new Region();
    bar.getStyleClass().add("share-bar");
    if (!line.usable()) {
      bar.getStyleClass().add("unusable");
    }
    bar.setStyle("-fx-pref-width: " + BAR_EM * line.share() + "em;");
    Region gap = Boxes.gap();
    Label pct = Words.whole(Math.round(100 * line.share()) + " %", "semibold");
    return Boxes.row("share-row", name, bar, gap, pct);
  }

  void calibration(Calibration calibration) {
    getChildren().add(Words.rule());
    Label head = Words.label(desk.text("field.how"), "tell", "semibold");
    WhyLink why =
        new WhyLink(
            "field-why",
            desk.text("field.how"),
            () -> why(calibration),
            desk.notes(),
            desk.words());
    Boxes.grow(head);
    HBox row = Boxes.row("row", head, why);
    String date = DateText.day(desk.words(), calibration.origin().validFrom());
    String average = Numerals.places(UsualAverage.of(calibration), 0);
    getChildren().addAll(row, Rows.soft(desk.text("field.how.text", date, average)));
  }

  private Note why(Calibration calibration) {
    return new Note(
        desk.text("field.how"),
        desk.text("field.why.text"),
        List.of(desk.text(calibration.formula().equation())),
        desk.text("field.why.floor", Numerals.places(calibration.performance().floor_m_s(), 2)),
        desk.text("field.why.source"));
  }
}
