package faintwind.device;

import faintwind.calibration.live.SourceAddress;

/** Sources of lines, by their addresses. Nothing is opened before the first event is asked for. */
public final class Sources {
  private Sources() {}

  public static SampleSource serial(SourceAddress.Serial address, Timekeeper time) {
    return new LineSource(new SerialLink(address), time);
  }

  public static SampleSource tcp(SourceAddress.Tcp address, Timekeeper time) {
    return new LineSource(new TcpLink(address.host(), address.port()), time);
  }

  public static SampleSource udp(SourceAddress.Udp address, Timekeeper time) {
    return new LineSource(new UdpLink(address.port()), time);
  }

  public static SampleSource file(SourceAddress.GrowingFile address, Timekeeper time) {
    return new GrowingFile(address, time);
  }
}
