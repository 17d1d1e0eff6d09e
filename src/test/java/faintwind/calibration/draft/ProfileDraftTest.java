package faintwind.calibration.draft;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.profile.ImportProfile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** First lines as loggers write them, and what a person would read in them. */
class ProfileDraftTest {
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

  private static Checked<ImportProfile> read(String lines) {
    return ProfileDraft.of(Arrays.asList(lines.split("\n| / ", -1)), "A log-1.CSV", BERLIN);
  }

  private static ImportProfile profile(String lines) {
    return read(lines)
        .fold(
            (profile, notes) -> profile,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  /** A slash stands for the end of a line. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '!',
      value = {
        "time [s];delta [K];air [°C] / 0;20,1;21 / 1;20,2;21 ! signal KELVIN, air CELSIUS",
        "t,heated (C),ref (C) / 0,50.5,20.1 / 1,50.6,20.1 ! heated CELSIUS, reference CELSIUS",
        "t,heated (C),ref (C),signal mV / 0,50.5,20.1,1.2 / 1,50.6,20.1,1.2 ! heated CELSIUS,"
            + " reference CELSIUS",
        "t,signal (mV),hot (C) / 0,1.5,20.1 / 1,1.6,20.1 ! signal MILLIVOLT",
        "Zeit s;Signal uV;Versorgung V;Klemme °C / 0;1,5;5;20 / 1;1,5;5;20 ! signal MICROVOLT, supply"
            + " VOLT, terminal CELSIUS",
        "t;adc counts;p hPa;rh % / 0;512;1013;50 / 1;513;1013;50 ! signal COUNTS, pressure"
            + " HECTOPASCAL, humidity PERCENT",
        "t;V;kPa;°F / 0;1,5;101,3;70 / 1;1,5;101,3;70 ! signal VOLT, pressure KILOPASCAL, air FAHRENHEIT"
      })
  void columnsAreTakenByTheirHeads(String lines, String expected) {
    String found =
        profile(lines).columns().stream()
            .map(column -> column.meaning().word() + " " + column.unit())
            .collect(Collectors.joining(", "));
    assertThat(found).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0}: {1} {2}")
  @CsvSource({
    "time [s], 0, 10, SECONDS, ''",
    "time (ms), 0, 1000, MILLISECONDS, ''",
    "elapsed min, 0, 1, MINUTES, ''",
    "time_h, 0, 0.5, HOURS, ''",
    "date, 2026-03-28T10:00:00, 2026-03-28T10:00:10, ISO, ''",
    "date, 2026-03-28T10:00:00+01:00, 2026-03-28T10:00:10+01:00, ISO, ''",
    "date, 28.03.2026 10:00:00, 28.03.2026 10:00:10, PATTERN, dd.MM.uuuu HH:mm:ss",
    "date, 3.4.2026 9:00, 3.4.2026 9:01, PATTERN, d.M.uuuu H:mm",
    "date, 03/28/2026 10:00:00, 03/28/2026 10:00:10, PATTERN, MM/dd/uuuu HH:mm:ss",
    "date, 28/03/2026 10:00:00, 28/03/2026 10:00:10, PATTERN, dd/MM/uuuu HH:mm:ss",
    "date, 3/4/2026 9:05:00 PM, 3/4/2026 9:05:10 PM, PATTERN, M/d/uuuu h:mm:ss a",
    "date, 2026/03/28 10:00:00.25, 2026/03/28 10:00:00.50, PATTERN, uuuu/MM/dd HH:mm:ss.SS",
    "clock, 10:00:00, 10:00:10, CLOCK, ''",
    "clock, 00:00:00, 00:00:10, ELAPSED, ''",
    "clock, 9:05:00 am, 9:05:10 am, PATTERN, h:mm:ss a"
  })
  void timeIsReadInTheFormThatAllCellsHave(
      String head, String first, String second, String form, String pattern) {
    ImportProfile profile = profile(head + ";delta K\n" + first + ";1,5\n" + second + ";1,6");
    assertThat(profile.time().form().name()).isEqualTo(form);
    assertThat(profile.time().pattern()).isEqualTo(pattern);
  }

  /** Day and month of 3/4 can be mistaken, those of 28/3 and of 3.4. cannot. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "03/04/2026 10:00:00, draft.zone-taken draft.day-or-month",
    "28/03/2026 10:00:00, draft.zone-taken",
    "03.04.2026 10:00:00, draft.zone-taken",
    "2026-03-28T10:00:00, draft.zone-taken",
    "2026-03-28T10:00:00Z, ''",
    "12, draft.seconds-taken"
  })
  void whatWasTakenForGrantedIsSaid(String cell, String notes) {
    String lines = "time;delta K\n" + cell + ";1,5\n" + cell + ";1,6";
    assertThat(read(lines).problems().stream().map(Problem::id).collect(Collectors.joining(" ")))
        .isEqualTo(notes);
  }

  @Test
  void linesAreCutAsTheyAreWritten() {
    ImportProfile commas = profile("t [s];delta K / 0;20,1 / 1;20,2");
    assertThat(commas.lines().delimiter()).isEqualTo(';');
    assertThat(commas.lines().decimalMark()).isEqualTo(',');
    assertThat(profile("t [s];delta K / 0;20.1 / 1;20.2").lines().decimalMark()).isEqualTo('.');
    ImportProfile english = profile("t [s],delta K / 0,20.1 / 1,20.2");
    assertThat(english.lines().delimiter()).isEqualTo(',');
    assertThat(english.lines().decimalMark()).isEqualTo('.');
    assertThat(english.id()).isEqualTo("a-log-1");
    assertThat(english.name()).isEqualTo("A log-1.CSV");
    assertThat(profile("t [s],delta K,air C / 0,20.1,--- / 1,20.2,19").lines().missing())
        .containsExactly("---");
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource({
    "Dear all, draft.no-table",
    "door;delta K / 3;1 / 4;2, draft.no-time",
    "t [s];air °C / 0;20 / 1;21, draft.no-signal",
    "t [s];hot °C / 0;20 / 1;21, draft.no-signal"
  })
  void whatCannotBeALogIsRefused(String lines, String id) {
    assertThat(read(lines).problems()).extracting(Problem::id).contains(id);
    assertThat(read(lines).isOk()).isFalse();
  }

  @Test
  void aSecondSignalIsLeftOutByName() {
    List<Problem> notes = read("t [s];delta K;diff K / 0;1;2 / 1;1;2").problems();
    assertThat(notes).extracting(Problem::id).containsExactly("draft.left-out");
    assertThat(notes.get(0).found()).isEqualTo("diff K");
  }
}
