package faintwind.calibration.live;

import faintwind.calibration.run.SignalUnit;

/**
 * Where readings come from, as {@code listen} and the window take it. Spellings are read by {@link
 * SourceText}.
 */
public sealed interface SourceAddress {

  /**
   * A serial line: {@code serial:/dev/ttyUSB0?baud=9600&bits=8&parity=none&stop=1}.
   *
   * @param port path or name of the port
   * @param baud speed
   * @param bits data bits, 5 to 8
   * @param parity parity
   * @param stop stop bits, 1 or 2
   */
  record Serial(String port, int baud, int bits, Parity parity, int stop)
      implements SourceAddress {}

  /** Parity of a serial line. */
  enum Parity {
    NONE,
    EVEN,
    ODD
  }

  /** A logger that is called: {@code tcp:host:port}. */
  record Tcp(String host, int port) implements SourceAddress {}

  /**
   * A logger that sends its lines here, a line or more in each packet: {@code udp:address:port}.
   *
   * @param address of this computer that takes the packets; empty for the loopback, which takes
   *     only those of programs on this computer
   * @param sender who counts as the one sender
   */
  record Udp(String address, int port, Sender sender) implements SourceAddress {}

  /** Who counts as the one sender of packets: the first that was heard. */
  enum Sender {
    /** On this computer a program that keeps its port, elsewhere an address. */
    PORT,
    /** An address: on this computer too, a program that takes a new port for every packet. */
    ADDRESS
  }

  /**
   * A file that grows: {@code file:path?from=start}.
   *
   * @param path where it is
   * @param from which of its lines count
   */
  record GrowingFile(String path, From from) implements SourceAddress {}

  /**
   * The raw stream that stands beside a recording, read again: {@code raw:NAME.raw}.
   *
   * @param path where it is
   */
  record Raw(String path) implements SourceAddress {}

  /** Which lines of a growing file count. */
  enum From {
    START,
    /** Only what is added from now on. */
    END
  }

  /**
   * Readings that a person types: {@code typed:?every_s=30&unit=mV}.
   *
   * @param every_s time between two readings, s
   * @param unit what is typed
   */
  record Typed(double every_s, SignalUnit unit) implements SourceAddress {}

  /**
   * The virtual instrument: {@code virtual:?seed=7&pace=1&speed_m_s=0.3}.
   *
   * @param seed which of the made-up instruments
   * @param pace how many of its seconds pass in one second
   * @param speed_m_s speed of the air past it; it begins settled in it
   */
  record Virtual(long seed, double pace, double speed_m_s) implements SourceAddress {}
}
