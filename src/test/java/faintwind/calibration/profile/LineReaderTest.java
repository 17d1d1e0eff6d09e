package faintwind.calibration.profile;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.profile.LineReader.Begin;
import faintwind.calibration.run.SignalUnit;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineReaderTest {
  private static final ValueColumn SIGNAL =
      ValueColumn.plain(ColumnRef.numbered(2), Meaning.SIGNAL, ValueUnit.MILLIVOLT);

  private static ImportProfile profile(char delimiter, char mark, TimeColumn time) {
    return new ImportProfile(
        "p",
        "p",
        new LineForm(delimiter, mark, 0, OptionalInt.empty(), "", List.of()),
        time,
        List.of(SIGNAL));
  }

  private static LineReader reader(TimeColumn time) {
    return new LineReader(profile(';', '.', time), Begin.FILE, "log");
  }

  private static List<Double> times(TimeColumn time, String... cells) {
    LineReader reader = reader(time);
    List<Double> times = new ArrayList<>();
    for (String cell : cells) {
      times.add(row(reader.read(cell + ";1")).sample().time_s().orElseThrow());
    }
    return times;
  }

  private static LineOutcome.Row row(LineOutcome outcome) {
    assertThat(outcome).isInstanceOf(LineOutcome.Row.class);
    return (LineOutcome.Row) outcome;
  }

  private static TimeColumn time(TimeForm form) {
    return TimeColumn.of(form, ColumnRef.numbered(1));
  }

  private static TimeColumn pattern(String pattern) {
    return new TimeColumn(
        TimeForm.PATTERN,
        Optional.of(ColumnRef.numbered(1)),
        Optional.empty(),
        pattern,
        OptionalDouble.empty(),
        Optional.empty());
  }

  @ParameterizedTest(name = "{0} {1} is {2} s")
  @CsvSource({
    "SECONDS, 12.5, 12.5",
    "MILLISECONDS, 12500, 12.5",
    "MICROSECONDS, 2500000, 2.5",
    "MINUTES, 1.5, 90",
    "HOURS, 0.5, 1800",
    "DAYS, 45985.5, 3973147200",
    "ELAPSED, 36:00:01.25, 129601.25"
  })
  void aNumberKeepsItsOwnOrigin(TimeForm form, String cell, double time_s) {
    assertThat(times(time(form), cell)).containsExactly(time_s);
  }

  @Test
  void timeOfDayGoesOnPastMidnight() {
    assertThat(times(time(TimeForm.CLOCK), "23:59", "23:59:59,5", "00:00:01", "12:00", "23:00"))
        .containsExactly(0.0, 59.5, 61.0, 43260.0, 82860.0);
  }

  @Test
  void timeOfDayThatGoesBackALittleGoesBack() {
    assertThat(times(time(TimeForm.CLOCK), "10:00:00", "09:00:00")).containsExactly(0.0, -3600.0);
  }

  @Test
  void isoTimesCountFromTheFirstAndTellTheStart() {
    LineReader reader = reader(time(TimeForm.ISO));
    row(reader.read("2026-11-25T18:00:00.250+01:00;1"));
    double time_s = row(reader.read("2026-11-25 17:00:01,5Z;1")).sample().time_s().orElseThrow();
    assertThat(time_s).isEqualTo(1.25);
    assertThat(reader.start().map(Object::toString)).contains("2026-11-25T18:00:00.250+01:00");
  }

  @Test
  void isoTimesWithoutOffsetTellNoStart() {
    LineReader reader = reader(time(TimeForm.ISO));
    row(reader.read("2026-11-25T18:00;1"));
    assertThat(reader.start()).isEmpty();
  }

  @Test
  void aPatternMayHaveDateOrTimeOfDayOnly() {
    assertThat(times(pattern("dd.MM.yyyy HH:mm:ss"), "28.02.2028 23:59:59", "29.02.2028 00:00:01"))
        .containsExactly(0.0, 2.0);
    assertThat(times(pattern("h:mm:ss a"), "11:59:59 pm", "12:00:01 AM")).containsExactly(0.0, 2.0);
  }

  @Test
  void aCounterOfMillisecondsGoesOnOverItsWrap() {
    TimeColumn wraps =
        new TimeColumn(
            TimeForm.MILLISECONDS,
            Optional.of(ColumnRef.numbered(1)),
            Optional.empty(),
            "",
            OptionalDouble.of(65536),
            Optional.empty());
    assertThat(times(wraps, "65000", "65500", "464", "1000"))
        .containsExactly(65.0, 65.5, 66.0, 66.536);
  }

  @Test
  void aRestartedCounterIsNotTakenForAWrap() {
    TimeColumn wraps =
        new TimeColumn(
            TimeForm.MILLISECONDS,
            Optional.of(ColumnRef.numbered(1)),
            Optional.empty(),
            "",
            OptionalDouble.of(4294967296.0),
            Optional.empty());
    assertThat(times(wraps, "900000", "12")).containsExactly(900.0, 0.012);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "0,1|import.delimiter|delimiter",
        "0|import.cells|columns, signal",
        "0;1,5|import.decimal-mark|decimal_mark",
        "0;wet|import.number|columns, signal",
        "0;0x1F|import.number|columns, signal",
        "0;1e999|import.number|columns, signal",
        "noon;1|import.time|time.as",
        "0,5;1|import.decimal-mark|decimal_mark"
      })
  void whatDoesNotFitNamesTheField(String line, String id, String field) {
    LineOutcome outcome = reader(time(TimeForm.SECONDS)).read(line);
    assertThat(outcome).isInstanceOf(LineOutcome.Unreadable.class);
    var problems = ((LineOutcome.Unreadable) outcome).problems();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).id()).isEqualTo(id);
    assertThat(problems.get(0).where().column()).contains(field);
    assertThat(problems.get(0).where().line()).hasValue(1);
  }

  @Test
  void allFieldsThatDoNotFitAreToldAtOnce() {
    LineOutcome outcome = reader(time(TimeForm.ISO)).read("yesterday;cold");
    assertThat(((LineOutcome.Unreadable) outcome).problems())
        .extracting(p -> p.where().column().orElseThrow())
        .containsExactly("time.as", "columns, signal");
  }

  @Test
  void aStreamMayBeginWithinALine() {
    LineReader reader =
        new LineReader(profile(';', '.', time(TimeForm.SECONDS)), Begin.STREAM, "log");
    assertThat(reader.read("5;1.2")).isInstanceOf(LineOutcome.Row.class);
    LineReader torn =
        new LineReader(profile(';', '.', time(TimeForm.SECONDS)), Begin.STREAM, "log");
    assertThat(torn.read(".25")).isInstanceOf(LineOutcome.Skipped.class);
    assertThat(torn.read(".25")).isInstanceOf(LineOutcome.Unreadable.class);
  }

  @Test
  void theHeaderOfARestartedLoggerIsPassedOver() {
    ImportProfile own =
        ImportProfile.runFile(
            List.of("time_s", "delta_K", "air_C"), faintwind.calibration.run.SignalUnit.DELTA_K);
    LineReader reader = new LineReader(own, Begin.STREAM, "log");
    assertThat(reader.read("air_C,delta_K,time_s")).isInstanceOf(LineOutcome.Skipped.class);
    var sample = row(reader.read("20,1.5,3")).sample();
    assertThat(sample.time_s()).hasValue(3);
    assertThat(sample.signal()).hasValue(1.5);
    assertThat(sample.air().temperature_K()).hasValue(293.15);
    assertThat(reader.read("time_s,delta_K,air_C")).isInstanceOf(LineOutcome.Skipped.class);
    assertThat(row(reader.read("0,1.5,")).sample().air().temperature_K()).isEmpty();
  }

  @Test
  void twoTemperaturesGiveTheirDifference() {
    ImportProfile two =
        new ImportProfile(
            "p",
            "p",
            new LineForm('\t', ',', 0, OptionalInt.empty(), "", List.of("OL")),
            time(TimeForm.SECONDS),
            List.of(
                ValueColumn.plain(ColumnRef.numbered(2), Meaning.HEATED, ValueUnit.FAHRENHEIT),
                ValueColumn.plain(ColumnRef.numbered(3), Meaning.REFERENCE, ValueUnit.CELSIUS)));
    LineReader reader = new LineReader(two, Begin.FILE, "log");
    assertThat(row(reader.read("0\t100,4\t20")).sample().signal().orElseThrow())
        .isCloseTo(18, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(row(reader.read("1\tOL\t20")).sample().signal()).isEmpty();
  }

  @Test
  void airThatCannotBeIsLeftOutWithANote() {
    ImportProfile air =
        new ImportProfile(
            "p",
            "p",
            new LineForm(';', '.', 0, OptionalInt.empty(), "", List.of()),
            time(TimeForm.SECONDS),
            List.of(
                SIGNAL,
                ValueColumn.plain(ColumnRef.numbered(3), Meaning.PRESSURE, ValueUnit.HECTOPASCAL)));
    LineOutcome.Row row = row(new LineReader(air, Begin.FILE, "log").read("0;1;98.4"));
    assertThat(row.sample().air().pressure_Pa()).isEmpty();
    assertThat(row.notes()).extracting(n -> n.id()).containsExactly("import.impossible");
  }

  @Test
  void aQuotedCellMayHoldTheDelimiter() {
    LineReader reader =
        new LineReader(profile(',', ',', time(TimeForm.SECONDS)), Begin.FILE, "log");
    assertThat(row(reader.read("\"0,5\",\"1,25\"")).sample().signal()).hasValue(1.25);
  }

  @Test
  void aLineOfZeroBytesIsToldAsSuch() {
    LineOutcome outcome = reader(time(TimeForm.SECONDS)).read("0;\u00001");
    assertThat(((LineOutcome.Unreadable) outcome).problems())
        .extracting(p -> p.id())
        .containsExactly("import.binary");
  }

  private static List<Boolean> taken(LineReader reader, String... lines) {
    List<Boolean> taken = new ArrayList<>();
    for (String line : lines) {
      taken.add(reader.read(line) instanceof LineOutcome.Row);
    }
    return taken;
  }

  @Test
  void aLineWithTooManyOrTooFewCellsIsNoReading() {
    LineReader reader = new LineReader(profile(',', '.', time(TimeForm.SECONDS)), Begin.FILE, "l");
    assertThat(taken(reader, "0,1.5,20", "1,1,5,20", "2,1.5", "3,1.5,20,", "4,1.5,20"))
        .containsExactly(true, false, false, false, true);
    LineOutcome.Unreadable bad = (LineOutcome.Unreadable) reader.read("5,1,5,20");
    assertThat(bad.problems()).extracting(Problem::id).containsExactly("import.cells-count");
    assertThat(bad.problems().get(0).details()).startsWith("3");
  }

  @Test
  void whereTheFirstReadingIsTheOddOneTheOthersCount() {
    LineReader reader = new LineReader(profile(',', '.', time(TimeForm.SECONDS)), Begin.FILE, "l");
    assertThat(taken(reader, "0,1,5,20", "1,1.5,20", "2,1.5,20", "3,1.5,20", "4,1.5,20"))
        .containsExactly(true, false, false, true, true);
  }

  @Test
  void aDelimiterAtTheEndOfEveryLineCountsForNothing() {
    LineReader reader =
        new LineReader(
            ImportProfile.runFile(List.of("time_s", "delta_K"), SignalUnit.DELTA_K),
            Begin.STREAM,
            "l");
    assertThat(taken(reader, "time_s,delta_K", "0,20,", "1,20,", "2,20", "3,2,0,", "4,20,"))
        .containsExactly(false, true, true, false, false, true);
  }

  @Test
  void readingsOfOneWholeSecondAreSpreadOverIt() {
    LineReader reader = reader(time(TimeForm.CLOCK));
    List<Double> times = new ArrayList<>();
    for (String cell :
        List.of("9:00:07", "9:00:08", "9:00:08", "9:00:09", "9:00:09", "9:00:09", "9:00:10")) {
      times.add(row(reader.read(cell + ";1")).sample().time_s().orElseThrow());
    }
    assertThat(times).containsExactly(0.0, 1.0, 1.5, 2.0, 2.5, 2.75, 3.0);
    assertThat(reader.spread()).isEqualTo(3);
    assertThat(times(time(TimeForm.CLOCK), "9:00", "9:00", "9:00", "9:01"))
        .containsExactly(0.0, 30.0, 40.0, 60.0);
  }

  @Test
  void aThousandReadingsOfOneSecondStayApart() {
    LineReader reader = reader(time(TimeForm.SECONDS));
    double before_s = -1;
    for (int i = 0; i < 3000; i++) {
      double time_s = row(reader.read(i / 1000 + ";1")).sample().time_s().orElseThrow();
      assertThat(time_s).isGreaterThan(before_s + 9e-7).isLessThan(i / 1000 + 1);
      before_s = time_s;
    }
  }

  @Test
  void aStampThatTellsPartsOfASecondIsLeftAlone() {
    assertThat(times(time(TimeForm.SECONDS), "0.5", "1", "1", "1.5"))
        .containsExactly(0.5, 1.0, 1.0, 1.5);
  }
}
