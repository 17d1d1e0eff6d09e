package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Real sockets, peers that die in the middle of a line. */
@Timeout(60)
class LiveSourcesTest {
  private LiveBench bench;

  @BeforeEach
  void open(@TempDir Path folder) {
    bench = new LiveBench(folder);
  }

  private static void send(Socket peer, String text) throws IOException {
    OutputStream out = peer.getOutputStream();
    out.write(text.getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  /** A connection may begin in the middle of a line. */
  private static Runnable serve(ServerSocket server, String text) {
    return () -> {
      try (Socket peer = server.accept()) {
        send(peer, "5.7\n" + text);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    };
  }

  @Test
  void aPeerThatDiesInTheMiddleOfALineIsCalledAgainAndTheTornLineIsNotRead() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      Thread first = new Thread(serve(server, "0,1.5\n1,1.6\n2,1."));
      first.start();
      LiveRecording recording =
          bench.recording(
              "tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(LiveBench.profile()));
      bench.heard().onReconnecting =
          () -> {
            bench.time().pause(Duration.ofSeconds(7));
            new Thread(serve(server, "9,1.8\r\n10,1.9\r\n")).start();
          };
      bench.heard().endAfter = 4;
      assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(4, 1, 0)));
      first.join();
    }
    assertThat(bench.rows())
        .containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "9,1.8,cut", "10,1.9,");
  }

  @Test
  void aNumberThatACutTookTheFrontOfIsNotRead() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      new Thread(serve(server, "100,1.5\n101,1.6\n10")).start();
      LiveRecording recording =
          bench.recording(
              "tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(LiveBench.profile()));
      bench.heard().onReconnecting =
          () ->
              new Thread(
                      () -> {
                        try (Socket peer = server.accept()) {
                          send(peer, "3,1.7\n104,1.8\n");
                        } catch (IOException e) {
                          throw new UncheckedIOException(e);
                        }
                      })
                  .start();
      bench.heard().endAfter = 3;
      recording.run();
    }
    assertThat(bench.rows())
        .containsExactly("time_s,signal_mV,gap", "100,1.5,", "101,1.6,", "104,1.8,cut");
  }

  @Test
  void whatCannotBeIsLeftOutMarkedAndTold() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      String lines =
          "time_s,delta_K,air_C,supply_V\n0,20,18,5\n1,805,18,5\n2,20,140,5\n3,20,18,400\n"
              + "4,2,805,20,140\n5,20,18,5\n";
      new Thread(serve(server, lines)).start();
      LiveRecording recording =
          bench.recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.empty());
      bench.heard().endAfter = 5;
      assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(5, 1, 1, 3, 0, 0)));
    }
    assertThat(bench.rows())
        .containsExactly(
            "time_s,delta_K,air_C,supply_V,gap",
            "0,20,18,5,",
            "1,,18,5,impossible",
            "2,20,,5,impossible",
            "3,20,18,,impossible",
            "5,20,18,5,garbled");
    assertThat(bench.heard().news)
        .filteredOn(news -> news.kind() == LiveNews.Kind.UNREADABLE)
        .extracting(news -> news.problem().id())
        .containsExactly(
            "import.impossible", "import.impossible", "import.impossible", "import.cells-count");
  }

  @Test
  void aLoggerThatWasStartedAgainGoesOnAfterAMarkedBreak() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      new Thread(serve(server, "100,1.5\n101,1.6\n102,1.6\n")).start();
      LiveRecording recording =
          bench.recording(
              "tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(LiveBench.profile()));
      bench.heard().onReconnecting = () -> new Thread(serve(server, "0,1.8\n1,1.9\n")).start();
      bench.heard().endAfter = 5;
      recording.run();
    }
    assertThat(bench.rows().get(4)).matches("10\\d(\\.\\d+)?,1\\.8,restarted");
    assertThat(bench.rows().get(5)).matches("10\\d(\\.\\d+)?,1\\.9,");
  }

  @Test
  void whileNobodyAnswersTheWaitsGrowToHalfAMinute() throws Exception {
    ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
    int port = server.getLocalPort();
    new Thread(serve(server, "0,1.5\n")).start();
    LiveRecording recording =
        bench.recording("tcp:127.0.0.1:" + port, Optional.of(LiveBench.profile()));
    bench.heard().onReconnecting =
        () -> {
          try {
            server.close();
            if (bench.heard().waits_s.size() == 9) {
              recording.stop();
            }
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        };
    Instant begin = bench.time().now();
    recording.run();
    double passed_s = Duration.between(begin, bench.time().now()).toMillis() / 1000.0;
    // 0.5 + 1 + 2 + 4 + 8 + 16 + 30 + 30 + … while only some are told
    assertThat(bench.heard().waits_s).startsWith(1L, 1L, 2L).endsWith(30L);
    assertThat(passed_s).isGreaterThan(61.5);
  }

  @Test
  void nobodyListeningAtFirstIsAFailureInWords() throws Exception {
    int port;
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      port = server.getLocalPort();
    }
    LiveRecording recording =
        bench.recording("tcp:127.0.0.1:" + port, Optional.of(LiveBench.profile()));
    assertThatThrownBy(recording::run)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("127.0.0.1:" + port);
    assertThat(bench.folder().resolve("out.csv")).doesNotExist();
  }

  @Test
  void garbledLinesAreMarkedAndTheRestStands() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      byte[] noise = {'2', ',', (byte) 0xC3, 0x28, (byte) 0xFF, 0, 7, '\n'};
      new Thread(
              () -> {
                try (Socket peer = server.accept()) {
                  send(peer, "\n0,1.5\n1,1.6\n");
                  peer.getOutputStream().write(noise);
                  send(peer, "x".repeat(200_000) + "\n4,1.7\n5,1.7\n");
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              })
          .start();
      LiveRecording recording =
          bench.recording(
              "tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(LiveBench.profile()));
      bench.heard().endAfter = 4;
      assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(4, 1, 2)));
    }
    assertThat(bench.rows())
        .containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "4,1.7,garbled", "5,1.7,");
  }

  @Test
  void aProfileThatDoesNotFitIsToldWithItsFields() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      new Thread(serve(server, "0;1,5\n".repeat(60))).start();
      LiveRecording recording =
          bench.recording(
              "tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(LiveBench.profile()));
      Checked<LiveCount> done = recording.run();
      assertThat(done.isOk()).isFalse();
      assertThat(done.problems().get(0).id()).isEqualTo("live.nothing-fits");
      assertThat(done.problems()).anyMatch(p -> p.where().column().isPresent());
    }
    assertThat(bench.folder().resolve("out.csv")).doesNotExist();
  }

  @Test
  void linesOfARunFileNeedNoProfileAndARehearsalStaysOne() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      String lines = "# rehearsal: made up\ntime_s,delta_K,air_C\n0,20,18\n1,20.1,18\n";
      new Thread(serve(server, lines)).start();
      LiveRecording recording =
          bench.recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.empty());
      bench.heard().endAfter = 2;
      recording.run();
    }
    assertThat(Files.readAllLines(bench.folder().resolve("out.csv")).get(0))
        .startsWith("# rehearsal:");
    assertThat(bench.rows()).containsExactly("time_s,delta_K,air_C,gap", "0,20,18,", "1,20.1,18,");
  }

  @Test
  void linesWithoutHeaderAndProfileAreRefused() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      new Thread(serve(server, "0,20\n".repeat(60))).start();
      String source = "tcp:127.0.0.1:" + server.getLocalPort();
      Checked<LiveInput> input =
          OpenSource.lines(LiveBench.address(source), source, Optional.empty(), bench.time());
      assertThat(input.problems()).extracting(Problem::id).containsExactly("live.no-header");
    }
  }
}
