package faintwind.device;

import faintwind.calibration.live.SourceAddress;
import java.io.IOException;
import java.io.InputStream;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.time.Duration;
import java.time.Instant;

/**
 * Packets that a logger sends here, each with one line or more; their order is that of arrival.
 * Only those of the first sender that was heard count; the others are told and let go, unless the
 * first is silent for half a minute: then the record has a break there.
 */
final class UdpLink implements LineLink {
  private static final int LARGEST = 65_535;

  /** A sender that is silent for so long was started again, or has another address now. */
  private static final Duration GONE = Duration.ofSeconds(30);

  private final SourceAddress.Udp address;
  private final Timekeeper time;

  UdpLink(SourceAddress.Udp address, Timekeeper time) {
    this.address = address;
    this.time = time;
  }

  @Override
  public Open open() throws IOException {
    DatagramSocket socket;
    try {
      socket = new DatagramSocket(new InetSocketAddress(here(), address.port()));
    } catch (IOException e) {
      throw new IOException("udp port " + address.port() + ": " + e.getMessage(), e);
    }
    InputStream bytes = new Packets(socket, address.sender(), time);
    return new Open() {
      @Override
      public InputStream bytes() {
        return bytes;
      }

      @Override
      public void close() {
        socket.close();
      }
    };
  }

  private InetAddress here() throws IOException {
    return address.address().isEmpty()
        ? InetAddress.getLoopbackAddress()
        : InetAddress.getByName(address.address());
  }

  @Override
  public SourceEvent.Wholeness firstLine() {
    return SourceEvent.Wholeness.WHOLE;
  }

  /** The packets of one sender, one after the other, each ended by a line feed. */
  private static final class Packets extends InputStream {
    private final DatagramSocket socket;
    private final SourceAddress.Sender kind;
    private final byte[] buffer = new byte[LARGEST + 1];
    private final Timekeeper time;
    private String sender = "";
    private Instant heard = Instant.MAX;
    private int at;
    private int filled;

    Packets(DatagramSocket socket, SourceAddress.Sender kind, Timekeeper time) {
      this.socket = socket;
      this.kind = kind;
      this.time = time;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] target, int from, int length) throws IOException {
      while (at == filled) {
        DatagramPacket packet = new DatagramPacket(buffer, LARGEST);
        socket.receive(packet);
        String who = name(packet.getSocketAddress());
        String kept = sender.isEmpty() ? who : sender;
        boolean gone = Duration.between(heard, time.now()).compareTo(GONE) > 0;
        if (!kept.equals(who) && !gone) {
          throw new OtherSenderException(who, kept, false);
        }
        sender = who;
        heard = time.now();
        at = 0;
        filled = packet.getLength();
        if (filled > 0 && buffer[filled - 1] != '\n') {
          buffer[filled++] = '\n';
        }
        if (!kept.equals(who)) {
          throw new OtherSenderException(who, kept, true);
        }
      }
      int count = Math.min(length, filled - at);
      System.arraycopy(buffer, at, target, from, count);
      at += count;
      return count;
    }

    private String name(SocketAddress from) {
      if (!(from instanceof InetSocketAddress found)) {
        return from.toString();
      }
      String host = found.getAddress().getHostAddress();
      boolean port = kind == SourceAddress.Sender.PORT && found.getAddress().isLoopbackAddress();
      return port ? host + ":" + found.getPort() : host;
    }
  }
}
