package faintwind.job.live;

import faintwind.calibration.live.SourceAddress;
import faintwind.device.Beep;
import faintwind.device.RawTap;
import faintwind.device.SampleSource;
import faintwind.device.SerialPorts;
import faintwind.device.SourceEvent;
import faintwind.device.Timekeeper;
import faintwind.job.JobWatch;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** What there is to listen to, and a look at what it sends. */
public final class SourceLook {
  private static final int LOOKED_AT = 40;
  private static final Duration PATIENCE = Duration.ofSeconds(8);

  private SourceLook() {}

  /** Serial ports of this computer, by the names a source is spelled with. */
  public static List<String> serialPorts() {
    return SerialPorts.here();
  }

  /** A short tone that asks for a reading; silent where there is no sound device. */
  public static void beep() {
    Beep.sound();
  }

  /**
   * The first lines that a source sends: forty of them, or those of eight seconds.
   *
   * @param address a source of lines
   * @param watch ends it early
   * @throws IOException where the source cannot be had
   */
  public static List<String> firstLines(SourceAddress address, JobWatch watch) throws IOException {
    List<String> lines = new ArrayList<>();
    try (SampleSource source = OpenSource.source(address, Timekeeper.system(), RawTap.none())) {
      Patience waiting = Patience.with(source, PATIENCE, watch);
      try {
        take(source, lines);
      } finally {
        waiting.end();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return lines;
  }

  private static void take(SampleSource source, List<String> lines)
      throws IOException, InterruptedException {
    SourceEvent event = source.next();
    while (!(event instanceof SourceEvent.Ended) && lines.size() < LOOKED_AT) {
      if (event instanceof SourceEvent.Line line) {
        lines.add(line.text());
      }
      event = source.next();
    }
  }
}
