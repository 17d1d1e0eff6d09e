package faintwind.device;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketOption;
import java.net.StandardSocketOptions;
import java.util.Map;
import jdk.net.ExtendedSocketOptions;

/**
 * A connection to a logger that listens. A peer that vanished without a word (radio out of reach,
 * power gone) is found out by probes of the system within about half a minute.
 */
final class TcpLink implements LineLink {
  private static final int PATIENCE_MS = 10_000;
  private static final Map<SocketOption<Integer>, Integer> PROBES =
      Map.of(
          ExtendedSocketOptions.TCP_KEEPIDLE, 15,
          ExtendedSocketOptions.TCP_KEEPINTERVAL, 5,
          ExtendedSocketOptions.TCP_KEEPCOUNT, 3);

  private final String host;
  private final int port;

  TcpLink(String host, int port) {
    this.host = host;
    this.port = port;
  }

  @Override
  public Open open() throws IOException {
    Socket socket = new Socket();
    try {
      socket.connect(new InetSocketAddress(host, port), PATIENCE_MS);
      socket.setOption(StandardSocketOptions.SO_KEEPALIVE, true);
      for (Map.Entry<SocketOption<Integer>, Integer> probe : PROBES.entrySet()) {
        if (socket.supportedOptions().contains(probe.getKey())) {
          socket.setOption(probe.getKey(), probe.getValue());
        }
      }
    } catch (IOException e) {
      socket.close();
      throw new IOException(host + ":" + port + ": " + e.getMessage(), e);
    }
    return new Open() {
      @Override
      public InputStream bytes() throws IOException {
        return socket.getInputStream();
      }

      @Override
      public void close() throws IOException {
        socket.close();
      }
    };
  }

  /** A bridge between may have been in the middle of a line. */
  @Override
  public SourceEvent.Wholeness firstLine() {
    return SourceEvent.Wholeness.PERHAPS_TORN;
  }
}
