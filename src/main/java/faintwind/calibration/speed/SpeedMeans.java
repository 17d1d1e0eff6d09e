package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.SpeedAverage.Window;
import faintwind.calibration.speed.state.ErrorMemory;
import faintwind.calibration.speed.state.FieldFormula;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The two means of what an estimator found: about each row, and of whole minutes where somebody
 * wants them. For one log.
 */
final class SpeedMeans {
  private final SpeedAverage average;
  private final Optional<MinuteMeans> minutes;

  SpeedMeans(
      Calibration calibration,
      FieldFormula formula,
      double average_s,
      Window shape,
      Optional<Consumer<MinuteSpeed>> minuteReady) {
    ErrorMemory memory = shape == Window.PAST ? ErrorMemory.FILTERED : ErrorMemory.SMOOTHED;
    SpeedTeller teller = new SpeedTeller(calibration, formula, memory);
    average = new SpeedAverage(teller, average_s, shape);
    minutes = minuteReady.map(wanted -> new MinuteMeans(teller, wanted));
  }

  void accept(Optional<EstimatedRow> next, Consumer<SpeedRow> ready) {
    if (minutes.isPresent()) {
      minutes.get().accept(next);
    }
    average.accept(next, ready);
  }

  void finish(Consumer<SpeedRow> ready) {
    minutes.ifPresent(MinuteMeans::finish);
    average.finish(ready);
  }
}
