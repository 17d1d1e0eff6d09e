package faintwind.calibration.virtual;

import java.util.ArrayList;
import java.util.List;

/** When the arm of a made-up spin completed each of its turns, found from its path. */
final class Clicks {
  private final VirtualInstrument instrument;
  private final double turn_m;
  private final double begun_m;
  private final List<Double> times_s = new ArrayList<>();
  private double before_s;
  private double before_m;

  Clicks(VirtualInstrument instrument, double turn_m) {
    this.instrument = instrument;
    this.turn_m = turn_m;
    begun_m = instrument.path_m();
    before_m = begun_m;
    before_s = instrument.time_s();
  }

  /** Looks which turns were completed since the last look. */
  void look() {
    double now_m = instrument.path_m();
    double now_s = instrument.time_s();
    while (now_m > before_m && begun_m + (times_s.size() + 1) * turn_m <= now_m) {
      double share = (begun_m + (times_s.size() + 1) * turn_m - before_m) / (now_m - before_m);
      times_s.add(before_s + share * (now_s - before_s));
    }
    before_m = now_m;
    before_s = now_s;
  }

  double firstAfter_s(double time_s) {
    return times_s.stream().filter(t -> t >= time_s).findFirst().orElseThrow();
  }

  double last_s() {
    return times_s.get(times_s.size() - 1);
  }

  /** Whole turns from a click, or from the start of the motion, to the last click. */
  int turnsFrom(double first_s) {
    return (int) times_s.stream().filter(t -> t > first_s).count();
  }
}
