package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.channels.DatagramChannel;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No command opens a port or a connection, or starts a program, that it was not told to. */
class NothingUnaskedTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final Path CALIBRATION = CELLAR.resolve("calibrations/2026-09-13.json");
  private static final Path RUNS = CELLAR.resolve("runs/first-session/runs.csv");
  private static final Path LOG = CELLAR.resolve("logs/north-shelf-day.csv");
  private static final int CLOSED = 9;

  @TempDir Path temp;

  private final Shell shell = new Shell();
  private final Set<String> done = new TreeSet<>();

  private Path copy() throws IOException {
    Path folder = temp.resolve("cellar");
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.toList()) {
        Files.copy(file, folder.resolve(CELLAR.relativize(file).toString()));
      }
    }
    return folder;
  }

  private Path example(String kind) throws IOException {
    shell.run("example", kind);
    String name = kind.equals("design") ? "design.json" : kind + ".txt";
    return Files.writeString(temp.resolve(name), shell.said());
  }

  private String out(String name) {
    return temp.resolve(name).toString();
  }

  /** Runs it, which has to come to an end, and opens nothing. */
  private void silent(Object... words) throws Exception {
    assertThat(quiet(words)).as(words[0] + ": " + shell.said()).isIn(0, 4);
  }

  /** The same for an entry that the record of this instrument may refuse. */
  private void silentEntry(Object... words) throws Exception {
    assertThat(quiet(words)).as(words[0] + ": " + shell.said()).isIn(0, 3, 4);
  }

  private int quiet(Object... words) throws Exception {
    int[] code = {-1};
    List<String> seen = NetworkWatch.during(() -> code[0] = shell.run(words));
    assertThat(seen).as(String.valueOf(words[0])).isEmpty();
    done.add(String.valueOf(words[0]));
    return code[0];
  }

  @Test
  void whatIsPlantedIsSeen() throws Exception {
    InetSocketAddress closed = new InetSocketAddress(InetAddress.getLoopbackAddress(), CLOSED);
    List<NetworkWatch.Action> planted = new ArrayList<>();
    planted.add(() -> new Socket(InetAddress.getLoopbackAddress(), CLOSED).close());
    planted.add(() -> new ServerSocket(0).close());
    planted.add(() -> new DatagramSocket(0).close());
    planted.add(() -> SocketChannel.open(closed).close());
    planted.add(() -> ServerSocketChannel.open().bind(null).close());
    planted.add(() -> DatagramChannel.open().bind(null).close());
    planted.add(() -> URI.create("http://127.0.0.1:" + CLOSED + "/").toURL().openStream().close());
    planted.add(() -> InetAddress.getAllByName("nowhere.invalid"));
    planted.add(() -> new ProcessBuilder("true").start().waitFor());
    for (NetworkWatch.Action one : planted) {
      List<String> seen =
          NetworkWatch.during(
              () -> {
                try {
                  one.run();
                } catch (IOException e) {
                  assertThat(e).isNotNull(); // nobody listens there
                }
              });
      assertThat(seen).isNotEmpty();
    }
  }

  @Test
  void aSourceIsOpenedWhereItWasToldAndNowhereElse() throws Exception {
    Path log = temp.resolve("log.csv");
    String tcp = "tcp:127.0.0.1:" + CLOSED;
    assertThat(NetworkWatch.during(() -> shell.run("listen", tcp, "--out", log)))
        .isNotEmpty()
        .allMatch(seen -> seen.equals("connect 127.0.0.1:" + CLOSED));
    int port;
    try (DatagramSocket free = new DatagramSocket(0)) {
      port = free.getLocalPort();
    }
    String udp = "udp:" + port;
    assertThat(
            NetworkWatch.during(
                () ->
                    shell.run(
                        "listen",
                        udp,
                        "--out",
                        log,
                        "--profile",
                        "seconds-millivolts",
                        "--for-s",
                        "0.2")))
        .containsExactly("listen " + port);
    Path own = Files.writeString(temp.resolve("own.csv"), "time_s,delta_K\n0,20\n1,21\n2,21\n");
    silent("listen", "file:" + own, "--out", out("l1.csv"), "--for-s", "1.5");
    silent("listen", "--from", temp.resolve("l1.raw"), "--out", out("l2.csv"));
    silent("listen", "virtual:?pace=100000", "--out", out("l3.csv"), "--for-s", "9");
    silent("check", own);
    silent("example", "design");
    silent("size", example("design"));
    silent("help", "listen");
  }

  @Test
  @Tag("long")
  void everyCommandKeepsToItself() throws Exception {
    Path folder = copy();
    Path log = temp.resolve("part.csv");
    Files.write(log, Files.readAllLines(LOG).subList(0, 600), StandardCharsets.UTF_8);
    silent("calibrate", RUNS, "--out", out("cal.json"), "--report", out("cal.html"));
    silent("convert", CALIBRATION, log, "--out", out("speeds.csv"));
    silent("export", CALIBRATION, "--as", "xlsx", "--out", out("f.xlsx"));
    silent("summary", temp.resolve("speeds.csv"), "--picture", out("speeds.png"));
    silent("survey", example("places"));
    silent(
        "opening",
        "--shape",
        "round",
        "--width-mm",
        "315",
        "--ball-mm",
        "8",
        "--out",
        out("o.csv"));
    silent("flow", example("points"));
    silent("list", temp);
    silent("class", "create", out("class"), "--pairs", 1);
    silentEntry("pool", "--look", folder);
    silent("check", folder);
    silent("size", example("design"), "--json");
    silent("clicks", ClicksCommandTest.beat(temp), "--per-turn", 4);
    silent("report", folder, "--out", out("log.pdf"));
    silent("steps", folder);
    silent("plan", example("design"), "--radius-mm", "300,600", "--sheet", out("plan.pdf"));
    silentEntry("corrections", CALIBRATION, RUNS);
    silent("listen", "virtual:?pace=100000", "--out", out("v.csv"), "--for-s", "9");
    silent("demo", "--no-window", "--out-dir", out("demo"));
    silent("new", temp.resolve("new"), "--name", "New");
    silent("note", folder, "a note");
    silentEntry("reading", folder, "jar-check", "jar-delta", "31.6");
    silent("step", folder, "jar-check");
    silentEntry("correct", folder, "e3", "--because", "a slip of the pen");
    silentEntry("put-in-force", folder, "calibrations/2026-09-13.json");
    silent("compare", CALIBRATION, CALIBRATION);
    silentEntry("recheck", CALIBRATION, RUNS);
    silentEntry("accept", folder, "--place", "chain.json", "--because", "known to everybody");
    silent("pack", folder, "--out", out("packed.zip"));
    silent("unpack", temp.resolve("packed.zip"), temp.resolve("taken"));
    silent("example", "log");
    silentEntry("draft-profile", "assets/profiles/semicolons-clock.sample.csv");
    silent("completion");
    silent("man", "convert");
    silent("help", "convert");
    assertThat(done).containsAll(commands());
  }

  /** Every command that the program says it has. */
  private Set<String> commands() {
    shell.run("--help");
    Set<String> all = new TreeSet<>();
    String list = shell.said().substring(shell.said().indexOf("Commands:"));
    Pattern.compile("(?m)^  ([a-z][a-z-]*)\\s")
        .matcher(list)
        .results()
        .forEach(m -> all.add(m.group(1)));
    assertThat(all).hasSizeGreaterThan(25);
    return all;
  }
}
