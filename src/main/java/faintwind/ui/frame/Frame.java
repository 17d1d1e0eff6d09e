package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.message.Translation;
import faintwind.ui.fold.Folds;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NoteView;
import faintwind.ui.part.Notes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.NodeOrientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The fixed places of the window: top strip, path, sheet, margin, Next line. Where path, sheet and
 * margin do not have the width that their content needs, the margin folds under the sheet, an open
 * note under the row that asked for it; where path and sheet do not have it either, the path
 * becomes one line. Nothing scrolls sideways.
 */
public final class Frame extends VBox {
  /** The least width of a sheet that is read, in em: lines of 45 letters and its edges. */
  private static final double SHEET_EM = 30;

  /** Width from which path and margin are wider, in em. */
  private static final double ROOMY_EM = 106;

  /** The least height of what stands between strip and Next line, in em. */
  private static final double ROOM_EM = 10;

  private static final double BASE_FONT_PX = 15;

  private final Messages words;
  private final Notes notes;
  private final TopStrip strip;
  private final NextLine nextLine;
  private final HBox body = new HBox();
  private final ScrollPane pathPane = pane("path-pane");
  private final ScrollPane sheetPane = pane("sheet-pane");
  private final ScrollPane marginPane = pane("margin-pane");
  private final VBox margin = Boxes.column("margin");
  private final VBox pathColumn = new VBox();
  private final VBox foldedSheet = Boxes.column("folded-sheet");
  private Optional<Screen> screen = Optional.empty();
  private boolean touched;
  private Optional<NoteView> note = Optional.empty();
  private final Folds folds = new Folds(2);

  /** Whether the window is too low for the small words of the Next line. */
  private final Folds low = new Folds(1);

  private boolean projector;
  private double em_px = BASE_FONT_PX;

  public Frame(Messages words, Notes notes, TopStrip strip, NextLine nextLine) {
    this.words = words;
    this.notes = notes;
    this.strip = strip;
    this.nextLine = nextLine;
    boolean rightToLeft = words.direction() == Translation.Direction.RTL;
    setNodeOrientation(rightToLeft ? NodeOrientation.RIGHT_TO_LEFT : NodeOrientation.LEFT_TO_RIGHT);
    getStyleClass().add("frame");
    body.getStyleClass().add("body");
    pathPane.setMinWidth(Region.USE_PREF_SIZE);
    marginPane.setMinWidth(Region.USE_PREF_SIZE);
    sheetPane.setMinWidth(0);
    margin.setMinHeight(Region.USE_PREF_SIZE); // what is too high scrolls
    foldedSheet.setMinHeight(Region.USE_PREF_SIZE);
    pathColumn.setMinHeight(Region.USE_PREF_SIZE);
    widthProperty().addListener((property, was, now) -> widened());
    heightProperty().addListener((property, was, now) -> heightened());
    VBox.setVgrow(body, Priority.ALWAYS);
    HBox.setHgrow(sheetPane, Priority.ALWAYS);
    getChildren().addAll(strip, body, nextLine);
    notes.open().addListener((property, was, now) -> showNote());
    addEventFilter(KeyEvent.KEY_PRESSED, event -> touch());
    addEventFilter(MouseEvent.MOUSE_PRESSED, event -> touched = true);
  }

  /** A pencilled outline round the sheet says that nothing here was measured. */
  public void rehearsal(boolean isRehearsal) {
    style(this, "rehearsal", isRehearsal);
  }

  public void show(Screen now) {
    screen = Optional.of(now);
    touched = false;
    now.margin().forEach(node -> node.visibleProperty().addListener((p, was, is) -> again()));
    again();
  }

  private void again() {
    folds.restart();
    low.restart();
    style(this, "low", false);
    arrange();
  }

  /** Takes another text size, or another way to be looked at. */
  public void fit(int textPct, boolean isProjector) {
    em_px = BASE_FONT_PX * textPct / 100.0;
    projector = isProjector;
    style(this, "roomy", getWidth() >= ROOMY_EM * em_px);
    strip.restart();
    again();
  }

  private void widened() {
    style(this, "roomy", getWidth() >= ROOMY_EM * em_px);
    if (folds.widened(getWidth())) {
      arrange();
    }
  }

  private void heightened() {
    if (low.widened(getHeight())) {
      style(this, "low", false);
      nextLine.setNarrow(folds.step() == 2);
    }
  }

  @Override
  protected void layoutChildren() {
    strip.foldTo(getWidth());
    while (folds.needs(need(), getWidth())) {
      arrange();
    }
    double edges_px = strip.prefHeight(getWidth()) + nextLine.prefHeight(getWidth());
    if (low.needs(edges_px + ROOM_EM * em_px, getHeight())) {
      nextLine.setNarrow(true);
      style(this, "low", true);
    }
    super.layoutChildren();
  }

  /** The width that what stands beside one another needs. */
  private double need() {
    double need = 0;
    for (Node pane : body.getChildren()) {
      boolean sheet = pane == sheetPane;
      need += sheet ? Math.max(SHEET_EM * em_px, foldedSheet.minWidth(-1)) : pane.prefWidth(-1);
    }
    return need;
  }

  /** Scrolls so that what has the focus is not hidden behind an edge. */
  public void reveal(Node focused) {
    Focus.reveal(focused, sheetPane);
    Focus.reveal(focused, pathPane);
  }

  /** The regions that F6 walks through, in order; those that are not shown are left out. */
  public List<Node> regions() {
    List<Node> all = new ArrayList<>(body.getChildren());
    all.add(nextLine);
    return all;
  }

