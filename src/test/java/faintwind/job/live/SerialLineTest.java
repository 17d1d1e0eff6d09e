package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.profile.ImportProfile;
import faintwind.files.asset.ProfileFile;
import faintwind.job.OutputPath;
import faintwind.message.Checked;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A pair of pseudo-terminals stands for cable and logger. */
@Timeout(60)
class SerialLineTest {
  private static final List<Path> PLACES =
      List.of(Path.of("/usr/bin/socat"), Path.of("/bin/socat"));

  @TempDir Path folder;

  private final Heard heard = new Heard();
  private Process cable;

  @BeforeEach
  void plugIn() throws IOException {
    assumeTrue(PLACES.stream().anyMatch(Files::isExecutable), "socat is not installed");
    cable = plugged();
  }

  @AfterEach
  void pullOut() throws InterruptedException {
    if (cable != null) {
      cable.destroy();
      cable.waitFor();
    }
  }

  private Process plugged() throws IOException {
    Process socat =
        new ProcessBuilder(
                "socat",
                "-d",
                "-d",
                "pty,raw,echo=0,link=" + folder.resolve("port"),
                "pty,raw,echo=0,link=" + folder.resolve("logger"))
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    BufferedReader words = socat.errorReader(StandardCharsets.UTF_8);
    String line = words.readLine();
    while (line != null && !line.contains("starting data transfer loop")) {
      line = words.readLine();
    }
    assertThat(line).isNotNull();
    return socat;
  }

  private void send(String text) {
    try {
      Files.writeString(folder.resolve("logger"), text, StandardOpenOption.WRITE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private LiveRecording recording() throws IOException, InterruptedException {
    String file = "assets/profiles/seconds-millivolts.json";
    ImportProfile profile =
        ProfileFile.read(Path.of(file), file).fold((ok, notes) -> ok, p -> null);
    String source = "serial:" + folder.resolve("port") + "?baud=115200";
    SourceAddress address = SourceText.read(source).fold((ok, notes) -> ok, p -> null);
    LiveInput input =
        OpenSource.lines(address, source, Optional.of(profile)).fold((ok, n) -> ok, p -> null);
    LiveRecording recording =
        new LiveRecording(
            input, new OutputPath(folder.resolve("out.csv"), OutputPath.Existing.KEEP));
    recording.listen(heard);
    heard.recording = recording;
    return recording;
  }

  private List<String> rows() throws IOException {
    return Files.readAllLines(folder.resolve("out.csv")).stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
  }

  @Test
  void linesArriveAndTheFirstWhichMayBeTornDoesNotCount() throws Exception {
    LiveRecording recording = recording();
    heard.onConnected = () -> send("5,1.4\r\n6,1.5\r\n7,1.6\r\n");
    heard.endAfter = 2;
    assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(2, 0, 0)));
    assertThat(rows()).containsExactly("time_s,signal_mV,gap", "6,1.5,", "7,1.6,");
  }

  @Test
  void aCableThatIsPulledOutAndPluggedInAgainLeavesAMarkedBreak() throws Exception {
    LiveRecording recording = recording();
    heard.onConnected = () -> send("5,1.4\n6,1.5\n7,1.6\n8,1");
    heard.afterRow.put(
        2,
        () -> {
          cable.destroy();
          cable.onExit().join();
        });
    heard.onReconnecting =
        () -> {
          if (!cable.isAlive()) {
            try {
              cable = plugged();
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          }
        };
    heard.onReconnected = () -> send("8.5,1.7\n9,1.8\n9.5,1.9\n");
    heard.endAfter = 4;
    recording.run();
    assertThat(rows())
        .containsExactly("time_s,signal_mV,gap", "6,1.5,", "7,1.6,", "9,1.8,cut", "9.5,1.9,");
  }

  @Test
  void aPortThatIsNotThereIsAFailureInWords() throws Exception {
    LiveRecording recording = recording();
    pullOut();
    assertThatThrownBy(recording::run)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("no such serial port");
  }
}
