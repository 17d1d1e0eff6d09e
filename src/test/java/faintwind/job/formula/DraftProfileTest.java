package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.SignalChain;
import faintwind.files.asset.ProfileFile;
import faintwind.files.run.RunFile;
import faintwind.files.run.RunsTable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DraftProfileTest {
  private static final Path AWKWARD = Path.of("src/test/resources/awkward");
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

  @TempDir Path tmp;

  private static <T> T value(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private static DraftProfile draft(Path sample) throws IOException {
    return value(DraftProfile.of(sample, BERLIN));
  }

  private static Recording plain() throws IOException {
    Path file = AWKWARD.resolve("plain/session.csv");
    return value(RunFile.read(file, "plain", SignalChain.Input.VOLTAGE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "workshop/Messung.csv",
        "utf16le.txt",
        "sheet.xlsx",
        "sheet.ods",
        "two-heads.csv",
        "month-first.csv"
      })
  void draftReadsTheSampleAsThePlainFile(String sample) throws IOException {
    DraftProfile draft = draft(AWKWARD.resolve(sample));
    assertThat(draft.understood().problems()).isEmpty();
    Recording plain = plain();
    Recording read =
        value(
            RunFile.readForeign(
                AWKWARD.resolve(sample), sample, SignalChain.Input.VOLTAGE, draft.profile()));
    assertThat(read.unit()).isEqualTo(plain.unit());
    for (int i = 0; i < 61; i++) {
      assertThat(read.signal().time_s(i)).isEqualTo(plain.signal().time_s(i));
      assertThat(read.signal().value(i)).isEqualTo(plain.signal().value(i));
    }
    assertThat(read.air_K()).isPresent();
    boolean dated = draft.profile().time().form().isDated();
    assertThat(read.start()).isEqualTo(dated ? plain.start() : read.start());
  }

  @Test
  void draftSurvivesBeingWrittenAndRead() throws IOException {
    ImportProfile profile = draft(AWKWARD.resolve("two-heads.csv")).profile();
    assertThat(ProfileFile.parse(ProfileFile.text(profile), "again"))
        .isEqualTo(Checked.ok(profile));
  }

  @Test
  void draftOfOneRecordingReadsTheWholeTable() throws IOException {
    ImportProfile profile = draft(AWKWARD.resolve("workshop/Messung.csv")).profile();
    Checked<RunsTable> read = RunsTable.readForeign(AWKWARD.resolve("workshop/runs.csv"), profile);
    assertThat(read.problems()).isEmpty();
    assertThat(value(read).runSet().runs()).hasSize(9);
  }

  @Test
  void dayThatMayBeAMonthIsSaid() throws IOException {
    Path log = tmp.resolve("log.csv");
    Files.writeString(log, "when;signal [mV]\n03/04/2026 10:00:00;1,5\n03/04/2026 10:00:10;1,6\n");
    Checked<DraftProfile> drafted = DraftProfile.of(log, BERLIN);
    assertThat(value(drafted).profile().time().pattern()).isEqualTo("dd/MM/uuuu HH:mm:ss");
    assertThat(value(drafted).notes())
        .extracting(Problem::id)
        .containsExactly("draft.zone-taken", "draft.day-or-month");
  }

  @Test
  void columnsThatSayNothingAreLeftOutByName() throws IOException {
    Path log = tmp.resolve("log.csv");
    Files.writeString(
        log, "Elapsed (ms),Raw,Door,Air temp (C)\n0,512,shut,19.5\n1000,513,shut,---\n");
    DraftProfile draft = draft(log);
    assertThat(draft.profile().time().form()).isEqualTo(TimeForm.MILLISECONDS);
    assertThat(draft.profile().lines().missing()).containsExactly("---");
    assertThat(draft.notes())
        .extracting(p -> p.id() + " " + p.found())
        .containsExactly("draft.unit-unknown Raw", "draft.left-out Door");
  }

  @Test
  void textWithoutATableOrWithoutASignalIsRefused() throws IOException {
    Path letter = Files.writeString(tmp.resolve("letter.txt"), "Dear all,\nthe door was open.\n");
    Path air = Files.writeString(tmp.resolve("air.csv"), "time [s],air [°C]\n0,19.5\n1,19.6\n");
    assertThat(List.of(id(letter), id(air))).containsExactly("draft.no-table", "draft.no-signal");
  }

  private static String id(Path sample) throws IOException {
    return DraftProfile.of(sample, BERLIN).problems().get(0).id();
  }
}
