package faintwind.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Amount;
import faintwind.message.Problem;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.RehearsalBegun;
import faintwind.record.Event.Waived;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What no correction takes back, however it came into the journal. */
class StrikesTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private final List<JournalEntry> entries = new ArrayList<>();

  private String add(String who, String step, Event event) {
    String id = "e" + (entries.size() + 1);
    entries.add(new JournalEntry(id, AT, who, Optional.of(step), event));
    return id;
  }

  private String strike(String who, String entry) {
    return add(who, "", new Corrected(entry, "by hand", Optional.empty()));
  }

  private List<String> refused() {
    return InstrumentState.replay(entries).refusedCorrections().stream().map(Problem::id).toList();
  }

  @Test
  void whatTheFolderIsStays() {
    String begun = add("Ada", "", new InstrumentCreated("Rind", true, Optional.of(2)));
    String rehearsal = add("Ada", "", new RehearsalBegun());
    strike("Ada", begun);
    strike("Ada", rehearsal);
    add(
        "Ada",
        "",
        new Corrected(begun, "real now", Optional.of(new InstrumentCreated("Rind", false))));
    InstrumentState state = InstrumentState.replay(entries);
    assertThat(state.madeUp()).isTrue();
    assertThat(state.rehearsal()).isTrue();
    assertThat(state.members()).isEqualTo(2);
    assertThat(refused()).containsExactly("strike.never", "strike.never", "strike.never");
    assertThat(state.strayCorrections()).isEmpty();
  }

  @Test
  void inAClassroomTheTeacherAloneTakesBackWhatTheTeacherEntered() {
    String group = add("Teacher", "choose-use", new QuestionAnswered("group", "yes"));
    String waiver = add("Teacher", "joined-check", new Waived("leak", "it was damp (signed)"));
    String note = add("Ada", "joined-check", new NoteWritten("weighed"));
    strike("Ada", group);
    strike("Ada", waiver);
    strike("Bo", note);
    InstrumentState state = InstrumentState.replay(entries);
    assertThat(refused()).containsExactly("strike.of-the-teacher", "strike.of-the-teacher");
    assertThat(state.answer("choose-use", "group")).isPresent();
    assertThat(state.waiver("joined-check", "leak")).isPresent();
    assertThat(state.standing(NoteWritten.class)).isEmpty();
    strike("teacher ", waiver);
    assertThat(InstrumentState.replay(entries).waiver("joined-check", "leak")).isEmpty();
  }

  @Test
  void aSlipInAReadingAndAnEntryOutsideAClassroomAreCorrectedByAnybody() {
    String waiver = add("Teacher", "joined-check", new Waived("leak", "it was damp today"));
    strike("Ada", waiver);
    add("Teacher", "choose-use", new QuestionAnswered("group", "yes"));
    String typed =
        add(
            "Teacher",
            "joined-check",
            new ReadingEntered("loop", "12", Amount.exact(12, "Ω"), Optional.empty()));
    strike("Ada", typed);
    assertThat(refused()).isEmpty();
    assertThat(InstrumentState.replay(entries).waiver("joined-check", "leak")).isEmpty();
    assertThat(InstrumentState.replay(entries).reading("joined-check", "loop")).isEmpty();
  }
}
