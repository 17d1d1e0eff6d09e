package faintwind.job.live;

import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualStage;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.device.Timekeeper;
import faintwind.device.VirtualSource;
import java.util.EnumSet;

/**
 * A rehearsal with the virtual instrument: what it is told happens from its next reading on. It is
 * recorded like any other source; whatever comes of it says that it is a rehearsal. Safe from any
 * thread.
 */
public final class Rehearsal {
  private final VirtualSource source;
  private final LiveHead head;

  /**
   * A made-up instrument, cold, heater off, arm at rest.
   *
   * @param build the instrument
   * @param seed of its noise and draughts
   * @param pace how many of its seconds pass in one second, above 0; infinite for as fast as it can
   */
  public Rehearsal(VirtualBuild build, long seed, double pace) {
    this(build, seed, pace, Timekeeper.system());
  }

  Rehearsal(VirtualBuild build, long seed, double pace, Timekeeper time) {
    this.source = new VirtualSource(build, seed, pace, time);
    this.head =
        new LiveHead(
            build.chain().unit(),
            EnumSet.of(LiveColumn.AIR, LiveColumn.SUPPLY),
            Provenance.REHEARSAL,
            "virtual:?seed=" + seed);
  }

  /** The source for a {@link LiveRecording}. */
  public LiveInput input() {
    return LiveInput.ofReadings(source, head);
  }

  /** From the next reading on, this stage, until another is said. */
  public void stage(VirtualStage stage) {
    source.stage(stage);
  }

  /** From the next reading on, a steady flow past the resting pair. */
  public void blow(double speed_m_s, Heater heater) {
    source.blow(speed_m_s, heater);
  }

  /** As after hours at the stage or flow last said. */
  public void settle() {
    source.settle();
  }

  /** From now on as many of its seconds pass in one second. */
  public void pace(double times) {
    source.pace(times);
  }

  /** Time on the instrument's clock, which is the recording's, s. */
  public double time_s() {
    return source.time_s();
  }

  /** Length of the path that the arm's measured radius has swept since the start, m. */
  public double armPath_m() {
    return source.armPath_m();
  }
}
