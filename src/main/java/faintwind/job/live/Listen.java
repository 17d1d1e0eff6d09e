package faintwind.job.live;

import faintwind.calibration.Calibration;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.Possible;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.files.run.SpeedWriter;
import faintwind.job.OutputPath;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Makes a recording of any source ready, with the air speed beside it where asked for. */
public final class Listen {
  /** How long a person may have it recorded. */
  public static final Field LASTING = Field.number("for_s", 0.1, 1e9);

  private Listen() {}

  /**
   * What is recorded.
   *
   * @param address the source
   * @param text the same as it was written
   * @param profile what its lines mean, where they are not those of a run file
   * @param speed by which calibration, where the air speed is wanted
   * @param raw whether every byte that arrives is kept beside the recording
   */
  public record What(
      SourceAddress address,
      String text,
      Optional<ImportProfile> profile,
      Optional<BySpeed> speed,
      Raw raw) {}

  /** What becomes of the bytes that arrive. */
  public enum Raw {
    KEPT,
    NONE
  }

  /**
   * How the air speed is found.
   *
   * @param calibration the calibration in force
   * @param settings averaging and air
   */
  public record BySpeed(Calibration calibration, SpeedSettings settings) {}

  /**
   * A recording that is ready to {@link LiveRecording#run}.
   *
   * @param recording the recording
   * @param head what it will hold
   * @param typed takes readings that are typed, where the source is a person
   */
  public record Ready(LiveRecording recording, LiveHead head, Optional<TypedSession> typed) {}

  /**
   * Makes it ready.
   *
   * @param what the source
   * @param out where the rows go
   * @param asker asks for readings that are typed
   * @return refused where the source's lines, or the calibration, do not fit
   * @throws IOException where the source cannot be had
   */
  public static Checked<Ready> open(What what, OutputPath out, TypedSession.Asker asker)
      throws IOException, InterruptedException {
    if (what.address() instanceof SourceAddress.Typed typed) {
      TypedSession session = new TypedSession(typed, what.text(), asker);
      return ready(session.input(), what, out, Optional.of(session));
    }
    if (what.address() instanceof SourceAddress.Virtual virtual) {
      return ready(rehearsal(virtual).input(), what, out, Optional.empty());
    }
    return OpenSource.lines(what.address(), what.text(), what.profile())
        .map(input -> what.raw() == Raw.KEPT ? input : input.withoutRaw())
        .then(input -> ready(input, what, out, Optional.empty()));
  }

  /** The virtual instrument, settled in its flow with the heater on. */
  private static Rehearsal rehearsal(SourceAddress.Virtual virtual) {
    VirtualBuild build = VirtualDraw.build(virtual.seed());
    Rehearsal rehearsal = new Rehearsal(build, virtual.seed(), virtual.pace());
    rehearsal.blow(virtual.speed_m_s(), Heater.ON);
    rehearsal.settle();
    return rehearsal;
  }

  private static Checked<Ready> ready(
      LiveInput input, What what, OutputPath out, Optional<TypedSession> typed) {
    if (what.speed().isEmpty()) {
      return Checked.ok(new Ready(new LiveRecording(input, out), input.head(), typed));
    }
    List<String> there = SpeedWriter.among(input.head().others());
    if (!there.isEmpty()) {
      Where where = Where.file(what.text());
      return Checked.refused(
          Problem.error("convert.columns-there", where, String.join(", ", there)));
    }
    BySpeed by = what.speed().get();
    SignalPath path = by.calibration().signal();
    LiveInput within = input.head().unit() == path.unit() ? input.within(Possible.of(path)) : input;
    return LiveSpeed.of(by.calibration(), input.head(), by.settings())
        .map(speed -> new Ready(new LiveRecording(within, out, speed), input.head(), typed));
  }
}
