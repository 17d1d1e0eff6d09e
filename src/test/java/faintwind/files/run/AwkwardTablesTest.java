package faintwind.files.run;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.SignalChain;
import faintwind.files.asset.ProfileFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Tables as people have them, against the same made-up recording in this program's own form: see
 * src/test/resources/awkward/README.md.
 */
class AwkwardTablesTest {
  private static final Path AWKWARD = Path.of("src/test/resources/awkward");
  private static final String WORKSHOP =
      """
      {"format": "faintwind-profile/1", "id": "workshop", "name": "Workshop", "delimiter": ";",
       "decimal_mark": ",", "header_lines": 2,
       "time": {"as": "pattern", "date_column": "Datum", "column": "Uhrzeit",
                "pattern": "dd.MM.uuuu HH:mm:ss", "zone": "Europe/Berlin"},
       "columns": [{"column": "Spannung [mV]", "means": "signal", "unit": "mV"},
                   {"column": "Lufttemperatur [°C]", "means": "air", "unit": "C"},
                   {"column": "Versorgung [V]", "means": "supply", "unit": "V"}]}
      """;
  private static final String NIGHT =
      """
      {"format": "faintwind-profile/1", "id": "night", "name": "Night", "delimiter": ";",
       "decimal_mark": ",", "header_lines": 1,
       "time": {"as": "pattern", "column": 1, "pattern": "dd.MM.uuuu HH:mm:ss"ZONE},
       "columns": [{"column": 2, "means": "signal", "unit": "K"}]}
      """;
  private static final String SHEET =
      """
      {"format": "faintwind-profile/1", "id": "sheet", "name": "Sheet", "delimiter": ";",
       "decimal_mark": ",", "header_lines": 1,
       "time": {"as": "iso", "column": "Zeitpunkt", "zone": "Europe/Berlin"},
       "columns": [{"column": "Spannung [mV]", "means": "signal", "unit": "mV"},
                   {"column": "Luft [°C]", "means": "air", "unit": "C"}]}
      """;

