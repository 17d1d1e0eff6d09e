package faintwind.device;

import java.io.IOException;
import java.io.InputStream;
import java.net.DatagramPacket;
import java.net.DatagramSocket;

/** Packets that a logger sends here, each with one line or more; their order is that of arrival. */
final class UdpLink implements LineLink {
  private static final int LARGEST = 65_535;

  private final int port;

  UdpLink(int port) {
    this.port = port;
  }

  @Override
  public Open open() throws IOException {
    DatagramSocket socket;
    try {
      socket = new DatagramSocket(port);
    } catch (IOException e) {
      throw new IOException("udp port " + port + ": " + e.getMessage(), e);
    }
    InputStream bytes = new Packets(socket);
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

  @Override
  public SourceEvent.Wholeness firstLine() {
    return SourceEvent.Wholeness.WHOLE;
  }

  /** The packets one after the other, each ended by a line feed. */
  private static final class Packets extends InputStream {
    private final DatagramSocket socket;
    private final byte[] buffer = new byte[LARGEST + 1];
    private int at;
    private int filled;

    Packets(DatagramSocket socket) {
      this.socket = socket;
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
        at = 0;
        filled = packet.getLength();
        if (filled > 0 && buffer[filled - 1] != '\n') {
          buffer[filled++] = '\n';
        }
      }
      int count = Math.min(length, filled - at);
      System.arraycopy(buffer, at, target, from, count);
      at += count;
      return count;
    }
  }
}
