package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import faintwind.message.Checked;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Packets over real sockets: who is heard, and who is not. */
@Timeout(60)
class PacketSourceTest {
  private LiveBench bench;

  @BeforeEach
  void open(@TempDir Path folder) {
    bench = new LiveBench(folder);
  }

  @Test
  void packetsAreLines() throws Exception {
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    LiveRecording recording = bench.recording("udp:" + port, Optional.of(LiveBench.profile()));
    bench.heard().onConnected =
        () -> {
          try (DatagramSocket logger = new DatagramSocket()) {
            for (String text : List.of("0,1.5", "1,1.6\n", "2,1.7\n3,1.8")) {
              byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
              InetAddress here = InetAddress.getLoopbackAddress();
              logger.send(new DatagramPacket(bytes, bytes.length, here, port));
            }
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        };
    bench.heard().endAfter = 4;
    recording.run();
    assertThat(bench.rows())
        .containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "2,1.7,", "3,1.8,");
  }

  @Test
  void aPortInUseIsAFailureInWords() throws Exception {
    try (DatagramSocket other = new DatagramSocket(0)) {
      LiveRecording recording =
          bench.recording("udp:" + other.getLocalPort(), Optional.of(LiveBench.profile()));
      assertThatThrownBy(recording::run)
          .isInstanceOf(IOException.class)
          .hasMessageContaining("udp port " + other.getLocalPort());
    }
  }

  @Test
  void onlyOneSenderIsListenedToAndAnotherIsTold() throws Exception {
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    LiveRecording recording = bench.recording("udp:" + port, Optional.of(LiveBench.profile()));
    bench.heard().onConnected =
        () -> {
          try (DatagramSocket logger = new DatagramSocket();
              DatagramSocket other = new DatagramSocket()) {
            send(logger, port, "0,1.5\n");
            send(other, port, "1,9.9\n");
            send(logger, port, "1,1.6");
            send(other, port, "2,9.9\n3,9.9\n");
            send(logger, port, "2,1.7");
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        };
    bench.heard().endAfter = 3;
    assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(3, 0, 0)));
    assertThat(bench.rows()).containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "2,1.7,");
    assertThat(bench.heard().news)
        .filteredOn(news -> news.kind() == LiveNews.Kind.OTHER_SENDER)
        .hasSize(2);
  }

  @Test
  void aSenderThatTookTheOldOnesPlaceIsABreak() throws Exception {
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    LiveRecording recording = bench.recording("udp:" + port, Optional.of(LiveBench.profile()));
    bench.heard().onConnected = () -> sendAlone(port, "0,1.5\n1,1.6\n");
    bench
        .heard()
        .afterRow
        .put(
            2,
            () -> {
              bench.time().pause(Duration.ofSeconds(31));
              sendAlone(port, "32,1.7\n");
            });
    bench.heard().endAfter = 3;
    recording.run();
    assertThat(bench.rows().get(3)).isEqualTo("32,1.7,cut");
  }

  @Test
  void packetsAreTakenFromThisComputerAloneUnlessAnAddressIsGiven() throws Exception {
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    InetAddress loopback = InetAddress.getLoopbackAddress();
    try (DatagramSocket holder = new DatagramSocket(port, loopback)) {
      assertThat(holder.isBound()).isTrue();
      // the port is held on the loopback only: another address is free, the loopback is not
      LiveRecording usual = bench.recording("udp:" + port, Optional.of(LiveBench.profile()));
      assertThatThrownBy(usual::run).hasMessageContaining("udp port " + port);
    }
    Optional<InetAddress> own = ownAddress();
    assumeThat(own).isPresent();
    try (DatagramSocket holder = new DatagramSocket(port, own.orElseThrow())) {
      assertThat(holder.isBound()).isTrue();
      LiveRecording usual = bench.recording("udp:" + port, Optional.of(LiveBench.profile()));
      bench.heard().onConnected = () -> sendAlone(port, "0,1.5\n");
      bench.heard().endAfter = 1;
      assertThat(usual.run().isOk()).isTrue();
    }
  }

  private static Optional<InetAddress> ownAddress() throws IOException {
    return NetworkInterface.networkInterfaces()
        .flatMap(NetworkInterface::inetAddresses)
        .filter(one -> one instanceof Inet4Address && !one.isLoopbackAddress())
        .findFirst();
  }

  private static void send(DatagramSocket from, int port, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    InetAddress here = InetAddress.getLoopbackAddress();
    from.send(new DatagramPacket(bytes, bytes.length, here, port));
  }

  private static void sendAlone(int port, String text) {
    try (DatagramSocket logger = new DatagramSocket()) {
      send(logger, port, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