  private void arrange() {
    if (screen.isEmpty()) {
      return;
    }
    Screen s = screen.get();
    Optional<Node> focused =
        Optional.ofNullable(getScene())
            .map(Scene::getFocusOwner)
            .filter(owner -> Focus.isInside(owner, body));
    style(this, "narrow", folds.step() == 2);
    nextLine.setNarrow(folds.step() == 2 || low.step() > 0);
    detach();
    body.getChildren().clear();
    boolean pathBeside = folds.step() < 2 && !projector && s.path().isPresent();
    style(sheetPane, "beside-path", pathBeside);
    if (pathBeside) {
      Node path = s.path().get();
      style(pathPane, "wide", path.getStyleClass().contains("wide-path"));
      pathColumn.getChildren().setAll(path);
      pathPane.setContent(pathColumn);
      body.getChildren().add(pathPane);
    }
    List<Node> notesAndDrawings = s.margin().stream().filter(Node::isVisible).toList();
    style(
        marginPane,
        "wide",
        notesAndDrawings.stream().anyMatch(node -> node.getStyleClass().contains("wide")));
    boolean marginBeside = folds.step() < 1 && !notesAndDrawings.isEmpty();
    List<Node> sheet = new ArrayList<>();
    if (!pathBeside) {
      s.pathLine().or(() -> s.path().filter(Frame::isChoices)).ifPresent(sheet::add);
    }
    sheet.add(s.sheet());
    if (!pathBeside && s.pathLine().isEmpty()) {
      s.path().filter(path -> !isChoices(path)).ifPresent(sheet::add);
    }
    margin.getChildren().setAll(notesAndDrawings);
    if (!marginBeside && !notesAndDrawings.isEmpty()) {
      sheet.add(margin);
    }
    foldedSheet.getChildren().setAll(sheet);
    VBox.setVgrow(s.sheet(), Priority.ALWAYS);
    sheetPane.setContent(foldedSheet);
    body.getChildren().add(sheetPane);
    if (marginBeside) {
      marginPane.setContent(margin);
      body.getChildren().add(marginPane);
    }
    sheetPane.setVvalue(0);
    showNote();
    focused.filter(owner -> owner.getScene() != null).ifPresent(this::keepInSight);
  }

  /** What has the focus stays in sight when the window folds or the text grows. */
  private void keepInSight(Node owner) {
    owner.requestFocus();
    if (touched || !screen.map(Screen::isReadFirst).orElse(false)) {
      Platform.runLater(
          () -> {
            applyCss(); // what is measured is measured in the size that the words have now
            layout(); // rows have the height that they take in this width
            Focus.amid(owner, sheetPane);
            Focus.reveal(owner, pathPane);
          });
    }
  }

  /** Somebody works here; what is typed into is in sight. */
  private void touch() {
    touched = true;
    Optional.ofNullable(getScene())
        .map(Scene::getFocusOwner)
        .filter(TextInputControl.class::isInstance)
        .ifPresent(this::reveal);
  }

  /** What is chosen comes before what follows from it; what is only listed, after. */
  private static boolean isChoices(Node path) {
    return path.getStyleClass().contains("wide-path");
  }

  private static void style(Node node, String name, boolean has) {
    node.getStyleClass().remove(name);
    if (has) {
      node.getStyleClass().add(name);
    }
  }

  private void detach() {
    foldedSheet.getChildren().clear();
    margin.getChildren().clear();
    pathColumn.getChildren().clear();
    pathPane.setContent(null);
    marginPane.setContent(null);
    sheetPane.setContent(null);
  }

  private void showNote() {
    // arranging the margin anew may have taken it out already
    note.filter(old -> old.getParent() instanceof Pane)
        .ifPresent(old -> ((Pane) old.getParent()).getChildren().remove(old));
    note = Optional.empty();
    notes
        .open()
        .get()
        .ifPresent(
            open -> {
              NoteView view = new NoteView(open.note(), words, notes::close);
              note = Optional.of(view);
              open.more().ifPresent(view.getChildren()::add);
              if (open.more().isPresent()) {
                putFirst(view);
              } else {
                put(view, open.asker());
              }
            });
  }

  /** Where it is seen at once: on top of the margin, or of the sheet where that is folded. */
  private void putFirst(NoteView view) {
    boolean beside = body.getChildren().contains(marginPane);
    (beside ? margin : foldedSheet).getChildren().add(0, view);
    (beside ? marginPane : sheetPane).setVvalue(0);
  }

  private void put(NoteView view, Node asker) {
    Optional<Node> row = folds.step() > 0 ? Focus.rowOf(asker) : Optional.empty();
    if (row.isPresent() && row.get().getParent() instanceof VBox rows) {
      rows.getChildren().add(rows.getChildren().indexOf(row.get()) + 1, view);
      return;
    }
    boolean drawingFirst =
        !margin.getChildren().isEmpty()
            && margin.getChildren().get(0).getStyleClass().contains("drawing");
    margin.getChildren().add(drawingFirst ? 1 : 0, view);
    if (margin.getParent() == null) {
      foldedSheet.getChildren().add(margin);
    }
  }

  private static ScrollPane pane(String styleClass) {
    ScrollPane pane = new ScrollPane();
    pane.setId(styleClass);
    pane.getStyleClass().add(styleClass);
    pane.setFitToWidth(true);
    pane.setFitToHeight(true);
    pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    pane.setFocusTraversable(false);
    return pane;
  }
}
