package faintwind.ui.fold;

import javafx.geometry.Orientation;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.scene.layout.Region;

/** A choice of one whose box takes as many lines as the words of what was chosen need. */
public class FoldingChoice<T> extends ComboBox<T> {
  public FoldingChoice() {
    getStyleClass().add("folding-choice");
    setMaxWidth(Double.MAX_VALUE);
    setButtonCell(new Shown());
  }

  /** What was chosen, in as many lines as it needs. */
  private final class Shown extends ListCell<T> {
    Shown() {
      setWrapText(true);
      setMinHeight(Region.USE_PREF_SIZE);
    }

    @Override
    protected void updateItem(T item, boolean empty) {
      super.updateItem(item, empty);
      setText(empty || item == null ? "" : text(item));
      FoldingChoice.this.requestLayout();
    }

    @Override
    protected double computeMinWidth(double height) {
      return Need.width_px(this, computePrefWidth(-1));
    }
  }

  private String text(T item) {
    return getConverter() == null ? item.toString() : getConverter().toString(item);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** Room for the arrow that opens the list. */
  private double arrow_px() {
    return lookup(".arrow-button") instanceof Region arrow ? arrow.prefWidth(-1) : 0;
  }

  @Override
  protected double computeMinWidth(double height) {
    double beside = snappedLeftInset() + snappedRightInset() + arrow_px();
    return getButtonCell() == null ? beside : beside + getButtonCell().minWidth(-1);
  }

  @Override
  protected double computePrefHeight(double width) {
    double within = width <= 0 ? -1 : width - snappedLeftInset() - snappedRightInset() - arrow_px();
    double cell = getButtonCell() == null ? 0 : getButtonCell().prefHeight(within);
    return snappedTopInset() + snappedBottomInset() + cell;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }
}
