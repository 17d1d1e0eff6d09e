package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.live.SourceAddress;
import faintwind.command.Shell;
import faintwind.device.PlayedLink;
import faintwind.device.RawLog;
import faintwind.device.RawTap;
import faintwind.device.StillTime;
import faintwind.job.live.FaultyStream.Fault;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every byte that arrived stands beside the recording, and can be read again. */
class RawStreamTest {
  @TempDir Path folder;

  private final Shell shell = new Shell();

  private Path recorded(FaultyStream stream, String text) throws Exception {
    Path file = folder.resolve("log.csv");
    StillTime time = new StillTime();
    RawTap tap = RawTap.holding();
    LiveInput input =
        new OpenSource(
                new SourceAddress.Tcp("localhost", 1),
                text,
                PlayedLink.of(stream.pieces, time, tap),
                tap)
            .lines(Optional.empty())
            .fold((ok, notes) -> ok, p -> null);
    new LiveRecording(input, file, Optional.empty(), time).run();
    return file;
  }

  private static List<String> rows(Path file) throws IOException {
    return Files.readAllLines(file).stream().filter(row -> !row.startsWith("# source")).toList();
  }

  /** The bytes of a packed part without the heads of its entries. */
  private static String bytes(Path part) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    try (InputStream in = new GZIPInputStream(Files.newInputStream(part))) {
      String[] head = {line(in), line(in), line(in)};
      assertThat(head[0]).isEqualTo("# faintwind-raw/1");
      for (String entry = line(in); !entry.isEmpty(); entry = line(in)) {
        String[] words = entry.split(" ");
        if (words.length == 3) {
          all.write(in.readNBytes(Integer.parseInt(words[2])));
          assertThat(in.read()).isEqualTo('\n');
        }
      }
    }
    return all.toString(StandardCharsets.UTF_8);
  }

  private static String line(InputStream in) throws IOException {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    for (int one = in.read(); one >= 0 && one != '\n'; one = in.read()) {
      text.write(one);
    }
    return text.toString(StandardCharsets.UTF_8);
  }

  @Test
  void everyByteThatArrivedIsKeptAndPackedAtTheEnd() throws Exception {
    FaultyStream stream = new FaultyStream(Fault.CUT_NUMBER, 1, 40, true);
    Path file = recorded(stream, "tcp:localhost:1");
    String sent = stream.pieces.stream().map(PlayedLink.Piece::text).collect(Collectors.joining());
    assertThat(RawLog.parts(RawLog.beside(file)))
        .extracting(part -> part.getFileName().toString())
        .containsExactly("log.raw.1.gz");
    assertThat(bytes(folder.resolve("log.raw.1.gz"))).isEqualTo(sent);
  }

  @Test
  void readAgainItGivesTheSameRowsAndBreaks() throws Exception {
    for (Fault fault : Fault.values()) {
      Path file = recorded(new FaultyStream(fault, 3, 30, true), "tcp:localhost:1");
      Path again = folder.resolve("again.csv");
      String raw = folder.resolve("log.raw").toString();
      assertThat(shell.run("listen", "--from", raw, "--out", again)).as(shell.said()).isZero();
      assertThat(rows(again)).isEqualTo(rows(file));
      assertThat(folder.resolve("again.raw.1.gz")).doesNotExist();
      Files.delete(file);
      Files.delete(again);
      RawLog.delete(RawLog.beside(file));
    }
  }

  @Test
  void aCorrectedProfileReadsWhatTheFirstReadWrongly() throws Exception {
    Path log = Files.writeString(folder.resolve("in.txt"), "0,1.5\n1,1.6\n2,1.7\n");
    Path first = folder.resolve("log.csv");
    int done =
        shell.run(
            "listen",
            "file:" + log,
            "--profile",
            "seconds-millivolts",
            "--out",
            first,
            "--for-s",
            "1.9");
    assertThat(done).isZero();
    Files.delete(log);
    Path profile = folder.resolve("corrected.json");
    String shipped = Files.readString(Path.of("assets/profiles/seconds-millivolts.json"));
    Files.writeString(profile, shipped.replace("\"mV\"", "\"uV\""));
    Path again = folder.resolve("again.csv");
    Path raw = folder.resolve("log.raw");
    int code = shell.run("listen", "--from", raw, "--profile", profile, "--out", again);
    assertThat(code).as(shell.said()).isZero();
    assertThat(rows(again)).contains("time_s,signal_uV,gap", "0,1.5,", "1,1.6,", "2,1.7,");
  }

  @Test
  void anOptionSwitchesItOffAndOneThatIsThereIsNotReplacedUnasked() throws Exception {
    Path log = Files.writeString(folder.resolve("in.txt"), "time_s,delta_K\n0,20\n1,21\n2,21\n");
    Path out = folder.resolve("log.csv");
    shell.run("listen", "file:" + log, "--no-raw", "--out", out, "--for-s", "1.9");
    assertThat(folder.resolve("log.raw.1.gz")).doesNotExist();
    shell.run("listen", "file:" + log, "--force", "--out", out, "--for-s", "1.9");
    assertThat(folder.resolve("log.raw.1.gz")).exists();
    Files.delete(out);
    assertThat(shell.run("listen", "file:" + log, "--out", out, "--for-s", "1.9")).isEqualTo(2);
    assertThat(shell.said()).contains("log.raw.1.gz");
    assertThat(shell.run("listen", "--out", out)).isEqualTo(2);
    assertThat(shell.run("listen", "--from", folder.resolve("none.raw"), "--out", out + "2"))
        .isEqualTo(1);
  }
}
