package faintwind.ui.home;

import faintwind.job.bench.BenchRow;
import java.util.Optional;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** The calibrated speeds as a bar between 0.01 and 10 m/s, on a logarithmic scale. */
final class SpeedBand extends Pane {
  private final Region filled = new Region();
  private Optional<BenchRow.Range> range = Optional.empty();

  SpeedBand() {
    getStyleClass().add("speed-band");
    filled.getStyleClass().add("speed-band-filled");
    getChildren().add(filled);
  }

  void show(BenchRow.Range now) {
    range = Optional.of(now);
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double from = getWidth() * range.map(BenchRow.Range::from).orElse(0.0);
    double to = getWidth() * range.map(BenchRow.Range::to).orElse(0.0);
    filled.resizeRelocate(from, 0, Math.max(2, to - from), getHeight());
  }
}