  private static <T> T value(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private static ImportProfile profile(String json) throws IOException {
    return value(ProfileFile.parse(json, "profile"));
  }

  private static ImportProfile night(String zone) throws IOException {
    return profile(NIGHT.replace("ZONE", zone));
  }

  private static Recording own(String file) throws IOException {
    return value(RunFile.read(AWKWARD.resolve(file), file, SignalChain.Input.VOLTAGE));
  }

  private static Recording foreign(String file, ImportProfile profile) throws IOException {
    return value(
        RunFile.readForeign(AWKWARD.resolve(file), file, SignalChain.Input.VOLTAGE, profile));
  }

  private static List<Run> plainRuns() throws IOException {
    return value(RunsTable.read(AWKWARD.resolve("plain/runs.csv"))).runSet().runs();
  }

  /** What a fit sees of a run. */
  private static String seen(Run run) {
    Recording r = run.recording();
    return List.of(
            run.name(),
            run.kind(),
            run.arm(),
            run.conditions().air_K(),
            r.unit(),
            r.signal().first_s(),
            r.signal().last_s(),
            r.signal().size(),
            r.signal().value(0),
            r.signal().value(r.signal().size() - 1),
            r.start().map(start -> start.toInstant()))
        .toString();
  }

  @Test
  void localExportWithClockTimesIsTheSameRunsAsThePlainFiles() throws IOException {
    Checked<RunsTable> read =
        RunsTable.readForeign(AWKWARD.resolve("workshop/runs.csv"), profile(WORKSHOP));
    assertThat(read.problems()).isEmpty();
    assertThat(value(read).runSet().runs().stream().map(AwkwardTablesTest::seen))
        .isEqualTo(plainRuns().stream().map(AwkwardTablesTest::seen).toList());
  }

  @Test
  void runsTableAsASheetIsTheSameRunsAsThePlainTable() throws IOException {
    Checked<RunsTable> read = RunsTable.read(AWKWARD.resolve("plain/runs.xlsx"));
    assertThat(read.problems()).isEmpty();
    assertThat(value(read).runSet().runs().stream().map(AwkwardTablesTest::seen))
        .isEqualTo(plainRuns().stream().map(AwkwardTablesTest::seen).toList());
  }

  @Test
  void foreignRecordingsWithoutAProfileAreToldOnceWithTheWayOut() throws IOException {
    List<Problem> told = RunsTable.read(AWKWARD.resolve("workshop/runs.csv")).problems();
    assertThat(told).extracting(Problem::id).containsExactly("file.foreign");
  }

  @Test
  void ownColumnsInUtf16WithSemicolonsAndCommasAreARunFile() throws IOException {
    Recording plain = own("plain/session.csv");
    Recording read = own("utf16be.csv");
    assertThat(read.signal().size()).isEqualTo(61);
    for (int i = 0; i < 61; i++) {
      assertThat(read.signal().value(i)).isEqualTo(plain.signal().value(i));
    }
  }

  @Test
  void unitsInBracketsAreThoseAtTheEndOfOurNames() throws IOException {
    Recording plain = own("plain/session.csv");
    Recording read = own("units-in-heads.csv");
    assertThat(read.unit()).isEqualTo(plain.unit());
    assertThat(read.signal().value(60)).isEqualTo(plain.signal().value(60));
    assertThat(read.air_K().orElseThrow().value(60))
        .isEqualTo(plain.air_K().orElseThrow().value(60));
  }

  @Test
  void sheetsOfBothKindsHoldTheSameRecording() throws IOException {
    Recording plain = own("plain/session.csv");
    for (String file : List.of("sheet.xlsx", "sheet.ods")) {
      Recording read = foreign(file, profile(SHEET));
      assertThat(read.start()).isEqualTo(plain.start());
      assertThat(read.signal().size()).isEqualTo(61);
      for (int i = 0; i < 61; i++) {
        assertThat(read.signal().time_s(i)).isEqualTo(plain.signal().time_s(i));
        assertThat(read.signal().value(i)).isEqualTo(plain.signal().value(i));
      }
    }
  }

  @Test
  void nightsInWhichClocksChangeHaveEveryRowInItsPlace() throws IOException {
    ImportProfile berlin = night(", \"zone\": \"Europe/Berlin\"");
    for (String file : List.of("autumn.csv", "spring.csv")) {
      Recording read = foreign(file, berlin);
      int rows = file.equals("autumn.csv") ? 1080 : 900;
      assertThat(read.signal().size()).isEqualTo(rows);
      for (int i = 0; i < rows; i++) {
        assertThat(read.signal().time_s(i)).isEqualTo(20.0 * i);
      }
      assertThat(read.start()).isPresent();
    }
  }

  @Test
  void autumnNightAsAFieldLogHasNoRowThatCannotBeReadAndCarriesItsDates() throws IOException {
    ImportProfile berlin = night(", \"zone\": \"Europe/Berlin\"");
    LogReader reader =
        value(
            LogReader.openForeign(
                Files.newInputStream(AWKWARD.resolve("autumn.csv")),
                "autumn.csv",
                SignalChain.Input.VOLTAGE,
                berlin));
    List<LogRow> rows = new ArrayList<>();
    try (reader) {
      for (Optional<LogRow> row = reader.next(); row.isPresent(); row = reader.next()) {
        rows.add(row.get());
      }
    }
    assertThat(reader.columns().names()).containsExactly("time_s", "delta_K", "time_iso");
    assertThat(rows).hasSize(1080).allMatch(row -> row.time_s().isPresent());
    assertThat(rows.get(539).text()).endsWith("2026-10-25T01:59:40+02:00");
    assertThat(rows.get(720).text()).endsWith("2026-10-25T02:00:00+01:00");
  }

  @Test
  void datesWithoutAZoneAreSaidToBeWithout() throws IOException {
    Checked<Recording> read =
        RunFile.readForeign(
            AWKWARD.resolve("spring.csv"), "spring.csv", SignalChain.Input.VOLTAGE, night(""));
    assertThat(read.problems()).extracting(Problem::id).containsExactly("import.no-zone");
  }

  @Test
  void timeThatNoClockOfTheZoneShowedIsRefusedWithItsLine() throws IOException {
    Checked<Recording> skipped =
        RunFile.readForeign(
            AWKWARD.resolve("spring.csv"),
            "spring.csv",
            SignalChain.Input.VOLTAGE,
            night(", \"zone\": \"Europe/London\""));
    Problem first = skipped.problems().get(0);
    assertThat(first.id()).isEqualTo("import.time-skipped");
    assertThat(first.found()).isEqualTo("29.03.2026 01:00:00");
  }
}
