package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Problem;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrationForLogTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2027-01-10T12:00:00+01:00");
  private static final InstrumentState STATE =
      InstrumentState.replay(
          List.of(
              entry("a", "2026-03-02T10:00:00+01:00", "spring.json", "2026-03-01T17:00:00+01:00"),
              entry("b", "2026-09-05T10:00:00+02:00", "autumn.json", "2026-09-01T17:00:00+02:00")));

  @TempDir Path folder;

  private static JournalEntry entry(String id, String at, String file, String from) {
    return new JournalEntry(
        id,
        OffsetDateTime.parse(at),
        "Ada Test",
        Optional.empty(),
        new CalibrationPutInForce(file, Optional.of(OffsetDateTime.parse(from))));
  }

  private CalibrationForLog ofLog(String start, double length_s) throws IOException {
    Path log = folder.resolve("log.csv");
    String head = start.isEmpty() ? "" : "# start: " + start + "\n";
    Files.writeString(log, head + "time_s,delta_K\n0,20.1\n" + length_s + ",20.2\n");
    return CalibrationForLog.of(STATE, log, Optional.empty(), NOW);
  }

  private static List<String> ids(CalibrationForLog chosen) {
    return chosen.notes().stream().map(Problem::id).toList();
  }

  @Test
  void aLogOfLastYearIsReadByLastYearsFormula() throws IOException {
    assertThat(ofLog("2026-04-01T08:00:00+02:00", 3600).file()).contains("spring.json");
    assertThat(ofLog("2026-10-01T08:00:00+02:00", 3600).file()).contains("autumn.json");
    assertThat(ids(ofLog("2026-04-01T08:00:00+02:00", 3600))).isEmpty();
  }

  @Test
  void itCountsFromTheMeasurementAndNotFromTheEntry() throws IOException {
    assertThat(ofLog("2026-09-02T08:00:00+02:00", 3600).file()).contains("autumn.json");
  }

  @Test
  void aLogThatSpansTwoSaysSo() throws IOException {
    CalibrationForLog chosen = ofLog("2026-09-01T12:00:00+02:00", 8 * 3600);
    assertThat(chosen.file()).contains("spring.json");
    assertThat(ids(chosen)).containsExactly("convert.log-spans-two");
    assertThat(chosen.notes().get(0).details()).containsExactly("autumn.json");
  }

  @Test
  void aLogFromBeforeTheFirstIsReadByItAndSaysSo() throws IOException {
    CalibrationForLog chosen = ofLog("2026-02-01T12:00:00+01:00", 60);
    assertThat(chosen.file()).contains("spring.json");
    assertThat(ids(chosen)).containsExactly("convert.log-before");
  }

  @Test
  void aLogWithoutADateIsReadByTheOneInForceNowAndSaysSo() throws IOException {
    CalibrationForLog chosen = ofLog("", 60);
    assertThat(chosen.file()).contains("autumn.json");
    assertThat(ids(chosen)).containsExactly("convert.log-no-date");
  }
}
