package faintwind.ui.home;

import faintwind.message.Messages;
import faintwind.ui.frame.Focus;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Orientation;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Skin;
import javafx.scene.control.skin.ListViewSkin;
import javafx.scene.input.KeyEvent;

/**
 * The instruments one above another, each a {@link HomeRow}; only those in sight have nodes,
 * however many there are. A few are as high as they need, and the sheet scrolls; many scroll within
 * the list. Arrows select, Enter opens, the space bar ticks.
 */
final class HomeList extends ListView<HomeView.Line> {
  /** So many are measured and shown whole: a class of twelve. */
  static final int FEW = 12;

  private static final double MANY_EM = 28;
  private static final double EMPTY_EM = 6;

  private final Messages words;
  private final HomeModel model;
  private final Runnable ticked;
  private final List<Cell> cells = new ArrayList<>();
  private boolean byProgram;

  /**
   * A list.
   *
   * @param ticked told after a row was ticked, or its tick taken away
   */
  HomeList(Messages words, HomeModel model, Runnable ticked) {
    this.words = words;
    this.model = model;
    this.ticked = ticked;
    setId("home-rows");
    getStyleClass().add("home-rows");
    setAccessibleText(words.text("window.home.rows"));
    setCellFactory(list -> new Cell());
    getSelectionModel()
        .selectedItemProperty()
        .addListener((property, was, now) -> selected(Optional.ofNullable(now)));
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    heightProperty().addListener((property, was, now) -> keepInSight());
  }

  /** Shows lines, with the one selected that the model speaks of. */
  void show(List<HomeView.Line> lines) {
    byProgram = true;
    if (!lines.equals(getItems())) {
      getItems().setAll(lines);
    }
    getSelectionModel().clearAndSelect(model.selected().map(lines::indexOf).orElse(-1));
    byProgram = false;
    requestLayout();
  }

  /** The rows that have nodes now. */
  List<HomeRow> rows() {
    return cells.stream().filter(cell -> !cell.isEmpty()).map(cell -> cell.row).toList();
  }

  /** Ticks are as the model says. */
  void showTicks() {
    cells.forEach(Cell::showTick);
  }

  private void selected(Optional<HomeView.Line> now) {
    if (!byProgram && now.isPresent()) {
      model.select(now.get().folder());
      keepInSight();
    }
  }

  /** After the layout the row that is selected can be seen, while somebody works in the list. */
  private void keepInSight() {
    if (isFocused()) {
      Platform.runLater(
          () -> {
            if (getSkin() instanceof Measuring skin && !getSelectionModel().isEmpty()) {
              skin.show(getSelectionModel().getSelectedIndex());
              Focus.intoSight(this);
            }
          });
    }
  }

  private void pressed(KeyEvent event) {
    boolean plain = !event.isShortcutDown() && !event.isAltDown() && !event.isShiftDown();
    HomeView.Line line = getSelectionModel().getSelectedItem();
    if (!plain || line == null) {
      return;
    }
    switch (event.getCode()) {
      case ENTER -> {
        event.consume();
        model.open(line.folder());
      }
      case SPACE -> {
        event.consume();
        tick(line.folder(), !model.picked().isPicked(line.folder()));
      }
      default -> {}
    }
  }

  private void tick(Path folder, boolean is) {
    model.picked().pick(folder, is);
    ticked.run();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return rows().stream().mapToDouble(row -> row.minWidth(-1)).max().orElse(0);
  }

  @Override
  protected double computePrefWidth(double height) {
    return computeMinWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computeMaxHeight(double width) {
    return getItems().size() > FEW ? Double.MAX_VALUE : computePrefHeight(width);
  }

  @Override
  protected Skin<?> createDefaultSkin() {
    return new Measuring();
  }

  /** Knows how high its rows are. */
  private final class Measuring extends ListViewSkin<HomeView.Line> {
    Measuring() {
      super(HomeList.this);
    }

    /** Scrolls within the list so far that a row is seen whole. */
    void show(int index) {
      getVirtualFlow().scrollTo(index);
    }

    @Override
    protected double computePrefHeight(
        double width, double top, double right, double bottom, double left) {
      int count = getItems().size();
      if (count > FEW) {
        if (cells.isEmpty()) {
          getVirtualFlow().getCell(0);
        }
        return MANY_EM * cells.get(0).getFont().getSize();
      }
      double high = top + bottom + 1;
      for (int i = 0; i < count; i++) {
        high += getVirtualFlow().getCell(i).prefHeight(width);
      }
      return Math.ceil(high);
    }
  }

  /** A row in the list. */
  private final class Cell extends ListCell<HomeView.Line> {
    private final HomeRow row = new HomeRow(words);

    Cell() {
      row.tick().setOnAction(event -> tick(getItem().folder(), row.tick().isSelected()));
      row.setOnMouseClicked(
          event -> {
            if (event.getClickCount() == 1) {
              model.open(getItem().folder());
            }
          });
      cells.add(this);
    }

    @Override
    protected void updateItem(HomeView.Line line, boolean empty) {
      super.updateItem(line, empty);
      if (empty || line == null) {
        setGraphic(null);
        return;
      }
      row.show(line);
      setGraphic(row);
      showTick();
    }

    private void showTick() {
      HomeView.Line line = getItem();
      if (line != null) {
        boolean is = model.picked().isPicked(line.folder());
        row.tick().setSelected(is);
        setAccessibleText(is ? words.text("window.home.ticked", line.said()) : line.said());
      }
    }

    @Override
    public Orientation getContentBias() {
      return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
      return 0; // as wide as the list
    }

    @Override
    protected double computePrefHeight(double width) {
      double wide = width > 0 ? width : getWidth();
      return isEmpty() ? EMPTY_EM * getFont().getSize() : snapSizeY(row.prefHeight(wide));
    }

    @Override
    protected double computeMinHeight(double width) {
      return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
      row.resizeRelocate(0, 0, getWidth(), getHeight());
    }
  }
}
