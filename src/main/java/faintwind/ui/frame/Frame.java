package faintwind.ui.frame;

import faintwind.message.Messages;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.NoteView;
import faintwind.ui.part.Notes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The fixed places of the window: top strip, path, sheet, margin, Next line. Where the window is
 * narrower than 62 em, the path becomes one line and the margin folds under the sheet, an open note
 * under the row that asked for it. Nothing scrolls sideways.
 */
public final class Frame extends VBox {
  /** Width below which the margin folds, in em. */
  static final double NARROW_EM = 62;

  /** Width from which path and margin are wider, in em. */
  private static final double ROOMY_EM = 106;

  private static final double BASE_FONT_PX = 15;

  private final Messages words;
  private final Notes notes;
  private final TopStrip strip;
  private final NextLine nextLine;
  private final HBox body = Boxes.row("body");
  private final ScrollPane pathPane = pane("path-pane");
  private final ScrollPane sheetPane = pane("sheet-pane");
  private final ScrollPane marginPane = pane("margin-pane");
  private final VBox margin = Boxes.column("margin");
  private final VBox foldedSheet = Boxes.column("folded-sheet");
  private Optional<Screen> screen = Optional.empty();
  private Optional<NoteView> note = Optional.empty();
  private boolean narrow;
  private boolean projector;

  public Frame(Messages words, Notes notes, TopStrip strip, NextLine nextLine) {
    this.words = words;
    this.notes = notes;
    this.strip = strip;
    this.nextLine = nextLine;
    getStyleClass().add("frame");
    pathPane.setMinWidth(Region.USE_PREF_SIZE);
    marginPane.setMinWidth(Region.USE_PREF_SIZE);
    sheetPane.setMinWidth(0);
    VBox.setVgrow(body, Priority.ALWAYS);
    HBox.setHgrow(sheetPane, Priority.ALWAYS);
    getChildren().addAll(strip, body, nextLine);
    notes.open().addListener((property, was, now) -> showNote());
  }

  /** A pencilled outline round the sheet says that nothing here was measured. */
  public void rehearsal(boolean isRehearsal) {
    style(this, "rehearsal", isRehearsal);
  }

  public void show(Screen now) {
    screen = Optional.of(now);
    now.margin().forEach(node -> node.visibleProperty().addListener((p, was, is) -> arrange()));
    arrange();
  }

  /** Fits the layout to the window's width at the text size in use. */
  public void fit(double width_px, int textPct, boolean isProjector) {
    double width_em = width_px / (BASE_FONT_PX * textPct / 100.0);
    style(this, "roomy", width_em >= ROOMY_EM);
    boolean nowNarrow = width_em < NARROW_EM;
    if (nowNarrow != narrow || isProjector != projector) {
      narrow = nowNarrow;
      projector = isProjector;
      strip.setNarrow(narrow);
      nextLine.setNarrow(narrow);
      style(this, "narrow", narrow);
      arrange();
    }
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
    detach();
    body.getChildren().clear();
    boolean pathBeside = !narrow && !projector && s.path().isPresent();
    style(sheetPane, "beside-path", pathBeside);
    if (pathBeside) {
      Node path = s.path().get();
      style(pathPane, "wide", path.getStyleClass().contains("wide-path"));
      pathPane.setContent(path);
      body.getChildren().add(pathPane);
    }
    List<Node> notesAndDrawings = s.margin().stream().filter(Node::isVisible).toList();
    style(
        marginPane,
        "wide",
        notesAndDrawings.stream().anyMatch(node -> node.getStyleClass().contains("wide")));
    boolean marginBeside = !narrow && !notesAndDrawings.isEmpty();
    List<Node> sheet = new ArrayList<>();
    if (!pathBeside) {
      s.pathLine().or(s::path).ifPresent(sheet::add);
    }
    sheet.add(s.sheet());
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
              put(view, open.asker());
            });
  }

  private void put(NoteView view, Node asker) {
    Optional<Node> row = narrow ? Focus.rowOf(asker) : Optional.empty();
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
