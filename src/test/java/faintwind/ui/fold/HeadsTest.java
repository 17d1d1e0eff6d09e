package faintwind.ui.fold;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;

class HeadsTest {
  private static final double WIDE = 300;
  private static final double NARROW = 210;

  private static Region box(double least) {
    Region box = new Region();
    box.setMinSize(least, 10);
    box.setPrefWidth(least);
    return box;
  }

  /** What is read, and within the second part what was typed with its verdict beside it. */
  private static FoldingRow row() {
    FoldingRow answer = new FoldingRow("", box(80), box(80));
    VBox field = new VBox(answer, box(40));
    field.setMinWidth(100);
    return new FoldingRow("", box(100), field);
  }

  private static double high(Heads heads, double width_px) {
    heads.requestLayout();
    return heads.prefHeight(width_px);
  }

  private static Heads heads(int count) {
    Heads heads = new Heads();
    for (int i = 0; i < count; i++) {
      heads.getChildren().add(box(20));
    }
    FoldingRow row = row();
    heads.over(() -> List.of(row));
    return heads;
  }

  @Test
  void aHeadOverWhatIsBelowItsNeighbourIsOfNoUse() {
    Heads three = heads(3);
    assertThat(high(three, WIDE)).isPositive();
    assertThat(high(three, NARROW)).isZero();
  }

  @Test
  void whatFoldsUnderASingleHeadLeavesItThere() {
    assertThat(high(heads(2), NARROW)).isPositive();
  }
}
