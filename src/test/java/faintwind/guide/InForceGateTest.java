package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.Calibration;
import faintwind.calibration.EnScore;
import faintwind.calibration.Evidence;
import faintwind.calibration.speed.TestCalibration;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class InForceGateTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  private static List<String> open(List<JournalEntry> entries) {
    return InForceGate.open(CHECKLIST, SampleBuild.after(entries)).stream()
        .map(Problem::id)
        .toList();
  }

  @Test
  void nothingIsOpenInAFinishedBuild() {
    assertThat(open(SampleBuild.complete(CHECKLIST))).isEmpty();
  }

  @Test
  void aStopComesFirstAndAWaiverStaysListed() {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    entries.add(
        SampleBuild.entry(
            "x",
            "heater-alone",
            new Event.ReadingEntered(
                "heater-alone", "27", SampleBuild.amount("27", "Ω"), Optional.empty())));
    entries.add(
        SampleBuild.entry(
            "w", "heater-insulation", new Event.Waived("lead-a-ball", "for show only")));
    List<String> open = open(entries);
    assertThat(open.get(0)).isEqualTo("open.stop");
    assertThat(open).endsWith("open.waiver");
  }

  /** A calibration of which one number is off by so much of what tolerances explain. */
  private static Calibration calibration(double en, String... notes) {
    Calibration c = TestCalibration.ofModel();
    Evidence e = c.evidence();
    BuildAgreement.Row row =
        new BuildAgreement.Row(BuildQuantity.STILL, 30, 0.3, 29, 0.3, new EnScore(en), true);
    Evidence compared =
        new Evidence(
            e.residuals(),
            e.runs(),
            e.leaveOneOut(),
            e.candidates(),
            e.monteCarlo(),
            Optional.of(new BuildAgreement(List.of(row), List.of())));
    List<Problem> warnings = new ArrayList<>();
    for (String note : notes) {
      warnings.add(Problem.warning(note, Where.NOWHERE, ""));
    }
    return new Calibration(
        c.origin(), c.signal(), c.formula(), c.coverage(), compared, c.performance(), warnings);
  }

  private static InForceGate.Answer check(List<JournalEntry> entries, Calibration calibration) {
    return InForceGate.check(CHECKLIST, SampleBuild.after(entries), "one.json", calibration);
  }

  private static List<String> why(List<JournalEntry> entries, Calibration calibration) {
    InForceGate.Answer answer = check(entries, calibration);
    assertThat(answer.opens()).isEqualTo(answer.reasons().isEmpty());
    return answer.reasons().stream().map(Problem::id).toList();
  }

  /** 2.576/1.960 = 1.314 of the normal distribution: 99 % over 95 %. */
  @Test
  void aCalibrationThatMeetsTheBuildMayCount() {
    List<JournalEntry> entries = SampleBuild.complete(CHECKLIST);
    assertThat(check(entries, calibration(0.5)).opens()).isTrue();
    assertThat(why(entries, calibration(1.31))).isEmpty();
    assertThat(check(entries, calibration(1.32)).opens()).isFalse();
    assertThat(why(entries, calibration(-1.32))).containsExactly("in-force.build-off");
    assertThat(why(entries, TestCalibration.ofModel())).as("nothing to compare").isEmpty();
  }

  @Test
  void aRehearsalNeverCounts() {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    assertThat(why(entries, calibration(0, Calibration.REHEARSAL)))
        .containsExactly("calibration.rehearsal");
    entries.add(by("Ada Test", new Event.RehearsalBegun()));
    assertThat(why(entries, calibration(0))).containsExactly("calibration.rehearsal");
  }

  @Test
  void oneThatDoesNotMeetTheBuildCountsOnceItIsExplained() {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    entries.add(by("Ada Test", explained("another.json", WHY)));
    entries.add(by("7", explained("one.json", WHY)));
    entries.add(by("Ada Test", explained("one.json", "because")));
    assertThat(why(entries, calibration(2))).containsExactly("in-force.build-off");
    entries.add(by("Ada Test", explained("one.json", WHY)));
    assertThat(why(entries, calibration(2))).isEmpty();
    assertThat(check(entries, calibration(2)).open())
        .extracting(Problem::id)
        .contains("open.explained");
  }

  @Test
  void inAClassroomTheTeacherExplains() {
    InstrumentState alone = state();
    InstrumentState classroom =
        state(
            new JournalEntry(
                "q",
                SampleBuild.BEGIN,
                "Mr Teach",
                Optional.of("choose-use"),
                new Event.QuestionAnswered("group", "yes")));
    assertThat(refused(alone, WHY, "Pia Pupil")).isEmpty();
    assertThat(refused(classroom, WHY, "Pia Pupil")).containsExactly("in-force.not-the-teacher");
    assertThat(refused(classroom, WHY, " mr teach")).isEmpty();
    assertThat(refused(alone, "so", "J."))
        .containsExactly("in-force.no-name", "in-force.no-reason");
  }

  private static final String WHY = "the heater was measured at its ends";

  private static List<String> refused(InstrumentState state, String reason, String who) {
    return InForceGate.refusals(state, reason, who).stream().map(Problem::id).toList();
  }

  private static InstrumentState state(JournalEntry... entries) {
    return InstrumentState.replay(List.of(entries));
  }

  private static Event explained(String file, String reason) {
    return new Event.Waived(InForceGate.EXPLAINED + file, reason);
  }

  private static JournalEntry by(String who, Event event) {
    return new JournalEntry(
        "x" + event.hashCode() + who, SampleBuild.LATER, who, Optional.empty(), event);
  }
}
