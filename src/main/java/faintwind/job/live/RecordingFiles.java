package faintwind.job.live;

import faintwind.device.RawLog;
import java.nio.file.Path;
import java.util.List;

/** What stands beside a recording. */
public final class RecordingFiles {
  private RecordingFiles() {}

  /** The parts of the raw stream that would be this recording's; empty where there are none. */
  public static List<Path> raw(Path recording) {
    return RawLog.parts(RawLog.beside(recording));
  }
}
