package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Real files that grow, are replaced, cut, and grow again. */
@Timeout(60)
class GrowingFileTest {
  private LiveBench bench;

  @BeforeEach
  void open(@TempDir Path folder) {
    bench = new LiveBench(folder);
  }

  private void append(String text) {
    try {
      Files.writeString(
          bench.folder().resolve("log.txt"),
          text,
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aGrowingFileIsFollowedThroughRotationAndTruncation() throws Exception {
    Path log = bench.folder().resolve("log.txt");
    append("0,1.5\n1,1.6\n2,1");
    LiveRecording recording = bench.recording("file:" + log, Optional.of(LiveBench.profile()));
    bench.heard().afterRow.put(2, () -> append(".7\n3,1.8\n"));
    bench
        .heard()
        .afterRow
        .put(
            4,
            () -> {
              try {
                append("4,1.9\n5,torn");
                Files.move(
                    log, bench.folder().resolve("log.1"), StandardCopyOption.REPLACE_EXISTING);
                append("20,2.0\n21,2.0\n");
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    bench
        .heard()
        .afterRow
        .put(
            7,
            () -> {
              try {
                Files.writeString(log, "40,3\n");
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    bench.heard().endAfter = 8;
    recording.run();
    assertThat(bench.rows())
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
      Files.writeString(bench.folder().resolve("log.txt"), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aFileThatIsCutAndHasGrownAgainBeforeItIsLookedAtLosesNothing() throws Exception {
    append("0,1.5\n1,1.6\n");
    LiveRecording recording =
        bench.recording(
            "file:" + bench.folder().resolve("log.txt"), Optional.of(LiveBench.profile()));
    // emptied and longer than before, between two looks
    bench.heard().afterRow.put(2, () -> write("20,2.0\n21,2.1\n22,2.2\n23,2.3\n"));
    // only its end cut off, and others in its place
    bench.heard().afterRow.put(6, () -> write("20,2.0\n21,2.1\n30,3.0\n31,3.1\n32,3.2\n"));
    bench.heard().endAfter = 9;
    recording.run();
    assertThat(bench.rows())
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
    LiveRecording recording =
        bench.recording("file:" + bench.folder().resolve("log.txt"), Optional.empty());
    bench.heard().endAfter = 3;
    recording.run();
    assertThat(bench.rows())
        .containsExactly(
            "time_s,delta_K,lamp,gap", "0,20,on,", "1,21,\"off, then on\",cut", "2,22,'=1+1,");
  }

  @Test
  void onlyWhatIsAddedCountsWhereSoAsked() throws Exception {
    Path log = bench.folder().resolve("log.txt");
    append("time_s,delta_K\n0,20\n1,2");
    LiveRecording recording = bench.recording("file:" + log + "?from=end", Optional.empty());
    bench.heard().onConnected = () -> append("1\n2,22\n3,23\n");
    bench.heard().endAfter = 2;
    recording.run();
    assertThat(bench.rows()).containsExactly("time_s,delta_K,gap", "2,22,", "3,23,");
  }

  @Test
  void aFileThatIsNotThereIsAFailureInWords() throws Exception {
    LiveRecording recording =
        bench.recording(
            "file:" + bench.folder().resolve("none.txt"), Optional.of(LiveBench.profile()));
    assertThatThrownBy(recording::run).isInstanceOf(NoSuchFileException.class);
  }
}
