package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Today.Bench;
import faintwind.guide.Today.Item;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TodayTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  /** A sound build with everything entered before a step. */
  private static Bench before(String id) {
    List<JournalEntry> entries = new ArrayList<>();
    for (JournalEntry entry : SampleBuild.complete(CHECKLIST)) {
      if (entry.step().filter(id::equals).isPresent()) {
        break;
      }
      entries.add(entry);
    }
    return new Bench(id, CHECKLIST, Progress.of(CHECKLIST, SampleBuild.after(entries)));
  }

  private static List<String> ids(List<Item> items) {
    return items.stream().map(item -> item.step().step().id()).toList();
  }

  @Test
  void everyStepSaysHowLongItTakes() {
    assertThat(CHECKLIST.steps())
        .allMatch(step -> step.kit().minutes().isPresent() && step.kit().minutes().getAsInt() >= 5);
  }

  @Test
  void oneStepOpensTheNextAsLongAsTheTimeLasts() {
    Today today = Today.of(List.of(before("choose-use")), 40);
    assertThat(ids(today.items()))
        .containsExactly("choose-use", "choose-design", "check-clearance");
    assertThat(today.minutes()).isEqualTo(40);
    assertThat(today.running()).isEmpty();
    assertThat(today.tools()).contains("caliper");
  }

  @Test
  void aStepWithAClockComesFirstAndItsFollowersWait() {
    Today today = Today.of(List.of(before("choose-use"), before("coat-parts")), 60);
    assertThat(ids(today.items()))
        .startsWith("coat-parts", "choose-use")
        .doesNotContain("second-coat");
    assertThat(ids(today.running())).containsExactly("coat-parts");
    assertThat(today.parts()).contains("insulating varnish");
  }

  @Test
  void whereNothingFitsTheShortestIsNamed() {
    Today today = Today.of(List.of(before("drill-heated")), 4);
    assertThat(today.items()).isEmpty();
    assertThat(today.next()).isPresent();
    assertThat(Today.of(List.of(), 40).next()).isEmpty();
  }
}
