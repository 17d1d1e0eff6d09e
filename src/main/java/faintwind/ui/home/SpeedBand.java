package faintwind.ui.home;

import faintwind.job.bench.BenchRow;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** The calibrated speeds as a bar between 0.01 and 10 m/s, on a logarithmic scale. */
final class SpeedBand extends Pane {
  private final BenchRow.Range range;
  private final Region filled = new Region();

  SpeedBand(BenchRow.Range range) {
    this.range = range;
    getStyleClass().add("speed-band");
    filled.getStyleClass().add("speed-band-filled");
    getChildren().add(filled);
  }

  @Override
  protected void layoutChildren() {
    double from = getWidth() * range.from();
    double to = getWidth() * range.to();
    filled.resizeRelocate(from, 0, Math.max(2, to - from), getHeight());
  }
}
