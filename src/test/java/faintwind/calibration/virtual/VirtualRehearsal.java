package faintwind.calibration.virtual;

import faintwind.calibration.run.Series;
import faintwind.calibration.virtual.VirtualStage.Heater;
import java.util.function.DoubleUnaryOperator;

/** Made-up recordings in one call: a turntable session, or a field log of a given speed history. */
public final class VirtualRehearsal {
  private VirtualRehearsal() {}

  /** A whole turntable session; the same arguments give the same numbers. */
  public static VirtualCalibration calibration(VirtualBuild build, VirtualPlan plan, long seed) {
    return new VirtualSession(build, plan, seed).run();
  }

  /**
   * A field log that begins settled in its first speed with the heater on.
   *
   * @param build in the field's room
   * @param duration_s length, s
   * @param speedAt_m_s speed of the air at a time in seconds, not negative
   * @param seed of noise and draughts
   */
  public static VirtualLog warmFieldLog(
      VirtualBuild build, double duration_s, DoubleUnaryOperator speedAt_m_s, long seed) {
    VirtualInstrument instrument = new VirtualInstrument(build, seed);
    instrument.blow(speedAt_m_s.applyAsDouble(0), Heater.ON);
    instrument.settle();
    return log(instrument, build, duration_s, speedAt_m_s);
  }

  /** A field log that begins cold: the heater is switched on at its start. */
  public static VirtualLog coldFieldLog(
      VirtualBuild build, double duration_s, DoubleUnaryOperator speedAt_m_s, long seed) {
    return log(new VirtualInstrument(build, seed), build, duration_s, speedAt_m_s);
  }

  private static VirtualLog log(
      VirtualInstrument instrument,
      VirtualBuild build,
      double duration_s,
      DoubleUnaryOperator speedAt_m_s) {
    VirtualRows rows = new VirtualRows(0);
    int count = (int) Math.floor(duration_s / build.chain().reading().step_s()) + 1;
    for (int i = 0; i < count; i++) {
      double time_s = i * build.chain().reading().step_s();
      rows.add(instrument.sampleAt(time_s));
      instrument.blow(speedAt_m_s.applyAsDouble(time_s), Heater.ON);
    }
    Series signal = rows.series(VirtualSample::signal);
    double[] truth = signal.times_s();
    for (int i = 0; i < truth.length; i++) {
      truth[i] = speedAt_m_s.applyAsDouble(truth[i]);
    }
    return new VirtualLog(rows.recording(build.chain().unit()), Series.of(signal.times_s(), truth));
  }
}
