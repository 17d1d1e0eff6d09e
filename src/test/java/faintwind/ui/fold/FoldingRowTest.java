package faintwind.ui.fold;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

class FoldingRowTest {
  private static Region box(double least, double preferred) {
    Region box = new Region();
    box.setMinSize(least, 10);
    box.setPrefWidth(preferred);
    return box;
  }

  private static void lay(FoldingRow row, double wide) {
    row.setSnapToPixel(false); // as on a screen that has half pixels
    row.resize(wide, 40);
    row.layout();
  }

  @Test
  void wordsGetTheHalfPixelThatTheyNeed() {
    Region radio = box(40.5, 40.5);
    Region label = box(20.5, 60.5);
    FoldingRow row = new FoldingRow("", radio, label);
    lay(row, 300);
    assertThat(radio.getWidth()).isEqualTo(40.5);
    assertThat(label.getWidth()).isEqualTo(60.5);
  }

  @Test
  void whereThereIsLittleRoomNothingGetsLessThanItNeedsNorMoreThanThereIs() {
    Region first = box(40.5, 80.5);
    Region second = box(20.5, 60.5);
    FoldingRow row = new FoldingRow("", first, second);
    lay(row, 100);
    assertThat(first.getWidth()).isBetween(40.5, 80.5);
    assertThat(second.getWidth()).isBetween(20.5, 60.5);
    assertThat(first.getWidth() + second.getWidth()).isLessThanOrEqualTo(100);
  }

  /** Words that take more lines the narrower they are. */
  private static final class Words extends Region {
    @Override
    public Orientation getContentBias() {
      return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
      return 600;
    }

    @Override
    protected double computeMinWidth(double height) {
      return 50;
    }

    @Override
    protected double computePrefHeight(double width) {
      return 6000 / width;
    }
  }

  @Test
  void aColumnThatMayNotGrowIsAsHighAsItsWordsInTheWidthItHas() {
    Words words = new Words();
    words.setMaxWidth(100);
    FoldingRow row = new FoldingRow("row", words);
    assertThat(row.prefHeight(400)).isEqualTo(60);
    words.setMaxWidth(Double.MAX_VALUE);
    assertThat(row.prefHeight(400)).isEqualTo(15);
  }
}
