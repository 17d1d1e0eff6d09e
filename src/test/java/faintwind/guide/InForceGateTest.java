package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Problem;
import faintwind.record.Event;
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
}
