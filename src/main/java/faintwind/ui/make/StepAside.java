package faintwind.ui.make;

import faintwind.guide.checklist.Step.Picture;
import faintwind.job.record.InstrumentView;
import faintwind.message.Messages;
import faintwind.report.card.StepCard;
import faintwind.report.paint.PlotFigure;
import faintwind.ui.figure.CardView;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.make.StepView.Probes;
import faintwind.ui.make.StepView.ReadingLine;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.ClockView;
import faintwind.ui.part.PictureView;
import faintwind.ui.part.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The margin of a step: drawing, why, what good looks like, clock, photos, who signs. */
final class StepAside {
  private static final double PHOTO_WIDTH_PX = 96;
  private static final double OWN_PICTURE_PX = 300;
  private static final double TREND_HEIGHT_EM = 14;

  private final Desk desk;
  private final Messages words;
  private final OpenInstrument instrument;
  private final Acts acts;
  private final VBox column = Boxes.column("aside");
  private Optional<Picture> shownPicture = Optional.empty();
  private Map<String, Double> shownNumbers = Map.of();
  private Optional<Node> drawing = Optional.empty();
  private Optional<Probes> shownProbes = Optional.empty();
  private Optional<PictureView> tips = Optional.empty();
  private Optional<StepView.Aside> shown = Optional.empty();
  private List<StepCard> shownCards = List.of();
  private List<CardView> cards = List.of();

  /**
   * What the margin's buttons do.
   *
   * @param addPhoto asks for a photo
   * @param printStep puts this step on paper
   * @param printStage puts its whole stage on paper
   * @param chooseMeter uses another class of meter from now on
   */
  record Acts(
      Runnable addPhoto, Runnable printStep, Runnable printStage, Consumer<String> chooseMeter) {}

  StepAside(Desk desk, OpenInstrument instrument, Acts acts) {
    this.desk = desk;
    words = desk.words();
    this.instrument = instrument;
    this.acts = acts;
    column.setId("step-aside");
  }

  Node node() {
    return column;
  }

  /** Shows where the tips go for the reading in focus; with none, the step's own picture. */
  void showProbes(Optional<ReadingLine> reading) {
    Optional<Probes> wanted = reading.flatMap(ReadingLine::probes);
    if (wanted.equals(shownProbes)) {
      return;
    }
    shownProbes = wanted;
    tips =
        reading.flatMap(
            line ->
                line.probes()
                    .flatMap(
                        p ->
                            PictureView.ofTips(
                                p.scene(), p.one(), p.other(), line.unit(), p.shows()))
                    .map(view -> view.in(words)));
    tips.ifPresent(view -> view.setId("tips-picture"));
    shown.ifPresent(this::show);
  }

  void show(StepView.Aside aside) {
    shown = Optional.of(aside);
    Map<String, Double> numbers = instrument.now().get().situation().sheetValues();
    if (!aside.picture().equals(shownPicture) || !numbers.equals(shownNumbers)) {
      shownPicture = aside.picture();
      shownNumbers = numbers;
      drawing = aside.picture().flatMap(this::picture);
    }
    if (!aside.cards().equals(shownCards)) {
      shownCards = aside.cards();
      cards = aside.cards().stream().map(card -> new CardView(card, desk)).toList();
    }
    column.getChildren().clear();
    if (tips.isPresent()) {
      add(withWords(tips.get(), shownProbes.map(Probes::shows).orElse("")));
    } else {
      drawing.ifPresent(this::add);
    }
    aside.meter().ifPresent(face -> add(new MeterCard(face, words, acts.chooseMeter())));
    aside.clock().ifPresent(face -> add(new ClockView("step-clock", face)));
    cards.forEach(this::add);
    trends(aside.trends());
    if (!aside.reasons().why().isEmpty()) {
      add(titled("window.step.why", Words.label(aside.reasons().why())));
    }
    if (!aside.reasons().good().isEmpty()) {
      add(titled("window.step.good", Words.label(aside.reasons().good())));
    }
    if (!aside.reasons().wrong().isEmpty()) {
      VBox lines = titled("window.step.wrong");
      aside.reasons().wrong().forEach(line -> lines.getChildren().add(Words.label(line)));
      add(lines);
    }
    aside.photos().ifPresent(photos -> add(photos(photos)));
    add(paper());
  }

