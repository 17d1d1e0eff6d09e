package faintwind.calibration.virtual;

import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.SignalChain;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A made-up turntable session as a builder would hand it in, and what only the simulation knows.
 *
 * @param runs rows of the runs table with their recordings
 * @param files file name to the whole recording
 * @param truth run name to truth, for the spins
 */
public record VirtualCalibration(
    List<Run> runs, Map<String, Recording> files, Map<String, SpinTruth> truth) {
  public VirtualCalibration {
    runs = List.copyOf(runs);
    files = Map.copyOf(files);
    truth = Map.copyOf(truth);
  }

  /** The runs in kelvin as recorded, with nothing known of build or arm. */
  public RunSet runSet() {
    return new RunSet(runs, SignalChain.AS_IS, Optional.empty());
  }

  /** Whole recording of a file; an unknown name is refused. */
  public Recording file(String name) {
    Recording recording = files.get(name);
    if (recording == null) {
      throw new IllegalArgumentException("name = " + name + ", allowed " + files.keySet());
    }
    return recording;
  }

  /** Truth of a spin; an unknown name is refused. */
  public SpinTruth truthOf(String run) {
    SpinTruth found = truth.get(run);
    if (found == null) {
      throw new IllegalArgumentException("run = " + run + ", allowed " + truth.keySet());
    }
    return found;
  }

  /**
   * Truth of one spin.
   *
   * @param arm_m_s mean speed of the ball through the room
   * @param air_m_s mean speed of the air past the ball
   */
  public record SpinTruth(double arm_m_s, double air_m_s) {}
}
