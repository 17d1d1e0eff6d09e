package faintwind.calibration.virtual;

import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Rows of one made-up recording as they come. Mutable; for one thread. */
final class VirtualRows {
  private final double origin_s;
  private final List<VirtualSample> rows = new ArrayList<>();

  /** The file's clock reads 0 at {@code origin_s} of the instrument's. */
  VirtualRows(double origin_s) {
    this.origin_s = origin_s;
  }

  void add(VirtualSample sample) {
    double time_s = Math.rint((sample.time_s() - origin_s) * 1000) / 1000;
    if (rows.isEmpty() || time_s > rows.get(rows.size() - 1).time_s()) {
      rows.add(new VirtualSample(time_s, sample.signal(), sample.air_K(), sample.supply_V()));
    }
  }

  double fileTime_s(double instrument_s) {
    return instrument_s - origin_s;
  }

  Recording recording(SignalUnit unit) {
    return new Recording(
        unit,
        series(VirtualSample::signal),
        Optional.of(series(VirtualSample::air_K)),
        Optional.empty(),
        Optional.empty(),
        Optional.of(series(VirtualSample::supply_V)),
        Optional.empty());
  }

  Series series(ToDoubleFunction<VirtualSample> value) {
    return Series.of(
        rows.stream().mapToDouble(VirtualSample::time_s).toArray(),
        rows.stream().mapToDouble(value).toArray());
  }
}
