package faintwind.ui.fold;

import static org.assertj.core.api.Assertions.assertThat;

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
}
