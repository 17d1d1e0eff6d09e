package faintwind.device;

import faintwind.calibration.live.SourceAddress;
import java.nio.file.Path;

/**
 * Sources of lines, by their addresses. Nothing is opened before the first event is asked for; what
 * arrives can be had at their tap.
 */
public final class Sources {
  private Sources() {}

  public static SampleSource serial(SourceAddress.Serial address, Timekeeper time, RawTap tap) {
    return new LineSource(new SerialLink(address), time, tap);
  }

  public static SampleSource tcp(SourceAddress.Tcp address, Timekeeper time, RawTap tap) {
    return new LineSource(new TcpLink(address.host(), address.port()), time, tap);
  }

  public static SampleSource udp(SourceAddress.Udp address, Timekeeper time, RawTap tap) {
    return new LineSource(new UdpLink(address, time), time, tap);
  }

  public static SampleSource file(SourceAddress.GrowingFile address, Timekeeper time, RawTap tap) {
    return new GrowingFile(address, time, tap);
  }

  /** A raw stream, read again. */
  public static SampleSource raw(SourceAddress.Raw address) {
    return new RawSource(Path.of(address.path()));
  }
}
