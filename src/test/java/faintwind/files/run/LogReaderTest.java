package faintwind.files.run;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.SignalChain.Input;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LogReaderTest {

  @Test
  void everyRowIsHandedOnAsItStood() throws IOException {
    List<LogRow> rows = rows("time_s,delta_K,note\n0,1,a\n1,word,\"b, c\"\n2,,é\n");
    assertThat(rows).extracting(LogRow::text).containsExactly("0,1,a", "1,word,\"b, c\"", "2,,é");
    assertThat(rows.get(0).signal()).hasValue(1);
    assertThat(rows.get(1).signal()).isEmpty();
    assertThat(rows.get(1).time_s()).hasValue(1);
    assertThat(rows.get(2).signal()).isEmpty();
  }

  @Test
  void rowsOfTheWrongLengthAreFittedToTheHeader() throws IOException {
    List<LogRow> rows = rows("time_s,delta_K,note\n0\n1,2,3,4\n2,\"3\n3,1,z\n");
    assertThat(rows)
        .extracting(LogRow::text)
        .containsExactly("0,,", "1,2,\"3,4\"", "\"2,\"\"3\",,", "3,1,z");
    assertThat(rows.subList(0, 3)).allMatch(row -> row.time_s().isEmpty());
  }

  @Test
  void blankLinesBetweenRowsAreRowsAndAtTheEndAreNot() throws IOException {
    List<LogRow> rows = rows("time_s,delta_K\n0,1\n\n\n3,1\n\n\n");
    assertThat(rows).extracting(LogRow::text).containsExactly("0,1", ",", ",", "3,1");
  }

  @Test
  void airThatCannotBeCountsAsNotRecorded() throws IOException {
    List<LogRow> rows = rows("time_s,delta_K,air_C,pressure_hPa\n0,1,-127,1000\n1,1,20,-1\n");
    assertThat(rows.get(0).read().air().temperature_K()).isEmpty();
    assertThat(rows.get(0).read().air().pressure_Pa()).hasValue(100_000);
    assertThat(rows.get(1).read().air().temperature_K()).hasValue(293.15);
    assertThat(rows.get(1).read().air().pressure_Pa()).isEmpty();
  }

  @Test
  void rowIsHandedOutBeforeTheNextOneArrives() throws IOException {
    try (PipedOutputStream end = new PipedOutputStream();
        PipedInputStream stream = new PipedInputStream(end)) {
      end.write("time_s,delta_K\n0,1\n".getBytes(StandardCharsets.UTF_8));
      LogReader reader = open(stream);
      assertThat(reader.next()).map(LogRow::text).contains("0,1");
      end.write("1,2\r\n".getBytes(StandardCharsets.UTF_8));
      assertThat(reader.next()).map(LogRow::text).contains("1,2");
    }
  }

  @Test
  void lastRowNeedsNoLineEnd() throws IOException {
    assertThat(rows("time_s,delta_K\n0,1\n1,2").get(1).signal()).hasValue(2);
  }

  private static List<LogRow> rows(String text) throws IOException {
    List<LogRow> rows = new ArrayList<>();
    try (LogReader reader = open(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))) {
      for (Optional<LogRow> row = reader.next(); row.isPresent(); row = reader.next()) {
        rows.add(row.get());
      }
    }
    return rows;
  }

  private static LogReader open(InputStream in) throws IOException {
    return LogReader.open(in, "log.csv", Input.VOLTAGE)
        .fold(
            (reader, notes) -> reader,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  @Test
  void whatNoInstrumentMeasuresCountsAsNotRecorded() throws IOException {
    List<LogRow> rows = rows("time_s,delta_K,supply_V\n0,805,5\n1,20,140\n2,-20,0\n");
    assertThat(rows.get(0).signal()).isEmpty();
    assertThat(rows.get(1).signal()).hasValue(20);
    assertThat(rows.get(1).read().supply_V()).isEmpty();
    assertThat(rows.get(2).signal()).hasValue(-20);
    assertThat(rows.get(2).read().supply_V()).hasValue(0);
  }
}
