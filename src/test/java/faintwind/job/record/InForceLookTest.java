package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.Calibration;
import faintwind.calibration.EnScore;
import faintwind.calibration.Evidence;
import faintwind.calibration.Measured;
import faintwind.calibration.Origin;
import faintwind.files.calibration.CalibrationFile;
import faintwind.guide.InForceGate;
import faintwind.guide.checklist.SampleBuild;
import faintwind.job.record.Enter.Person;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.JournalEntry;
import faintwind.report.plot.MadeUpCalibration;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InForceLookTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final OffsetDateTime MEASURED = OffsetDateTime.parse("2026-02-20T17:00:00+01:00");
  private static final String FILE = "calibrations/2026-03-01.json";
  private static final String REASON = "The supply was measured behind the long cable";

  private final AtomicInteger next = new AtomicInteger();
  @TempDir Path temp;
  private Path folder;

  @BeforeEach
  void begin() throws IOException {
    folder = temp.resolve("rind");
    Clock clock = Clock.fixed(NOW.toInstant(), NOW.getOffset());
    Enter.begin(folder, new InstrumentCreated("Rind 9", true), clock, person("Ada Test"));
    enter("Ada Test").plain(Optional.empty(), new DesignChosen("{}", "first"));
  }

  private Person person(String name) {
    return new Person(name, () -> "e" + next.incrementAndGet());
  }

  private InstrumentView view() throws IOException {
    Checked<InstrumentView> opened =
        InstrumentView.open(folder, json -> Optional.of(SampleBuild.sheet()));
    return ((Checked.Ok<InstrumentView>) opened).value();
  }

  private Enter enter(String name) throws IOException {
    return new Enter(view(), Clock.fixed(NOW.toInstant(), NOW.getOffset()), person(name));
  }

  private Checked<JournalEntry> put() throws IOException {
    return enter("Ada Test").plain(Optional.empty(), new CalibrationPutInForce(FILE));
  }

  private static List<String> ids(Checked<?> answer) {
    Messages english = Messages.of(Locale.ENGLISH);
    answer.problems().forEach(problem -> assertThat(english.line(problem)).isNotBlank());
    return answer.problems().stream().map(Problem::id).toList();
  }

  /** A calibration whose heating rate lies that many expanded uncertainties from the build. */
  private void keep(double en) throws IOException {
    Calibration usual = MadeUpCalibration.of("2026-03-01T10:00:00Z");
    Row row = new Row(BuildQuantity.HEATING, 0.08, 0.001, 0.066, 0.003, new EnScore(en), true);
    Evidence was = usual.evidence();
    Origin origin =
        new Origin(
            "Rind 9",
            usual.origin().created(),
            "test",
            Map.of(),
            Optional.empty(),
            Optional.of(
                new Measured(
                    MEASURED.minusHours(3), MEASURED, Measured.Basis.RECORDINGS, Map.of())),
            Optional.empty());
    Calibration calibration =
        new Calibration(
            origin,
            usual.signal(),
            usual.formula(),
            usual.coverage(),
            new Evidence(
                was.residuals(),
                was.runs(),
                was.leaveOneOut(),
                was.candidates(),
                was.monteCarlo(),
                Optional.of(new BuildAgreement(List.of(row), List.of()))),
            usual.performance(),
            usual.warnings());
    Files.createDirectories(folder.resolve("calibrations"));
    CalibrationFile.write(folder.resolve(FILE), calibration);
  }

  @Test
  void oneThatMeetsTheBuildCountsSinceItWasMeasured() throws IOException {
    keep(1.31);
    assertThat(put().isOk()).isTrue();
    assertThat(view().state().calibrationInForce(MEASURED)).contains(FILE);
    assertThat(view().state().calibrationInForce(MEASURED.minusSeconds(1))).isEmpty();
  }

  @Test
  void oneThatDoesNotMeetTheBuildIsHeldUp() throws IOException {
    keep(-1.32);
    assertThat(ids(put())).containsExactly("in-force.build-off");
    assertThat(view().state().calibrationInForce(NOW.plusYears(1))).isEmpty();
  }

  @Test
  void itIsExplainedByNameAndReasonOnly() throws IOException {
    keep(3);
    for (String reason : List.of("", " ", "x", "xxxxxxxxxxxx", "aa aaaaaaaaaaa")) {
      assertThat(ids(enter("Ada Test").forceExplained(FILE, reason)))
          .as(reason)
          .containsExactly("in-force.no-reason");
    }
    assertThat(ids(enter("A").forceExplained(FILE, REASON))).containsExactly("in-force.no-name");
    assertThat(ids(put())).containsExactly("in-force.build-off");
  }

  @Test
  void anExplanationOpensTheGateOfThatCalibrationAlone() throws IOException {
    keep(3);
    assertThat(enter("Ada Test").forceExplained(FILE, REASON).isOk()).isTrue();
    assertThat(view().state().calibrationInForce(MEASURED)).contains(FILE);
    assertThat(InForceGate.explanation(view().state(), FILE).orElseThrow().event().reason())
        .isEqualTo(REASON);
    Files.copy(folder.resolve(FILE), folder.resolve("calibrations/other.json"));
    CalibrationPutInForce other = new CalibrationPutInForce("calibrations/other.json");
    assertThat(ids(enter("Ada Test").plain(Optional.empty(), other)))
        .containsExactly("in-force.build-off");
  }

  @Test
  void whatIsOpenInTheBuildIsListed() throws IOException {
    keep(0);
    enter("Ada Test").forceExplained(FILE, REASON);
    List<String> open =
        InForceGate.open(view().checklist(), view().situation(NOW)).stream()
            .map(Problem::id)
            .distinct()
            .toList();
    assertThat(open).contains("open.step", "open.explained");
  }

  @Test
  void anOlderOnePutInForceAgainTakesTheNewerOnesPlace() throws IOException {
    keep(0);
    put();
    CalibrationPutInForce newer =
        new CalibrationPutInForce(FILE, Optional.of(MEASURED.plusDays(3)));
    enter("Ada Test").plain(Optional.empty(), newer);
    assertThat(view().state().calibrationInForce(MEASURED.plusDays(2))).contains(FILE);
    assertThat(view().state().last(CalibrationPutInForce.class).orElseThrow().event().from())
        .contains(MEASURED.plusDays(3));
  }
}
