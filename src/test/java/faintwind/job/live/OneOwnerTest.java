package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.calibration.live.SourceAddress;
import faintwind.command.Shell;
import faintwind.device.Timekeeper;
import faintwind.files.run.OwnedFile;
import faintwind.job.OutputPath;
import faintwind.job.World;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A recording's file is its own: made by it, locked, and known again. */
@Timeout(30)
class OneOwnerTest {
  private static final String LINES = "time_s,delta_K\n0,20\n1,21\n";

  @TempDir Path folder;

  private final Heard heard = new Heard();

  private Path out() {
    return folder.resolve("out.csv");
  }

  /** A source that falls silent after two rows. */
  private LiveRecording recording() throws Exception {
    Path log = Files.writeString(folder.resolve("log.txt"), LINES);
    LiveInput input =
        OpenSource.lines(
                new SourceAddress.GrowingFile(log.toString(), SourceAddress.From.START),
                "file:log.txt",
                Optional.empty())
            .fold((ok, notes) -> ok, p -> null);
    LiveRecording recording =
        new LiveRecording(input, out(), Optional.empty(), Timekeeper.system());
    recording.listen(heard);
    heard.recording = recording;
    return recording;
  }

  private static Runnable io(Action action) {
    return () -> {
      try {
        action.run();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    };
  }

  private interface Action {
    void run() throws IOException;
  }

  private static List<String> rows(Path file) throws IOException {
    return Files.readAllLines(file).stream().filter(row -> !row.startsWith("#")).toList();
  }

  @Test
  void aFileThatIsDeletedIsToldThoughNothingArrivesAndItsRowsAreKept() throws Exception {
    LiveRecording recording = recording();
    heard.afterRow.put(2, io(() -> Files.delete(out())));
    assertThatThrownBy(recording::run)
        .isInstanceOf(OwnedFile.LostException.class)
        .satisfies(e -> assertThat(World.problem((IOException) e).id()).isEqualTo("world.lost"));
    assertThat(out()).doesNotExist();
    assertThat(rows(folder.resolve("out-kept-1.csv")))
        .containsExactly("time_s,delta_K,gap", "0,20,", "1,21,");
    assertThat(heard.news).noneMatch(news -> news.kind() == LiveNews.Kind.ENDED);
  }

  @Test
  void aFileThatIsReplacedIsToldAndLeftAsItIs() throws Exception {
    LiveRecording recording = recording();
    Path other = Files.writeString(folder.resolve("other.csv"), "somebody else's\n");
    Files.writeString(folder.resolve("out-kept-1.csv"), "of an earlier one");
    heard.afterRow.put(
        2,
        io(
            () -> {
              Files.delete(out());
              Files.move(other, out());
            }));
    assertThatThrownBy(recording::run).isInstanceOf(OwnedFile.LostException.class);
    assertThat(Files.readString(out())).isEqualTo("somebody else's\n");
    assertThat(rows(folder.resolve("out-kept-2.csv"))).hasSize(3);
  }

  @Test
  void aSecondRecordingIntoTheSameFileIsToldAndChangesNothing() throws Exception {
    LiveRecording recording = recording();
    Shell shell = new Shell();
    String second = "virtual:?seed=2&pace=100000";
    heard.afterRow.put(
        2,
        io(
            () -> {
              assertThat(shell.run("listen", second, "--out", out(), "--for-s", "9")).isEqualTo(2);
              int forced = shell.run("listen", second, "--out", out(), "--for-s", "9", "--force");
              assertThat(forced).isEqualTo(1);
              assertThat(shell.said()).contains("Another recording writes to this file");
            }));
    heard.endAfter = 2;
    assertThat(recording.run().isOk()).isTrue();
    assertThat(rows(out())).containsExactly("time_s,delta_K,gap", "0,20,", "1,21,");
  }

  @Test
  void theFileIsTakenBeforeTheFirstRowAndGoesWhereNoneComes() throws Exception {
    Path log = Files.writeString(folder.resolve("silent.txt"), "time_s,delta_K\n");
    LiveInput input =
        OpenSource.lines(
                new SourceAddress.GrowingFile(log.toString(), SourceAddress.From.START),
                "file:silent.txt",
                Optional.empty())
            .fold((ok, notes) -> ok, p -> null);
    LiveRecording recording =
        new LiveRecording(input, new OutputPath(out(), OutputPath.Existing.KEEP));
    recording.listen(heard);
    heard.onConnected =
        io(
            () -> {
              assertThat(out()).exists();
              recording.stop();
            });
    assertThat(recording.run().isOk()).isFalse();
    assertThat(out()).doesNotExist();
  }

  @Test
  void aFileThatCameMeanwhileIsNotWrittenOver() throws Exception {
    LiveRecording recording = recording();
    Files.writeString(out(), "mine");
    assertThatThrownBy(recording::run).isInstanceOf(FileAlreadyExistsException.class);
    assertThat(Files.readString(out())).isEqualTo("mine");
    assertThat(folder.resolve("out.raw.1.gz")).doesNotExist();
  }

  @Test
  void theCommandSays1AndWhereTheRowsAre() throws Exception {
    Path log = Files.writeString(folder.resolve("log.txt"), LINES);
    Thread thread =
        new Thread(
            io(
                () -> {
                  while (!Files.exists(out()) || rows(out()).size() < 3) {
                    Thread.onSpinWait();
                  }
                  Files.delete(out());
                }));
    thread.start();
    Shell shell = new Shell();
    assertThat(shell.run("listen", "file:" + log, "--out", out())).isEqualTo(1);
    thread.join();
    assertThat(shell.said()).contains("deleted or replaced").contains("out-kept-1.csv");
    assertThat(rows(folder.resolve("out-kept-1.csv"))).hasSize(3);
  }
}
