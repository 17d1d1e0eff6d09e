package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.profile.ImportProfile;
import faintwind.device.StillTime;
import faintwind.files.asset.ProfileFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Real sockets, real files, peers that die in the middle of a line. */
@Timeout(60)
class LiveSourcesTest {
  @TempDir Path folder;

  private final StillTime time = new StillTime();
  private final Heard heard = new Heard();

  private static ImportProfile profile() throws IOException {
    String file = "assets/profiles/seconds-millivolts.json";
    return ProfileFile.read(Path.of(file), file).fold((ok, notes) -> ok, p -> null);
  }

  private static SourceAddress address(String text) {
    return SourceText.read(text).fold((ok, notes) -> ok, p -> null);
  }

  private LiveRecording recording(String source, Optional<ImportProfile> profile)
      throws IOException, InterruptedException {
    Checked<LiveInput> input = OpenSource.lines(address(source), source, profile, time);
    assertThat(input.problems()).isEmpty();
    LiveInput ready = input.fold((ok, notes) -> ok, p -> null);
    LiveRecording recording =
        new LiveRecording(ready, folder.resolve("out.csv"), Optional.empty(), time);
    recording.listen(heard);
    heard.recording = recording;
    return recording;
  }

  private List<String> rows() throws IOException {
    return Files.readAllLines(folder.resolve("out.csv")).stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
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
          recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(profile()));
      heard.onReconnecting =
          () -> {
            time.pause(Duration.ofSeconds(7));
            new Thread(serve(server, "9,1.8\r\n10,1.9\r\n")).start();
          };
      heard.endAfter = 4;
      assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(4, 1, 0)));
      first.join();
    }
    assertThat(rows())
        .containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "9,1.8,cut", "10,1.9,");
  }

  @Test
  void aNumberThatACutTookTheFrontOfIsNotRead() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      new Thread(serve(server, "100,1.5\n101,1.6\n10")).start();
      LiveRecording recording =
          recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(profile()));
      heard.onReconnecting =
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
      heard.endAfter = 3;
      recording.run();
    }
    assertThat(rows())
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
          recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.empty());
      heard.endAfter = 5;
      assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(5, 1, 1, 3, 0, 0)));
    }
    assertThat(rows())
        .containsExactly(
            "time_s,delta_K,air_C,supply_V,gap",
            "0,20,18,5,",
            "1,,18,5,impossible",
            "2,20,,5,impossible",
            "3,20,18,,impossible",
            "5,20,18,5,garbled");
    assertThat(heard.news)
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
          recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(profile()));
      heard.onReconnecting = () -> new Thread(serve(server, "0,1.8\n1,1.9\n")).start();
      heard.endAfter = 5;
      recording.run();
    }
    assertThat(rows().get(4)).matches("10\\d(\\.\\d+)?,1\\.8,restarted");
    assertThat(rows().get(5)).matches("10\\d(\\.\\d+)?,1\\.9,");
  }

  @Test
  void whileNobodyAnswersTheWaitsGrowToHalfAMinute() throws Exception {
    ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
    int port = server.getLocalPort();
    new Thread(serve(server, "0,1.5\n")).start();
    LiveRecording recording = recording("tcp:127.0.0.1:" + port, Optional.of(profile()));
    heard.onReconnecting =
        () -> {
          try {
            server.close();
            if (heard.waits_s.size() == 9) {
              recording.stop();
            }
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        };
    Instant begin = time.now();
    recording.run();
    double passed_s = Duration.between(begin, time.now()).toMillis() / 1000.0;
    // 0.5 + 1 + 2 + 4 + 8 + 16 + 30 + 30 + … while only some are told
    assertThat(heard.waits_s).startsWith(1L, 1L, 2L).endsWith(30L);
    assertThat(passed_s).isGreaterThan(61.5);
  }

  @Test
  void nobodyListeningAtFirstIsAFailureInWords() throws Exception {
    int port;
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      port = server.getLocalPort();
    }
    LiveRecording recording = recording("tcp:127.0.0.1:" + port, Optional.of(profile()));
    assertThatThrownBy(recording::run)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("127.0.0.1:" + port);
    assertThat(folder.resolve("out.csv")).doesNotExist();
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
          recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(profile()));
      heard.endAfter = 4;
      assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(4, 1, 2)));
    }
    assertThat(rows())
        .containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "4,1.7,garbled", "5,1.7,");
  }

  @Test
  void aProfileThatDoesNotFitIsToldWithItsFields() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      new Thread(serve(server, "0;1,5\n".repeat(60))).start();
      LiveRecording recording =
          recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.of(profile()));
      Checked<LiveCount> done = recording.run();
      assertThat(done.isOk()).isFalse();
      assertThat(done.problems().get(0).id()).isEqualTo("live.nothing-fits");
      assertThat(done.problems()).anyMatch(p -> p.where().column().isPresent());
    }
    assertThat(folder.resolve("out.csv")).doesNotExist();
  }

  @Test
  void linesOfARunFileNeedNoProfileAndARehearsalStaysOne() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      String lines = "# rehearsal: made up\ntime_s,delta_K,air_C\n0,20,18\n1,20.1,18\n";
      new Thread(serve(server, lines)).start();
      LiveRecording recording =
          recording("tcp:127.0.0.1:" + server.getLocalPort(), Optional.empty());
      heard.endAfter = 2;
      recording.run();
    }
    assertThat(Files.readAllLines(folder.resolve("out.csv")).get(0)).startsWith("# rehearsal:");
    assertThat(rows()).containsExactly("time_s,delta_K,air_C,gap", "0,20,18,", "1,20.1,18,");
  }

  @Test
  void linesWithoutHeaderAndProfileAreRefused() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      new Thread(serve(server, "0,20\n".repeat(60))).start();
      String source = "tcp:127.0.0.1:" + server.getLocalPort();
      Checked<LiveInput> input = OpenSource.lines(address(source), source, Optional.empty(), time);
      assertThat(input.problems()).extracting(Problem::id).containsExactly("live.no-header");
    }
  }

  @Test
  void packetsAreLines() throws Exception {
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    LiveRecording recording = recording("udp:" + port, Optional.of(profile()));
    heard.onConnected =
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
    heard.endAfter = 4;
    recording.run();
    assertThat(rows())
        .containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "2,1.7,", "3,1.8,");
  }

  @Test
  void aPortInUseIsAFailureInWords() throws Exception {
    try (DatagramSocket other = new DatagramSocket(0)) {
      LiveRecording recording = recording("udp:" + other.getLocalPort(), Optional.of(profile()));
      assertThatThrownBy(recording::run)
          .isInstanceOf(IOException.class)
          .hasMessageContaining("udp port " + other.getLocalPort());
    }
  }

  private void append(String text) {
    try {
      Files.writeString(
          folder.resolve("log.txt"), text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aGrowingFileIsFollowedThroughRotationAndTruncation() throws Exception {
    Path log = folder.resolve("log.txt");
    append("0,1.5\n1,1.6\n2,1");
    LiveRecording recording = recording("file:" + log, Optional.of(profile()));
    heard.afterRow.put(2, () -> append(".7\n3,1.8\n"));
    heard.afterRow.put(
        4,
        () -> {
          try {
            append("4,1.9\n5,torn");
            Files.move(log, folder.resolve("log.1"), StandardCopyOption.REPLACE_EXISTING);
            append("20,2.0\n21,2.0\n");
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
    heard.afterRow.put(
        7,
        () -> {
          try {
            Files.writeString(log, "40,3\n");
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
    heard.endAfter = 8;
    recording.run();
    assertThat(rows())
        .containsExactly(
            "time_s,signal_mV,gap",
            "0,1.5,",
            "1,1.6,",
            "2,1.7,",
            "3,1.8,",
            "4,1.9,",
            "20,2,replaced",
            "21,2,",
            "40,3,replaced");
  }

  private void write(String text) {
    try {
      Files.writeString(folder.resolve("log.txt"), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aFileThatIsCutAndHasGrownAgainBeforeItIsLookedAtLosesNothing() throws Exception {
    append("0,1.5\n1,1.6\n");
    LiveRecording recording =
        recording("file:" + folder.resolve("log.txt"), Optional.of(profile()));
    // emptied and longer than before, between two looks
    heard.afterRow.put(2, () -> write("20,2.0\n21,2.1\n22,2.2\n23,2.3\n"));
    // only its end cut off, and others in its place
    heard.afterRow.put(6, () -> write("20,2.0\n21,2.1\n30,3.0\n31,3.1\n32,3.2\n"));
    heard.endAfter = 9;
    recording.run();
    assertThat(rows())
        .containsExactly(
            "time_s,signal_mV,gap",
            "0,1.5,",
            "1,1.6,",
            "20,2,replaced",
            "21,2.1,",
            "22,2.2,",
            "23,2.3,",
            "30,3,replaced",
            "31,3.1,",
            "32,3.2,");
  }

  @Test
  void columnsThatMeanNothingHerePassThroughAndABreakOfTheSourceStays() throws Exception {
    append("time_s,lamp,delta_K,gap\n0,on,20,\n1,\"off, then on\",21,cut\n2,=1+1,22,\n");
    LiveRecording recording = recording("file:" + folder.resolve("log.txt"), Optional.empty());
    heard.endAfter = 3;
    recording.run();
    assertThat(rows())
        .containsExactly(
            "time_s,delta_K,lamp,gap", "0,20,on,", "1,21,\"off, then on\",cut", "2,22,'=1+1,");
  }

  @Test
  void onlyOneSenderIsListenedToAndAnotherIsTold() throws Exception {
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    LiveRecording recording = recording("udp:" + port, Optional.of(profile()));
    heard.onConnected =
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
    heard.endAfter = 3;
    assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(3, 0, 0)));
    assertThat(rows()).containsExactly("time_s,signal_mV,gap", "0,1.5,", "1,1.6,", "2,1.7,");
    assertThat(heard.news).filteredOn(news -> news.kind() == LiveNews.Kind.OTHER_SENDER).hasSize(2);
  }

  @Test
  void aSenderThatTookTheOldOnesPlaceIsABreak() throws Exception {
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    LiveRecording recording = recording("udp:" + port, Optional.of(profile()));
    heard.onConnected = () -> sendAlone(port, "0,1.5\n1,1.6\n");
    heard.afterRow.put(
        2,
        () -> {
          time.pause(Duration.ofSeconds(31));
          sendAlone(port, "32,1.7\n");
        });
    heard.endAfter = 3;
    recording.run();
    assertThat(rows().get(3)).isEqualTo("32,1.7,cut");
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
      LiveRecording usual = recording("udp:" + port, Optional.of(profile()));
      assertThatThrownBy(usual::run).hasMessageContaining("udp port " + port);
    }
    Optional<InetAddress> own = ownAddress();
    assumeThat(own).isPresent();
    try (DatagramSocket holder = new DatagramSocket(port, own.orElseThrow())) {
      assertThat(holder.isBound()).isTrue();
      LiveRecording usual = recording("udp:" + port, Optional.of(profile()));
      heard.onConnected = () -> sendAlone(port, "0,1.5\n");
      heard.endAfter = 1;
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

  @Test
  void onlyWhatIsAddedCountsWhereSoAsked() throws Exception {
    Path log = folder.resolve("log.txt");
    append("time_s,delta_K\n0,20\n1,2");
    LiveRecording recording = recording("file:" + log + "?from=end", Optional.empty());
    heard.onConnected = () -> append("1\n2,22\n3,23\n");
    heard.endAfter = 2;
    recording.run();
    assertThat(rows()).containsExactly("time_s,delta_K,gap", "2,22,", "3,23,");
  }

  @Test
  void aFileThatIsNotThereIsAFailureInWords() throws Exception {
    LiveRecording recording =
        recording("file:" + folder.resolve("none.txt"), Optional.of(profile()));
    assertThatThrownBy(recording::run).isInstanceOf(NoSuchFileException.class);
  }
}
