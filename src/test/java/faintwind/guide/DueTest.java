package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DueTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final OffsetDateTime MEASURED = SampleBuild.BEGIN.plusDays(50);
  private final List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));

  private Due due() {
    return Due.of(CHECKLIST, SampleBuild.after(entries), MEASURED);
  }

  @Test
  void aYearAfterItWasMeasured() {
    assertThat(due()).isEqualTo(new Due(MEASURED.plusYears(1), Due.Cause.TIME));
    assertThat(due().isPast(MEASURED.plusDays(364))).isFalse();
    assertThat(due().isPast(MEASURED.plusYears(1))).isTrue();
  }

  @Test
  void atOnceAfterARepair() {
    entries.add(SampleBuild.entry("r", "mount-pair", new Event.Repaired("a lead was soldered")));
    assertThat(due().cause()).isEqualTo(Due.Cause.REPAIR);
    assertThat(due().at()).isEqualTo(SampleBuild.LATER.minusHours(1));
  }

  private void checked(String id, String calibration, boolean agrees) {
    Event check =
        new Event.Rechecked(
            calibration, "", "runs/check-1/runs.csv", agrees, "said", Optional.empty());
    OffsetDateTime at = SampleBuild.LATER.minusMinutes(entries.size());
    entries.add(new JournalEntry(id, at, "Ida", Optional.empty(), check));
  }

  @Test
  void atOnceWhereACheckAtTheArmDiffersAndNotAfterOneThatAgrees() {
    entries.add(
        new JournalEntry(
            "f",
            MEASURED,
            "Ida",
            Optional.empty(),
            new Event.CalibrationPutInForce("calibrations/one.json")));
    checked("c1", "calibrations/another.json", false);
    assertThat(due().cause()).isEqualTo(Due.Cause.TIME);
    checked("c2", "calibrations/one.json", false);
    OffsetDateTime at = entries.get(entries.size() - 1).at();
    assertThat(due()).isEqualTo(new Due(at, Due.Cause.RECHECK));
    checked("c3", "calibrations/one.json", true);
    assertThat(due().cause()).isEqualTo(Due.Cause.TIME);
  }

  @Test
  void atOnceWhereTheJarCheckDrifted() {
    entries.add(
        SampleBuild.entry(
            "j",
            "jar-check",
            new Event.ReadingEntered(
                "jar-delta", "33", SampleBuild.amount("33", "K"), Optional.empty())));
    assertThat(due().cause()).isEqualTo(Due.Cause.DRIFT);
  }

  @Test
  void nothingIsDueBeforeACalibrationIsInForce() {
    assertThat(Due.ofInForce(CHECKLIST, SampleBuild.after(entries))).isEmpty();
    entries.add(
        new JournalEntry(
            "f",
            SampleBuild.LATER,
            "Ida",
            Optional.empty(),
            new Event.CalibrationPutInForce("one.json", Optional.of(MEASURED))));
    Situation situation = SampleBuild.after(entries);
    assertThat(Due.ofInForce(CHECKLIST, situation)).contains(Due.byTime(MEASURED));
  }

  @Test
  void everyCauseHasItsOwnWords() {
    assertThat(Due.Cause.values())
        .extracting(Due.Cause::key)
        .containsExactly("due.time", "due.repair", "due.drift", "due.recheck");
  }
}
