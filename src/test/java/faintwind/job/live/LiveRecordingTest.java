package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.live.LiveRow;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualStage;
import faintwind.device.StillTime;
import faintwind.files.run.LogReader;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LiveRecordingTest {
  @TempDir Path folder;

  private final StillTime time = new StillTime();
  private final Rehearsal rehearsal = new Rehearsal(VirtualDraw.build(7), 7, 10, time);

  /** Ends the recording after a number of rows. */
  private static LiveListener after(int rows, LiveRecording recording, List<LiveRow> heard) {
    return new LiveListener() {
      @Override
      public void row(LiveRow row) {
        heard.add(row);
        if (heard.size() == rows) {
          try {
            recording.stop();
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        }
      }

      @Override
      public void happened(LiveNews news) {}
    };
  }

  private List<LiveRow> record(int rows) throws IOException {
    LiveRecording recording =
        new LiveRecording(rehearsal.input(), folder.resolve("log.csv"), Optional.empty(), time);
    List<LiveRow> heard = new ArrayList<>();
    recording.listen(after(rows, recording, heard));
    assertThat(recording.run()).isEqualTo(Checked.ok(new LiveCount(rows, 0, 0)));
    return heard;
  }

  @Test
  void everyRowOfARehearsalStandsInTheFile() throws IOException {
    rehearsal.stage(VirtualStage.rest(1, VirtualStage.Heater.ON));
    List<LiveRow> heard = record(300);
    try (var reader =
        LogReader.open(
                Files.newInputStream(folder.resolve("log.csv")),
                "log.csv",
                SignalChain.Input.DIFFERENCE_K)
            .fold((ok, notes) -> ok, problems -> null)) {
      for (LiveRow row : heard) {
        var read = reader.next().orElseThrow();
        assertThat(read.time_s().getAsDouble()).isEqualTo(row.time_s());
        assertThat(read.signal().getAsDouble())
            .isCloseTo(row.signal().getAsDouble(), Offset.offset(1e-6));
      }
      assertThat(reader.next()).isEmpty();
    }
  }

  @Test
  void aRehearsalSaysSoInTheFirstLineOfItsFile() throws IOException {
    record(2);
    assertThat(Files.readAllLines(folder.resolve("log.csv")).get(0)).startsWith("# rehearsal:");
  }

  @Test
  void aRowIsInTheFileBeforeAnybodyHearsOfIt() throws IOException {
    Path file = folder.resolve("log.csv");
    LiveRecording recording = new LiveRecording(rehearsal.input(), file, Optional.empty(), time);
    List<LiveRow> heard = new ArrayList<>();
    recording.listen(
        new LiveListener() {
          @Override
          public void row(LiveRow row) {
            try {
              List<String> lines = Files.readAllLines(file);
              String last = lines.get(lines.size() - 1);
              assertThat(Double.parseDouble(last.substring(0, last.indexOf(','))))
                  .isEqualTo(row.time_s());
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          }

          @Override
          public void happened(LiveNews news) {}
        });
    recording.listen(after(20, recording, heard));
    assertThat(recording.run().isOk()).isTrue();
    assertThat(heard).hasSize(20);
  }

  @Test
  void thePaceIsThatOfTheClockTimesTheFactor() throws IOException {
    var begin = time.now();
    List<LiveRow> heard = record(101);
    double passed_s = Duration.between(begin, time.now()).toMillis() / 1000.0;
    double instrument_s = heard.get(100).time_s() - heard.get(0).time_s();
    assertThat(instrument_s / passed_s).isBetween(9.9, 10.1);
  }

  @Test
  void noFileIsMadeWhereNothingArrives() throws IOException {
    LiveRecording recording =
        new LiveRecording(rehearsal.input(), folder.resolve("log.csv"), Optional.empty(), time);
    recording.stop();
    assertThat(recording.run().problems())
        .extracting(Problem::id)
        .containsExactly("live.nothing-arrived");
    assertThat(folder.resolve("log.csv")).doesNotExist();
  }
}
