package faintwind.ui.fold;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

class FoldingRowTest {
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
