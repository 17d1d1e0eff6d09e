package faintwind.ui;

import faintwind.guide.Step.Picture;
import faintwind.message.Messages;
import faintwind.report.card.StepCard;
import faintwind.ui.part.ClockView;
import faintwind.ui.part.PictureView;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The margin of a step: drawing, why, what good looks like, clock, photos, who signs. */
final class StepAside {
  private static final double PHOTO_WIDTH_PX = 96;

  private final Desk desk;
  private final Messages words;
  private final OpenInstrument instrument;
  private final Runnable addPhoto;
  private final VBox column = new VBox();
  private Optional<Picture> shownPicture = Optional.empty();
  private Optional<PictureView> drawing = Optional.empty();
  private Optional<StepCard> shownCard = Optional.empty();
  private Optional<CardView> card = Optional.empty();

  StepAside(Desk desk, OpenInstrument instrument, Runnable addPhoto) {
    this.desk = desk;
    words = desk.words();
    this.instrument = instrument;
    this.addPhoto = addPhoto;
    column.getStyleClass().add("aside");
    column.setId("step-aside");
  }

  Node node() {
    return column;
  }

  void show(StepView.Aside aside) {
    if (!aside.picture().equals(shownPicture)) {
      shownPicture = aside.picture();
      drawing = aside.picture().flatMap(p -> PictureView.of(p.file(), p.shows()));
    }
    if (!aside.card().equals(shownCard)) {
      shownCard = aside.card();
      card = aside.card().map(c -> new CardView(c, desk));
    }
    column.getChildren().clear();
    drawing.ifPresent(this::add);
    aside.clock().ifPresent(face -> add(new ClockView("step-clock", face)));
    card.ifPresent(this::add);
    if (!aside.why().isEmpty()) {
      add(titled("window.step.why", Words.label(aside.why())));
    }
    if (!aside.good().isEmpty()) {
      add(titled("window.step.good", Words.label(aside.good())));
    }
    if (!aside.wrong().isEmpty()) {
      VBox lines = titled("window.step.wrong");
      aside.wrong().forEach(line -> lines.getChildren().add(Words.label(line)));
      add(lines);
    }
    aside.photos().ifPresent(photos -> add(photos(photos)));
  }

  private void add(Node part) {
    if (!column.getChildren().isEmpty()) {
      column.getChildren().add(Words.rule());
    }
    column.getChildren().add(part);
  }

  private VBox titled(String key, Node... parts) {
    VBox box = new VBox(Words.label(words.text(key), "tell", "semibold"));
    box.getStyleClass().add("aside-part");
    box.getChildren().addAll(parts);
    return box;
  }

  private VBox photos(StepView.Photos photos) {
    VBox box = titled("window.step.photo", Words.label(photos.wanted(), "soft"));
    HBox pictures = new HBox();
    pictures.getStyleClass().add("photos");
    for (String file : photos.kept()) {
      Path path = instrument.folder().resolve(file);
      Image image = new Image(path.toUri().toString(), 2 * PHOTO_WIDTH_PX, 0, true, true, true);
      ImageView view = new ImageView(image);
      view.setFitWidth(PHOTO_WIDTH_PX);
      view.setPreserveRatio(true);
      view.setAccessibleText(words.text("window.step.photo-kept", photos.wanted()));
      pictures.getChildren().add(view);
    }
    Button add = new Button(words.text("window.step.add-photo"));
    add.setId("photo-add");
    add.getStyleClass().add("quiet");
    add.setOnAction(event -> addPhoto.run());
    HBox.setHgrow(pictures, Priority.ALWAYS);
    box.getChildren().addAll(pictures, add);
    return box;
  }
}
