package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.ui.fold.FoldingRow;
import faintwind.ui.fold.Folds;
import faintwind.ui.fold.Prose;
import faintwind.ui.fold.ProseLink;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.PairDrawing;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The top of the window: whose instrument this is, its places, and how the window looks. */
public final class TopStrip extends FoldingRow {
  /** Names of places beside one another; the same as a menu. */
  private final Folds folds = new Folds(1);

  private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  private final Messages words;
  private final Label who = new Prose();
  private final Label folder = new Prose();
  private final Label madeUp = new Prose();
  private final HBox places = new HBox();
  private final Hyperlink folded = link("places-folded");
  private final Map<Place, Hyperlink> links = new EnumMap<>(Place.class);
  private final HBox looks = new HBox();
  private final Hyperlink leaveDemo = link("leave-demo");
  private final HBox left = Boxes.row("strip-left");
  private final Consumer<Place> go;
  private Place here = Place.HOME;

  public TopStrip(Messages words, Consumer<Place> go, LookMenu look) {
    this.words = words;
    this.go = go;
    getStyleClass().add("top-strip");
    PairDrawing sign = PairDrawing.metal(words.text("window.sign"));
    String home = words.text("window.home.way");
    for (Region way : List.of(sign, who)) {
      way.setOnMouseClicked(event -> go.accept(Place.HOME));
      way.getStyleClass().add("way-home");
      Tooltip.install(way, new Tooltip(home));
    }
    who.setId("who");
    who.getStyleClass().addAll("tell", "semibold");
    folder.setId("folder");
    folder.getStyleClass().add("soft");
    madeUp.setId("made-up");
    madeUp.getStyleClass().addAll("fine", "pencil", "italic");
    places.getStyleClass().add("places");
    for (Place place : Place.values()) {
      if (place != Place.HOME) {
        places.getChildren().add(placeLink(place));
      }
    }
    looks.getChildren().addAll(look.lookLink(), look.textLink(), look.helpLink());
    looks.getStyleClass().add("strip-links");
    left.getChildren().addAll(sign, who, folder, madeUp, leaveDemo);
    getChildren().addAll(left, places, folded, grow(), looks);
    widthProperty()
        .addListener(
            (property, was, now) -> {
              if (folds.widened(now.doubleValue())) {
                mark(madeUp.getText());
              }
            });
    folded.setOnAction(event -> PlacesMenu.show(folded, words, here, go, look));
  }

  /** What is done where the person leaves the demonstration. */
  public void whenDemoIsLeft(Runnable leave) {
    leaveDemo.setText(words.text("window.demo-leave"));
    leaveDemo.setOnAction(event -> leave.run());
    demo(false);
  }

  /** Whether the made-up demonstration is looked at: there is a way out of it, everywhere. */
  public void demo(boolean looked) {
    show(leaveDemo, looked);
    restart();
  }

  /** All instruments of a folder. */
  public void showHome(String folderName) {
    here = Place.HOME;
    folds.restart();
    who.setText(words.text("window.name"));
    folder.setText(folderName.isEmpty() ? "" : words.text("window.folder", folderName));
    mark("");
  }

  /**
   * One place of one instrument.
   *
   * @param mark says that its data are made up or a rehearsal; empty where they were measured
   */
  public void showInstrument(String name, Place place, String mark) {
    here = place;
    who.setText(name);
    folder.setText("");
    folds.restart();
    mark(mark);
    links.forEach((p, link) -> link.pseudoClassStateChanged(HERE, p == place));
    folded.setText(words.text("window.places-folded", words.text(place.key()), links.size() - 1));
  }

  /** The words in it, or their size, changed. */
  void restart() {
    folds.restart();
    mark(madeUp.getText());
  }

  /** Folds the places where they do not fit; asked before it is given its height. */
  void foldTo(double width_px) {
    if (here != Place.HOME && folds.needs(need(), width_px)) {
      mark(madeUp.getText());
    }
    if (here != Place.HOME && folds.step() > 0) {
      show(looks, hasRoomForLooks(width_px));
    }
  }

  /** All words in one line. */
  private double need() {
    double need = snappedLeftInset() + snappedRightInset();
    for (Region part : List.of(left, places, looks)) {
      need += getSpacing() + part.prefWidth(-1);
    }
    return need + getSpacing();
  }

  private void mark(String mark) {
    madeUp.setText(mark);
    boolean narrow = folds.step() > 0;
    show(madeUp, !mark.isEmpty());
    show(folder, here == Place.HOME);
    show(places, here != Place.HOME && !narrow);
    show(folded, here != Place.HOME && narrow);
    show(looks, here == Place.HOME || !narrow);
  }

  /** Whether the places' menu leaves room for what is asked for at any size: look and help. */
  private boolean hasRoomForLooks(double width_px) {
    double need = snappedLeftInset() + snappedRightInset() + getSpacing();
    for (Region part : List.of(left, folded, looks)) {
      need += getSpacing() + part.prefWidth(-1);
    }
    return need <= width_px;
  }

  private static void show(Region node, boolean visible) {
    Boxes.present(node, visible);
  }

  private Hyperlink placeLink(Place place) {
    Hyperlink link = link(place.id());
    link.setText(words.text(place.key()));
    link.getStyleClass().add("place");
    link.setOnAction(event -> go.accept(place));
    links.put(place, link);
    return link;
  }

  private static Hyperlink link(String id) {
    Hyperlink link = new ProseLink();
    link.setId(id);
    return link;
  }

  private static Region grow() {
    Region gap = Boxes.gap();
    return gap;
  }
}