  /** A reading that was taken again and again: what it did over the years. */
  private void trends(List<PlotFigure> figures) {
    for (int i = 0; i < figures.size(); i++) {
      add(FigureCard.of("step-trend-" + (i + 1), figures.get(i), TREND_HEIGHT_EM, desk));
    }
  }

  /** A picture of the teacher's own checklist, or one of the program's. */
  private Optional<Node> picture(Picture wanted) {
    for (Path folder : InstrumentView.ownFolders(instrument.folder())) {
      Path file = folder.resolve("checklist").resolve("pictures").resolve(wanted.file());
      Optional<PictureView> drawn = PictureView.ofFile(file, wanted.shows());
      if (drawn.isPresent()) {
        return drawn.map(this::filled);
      }
      if (wanted.file().endsWith(".png") && Files.isRegularFile(file)) {
        return Optional.of(photo(file, wanted.shows(), OWN_PICTURE_PX));
      }
    }
    return PictureView.of(wanted.file(), wanted.shows()).map(view -> filled(view.in(words)));
  }

  private Node filled(PictureView view) {
    return view.filled(text -> instrument.now().get().situation().fill(text, words));
  }

  /** Upright, as the camera noted; of this width as it is seen. */
  private static Node photo(Path file, String shows, double width_px) {
    int quarters = InstrumentView.quartersClockwise(file);
    boolean lies = quarters % 2 == 1;
    double sharp_px = 2 * width_px;
    String source = file.toUri().toString();
    ImageView view =
        new ImageView(
            new Image(source, lies ? 0 : sharp_px, lies ? sharp_px : 0, true, true, true));
    view.setFitWidth(lies ? 0 : width_px);
    view.setFitHeight(lies ? width_px : 0);
    view.setPreserveRatio(true);
    view.setRotate(90.0 * quarters);
    // takes the room that the turned picture takes
    Group upright = new Group(view);
    upright.setAccessibleText(shows);
    upright.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    return upright;
  }

  private static Node withWords(Node picture, String shows) {
    return Boxes.column("aside-part", picture, Words.label(shows, "fine"));
  }

  private void add(Node part) {
    if (!column.getChildren().isEmpty()) {
      column.getChildren().add(Words.rule());
    }
    column.getChildren().add(part);
  }

  private VBox titled(String key, Node... parts) {
    VBox box = Boxes.column("aside-part", Words.label(words.text(key), "tell", "semibold"));
    box.getChildren().addAll(parts);
    return box;
  }

  private VBox paper() {
    FlowPane links =
        new FlowPane(
            Words.link("step-print", words.text("window.print.step"), acts.printStep()),
            Words.link("stage-print", words.text("window.print.stage"), acts.printStage()));
    links.getStyleClass().add("photos");
    return titled("window.print", links);
  }

  private VBox photos(StepView.Photos photos) {
    VBox box = titled("window.step.photo");
    if (!photos.wanted().isEmpty()) {
      box.getChildren().add(Words.label(photos.wanted(), "soft"));
    }
    FlowPane pictures = new FlowPane();
    pictures.getStyleClass().add("photos");
    for (String file : photos.kept()) {
      Path path = instrument.folder().resolve(file);
      String wanted = photos.wanted().isEmpty() ? file : photos.wanted();
      Node view = photo(path, words.text("window.step.photo-kept", wanted), PHOTO_WIDTH_PX);
      view.setId("photo-kept-" + (pictures.getChildren().size() + 1));
      pictures.getChildren().add(view);
    }
    Button add =
        Words.button("photo-add", words.text("window.step.add-photo"), () -> acts.addPhoto().run());
    add.getStyleClass().add("quiet");
    if (!photos.kept().isEmpty()) {
      box.getChildren().add(pictures);
    }
    box.getChildren()
        .addAll(add, Words.label(words.text("window.step.photo-ways"), "fine", "soft"));
    return box;
  }
}
