package faintwind.ui.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Situation;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.StepOpened;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.ui.Cellar;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RecordModelTest {
  private final Messages words = Messages.of(Locale.ENGLISH);
  private final List<RecordModel> asked = new ArrayList<>();

  private static JournalEntry entry(int n, Optional<String> step, Event event) {
    return new JournalEntry("e" + n, Cellar.NOW.plusMinutes(n), "Ida", step, event);
  }

  private static Situation at(InstrumentState state) {
    return new Situation(state, List.of(), Cellar.NOW.plusHours(1));
  }

  private RecordModel record(List<JournalEntry> entries) {
    return new RecordModel(
        words, ShippedChecklist.standard(), at(InstrumentState.replay(entries)), asked::add);
  }

  private static List<JournalEntry> corrected() {
    return List.of(
        entry(0, Optional.empty(), new InstrumentCreated("Rind 1", false)),
        entry(1, Optional.of("glue-heater"), new StepOpened()),
        entry(2, Optional.empty(), new NoteWritten("bore 3.2 mm")),
        entry(
            3,
            Optional.empty(),
            new Corrected("e2", "typed wrong", Optional.of(new NoteWritten("bore 3.3 mm")))));
  }

  @Test
  void theNewestComesFirstAndLookingIsNoNews() {
    List<RecordModel.Line> lines = record(corrected()).lines().get();
    assertThat(lines).noneMatch(line -> line.who().contains("glue-heater"));
    assertThat(lines.get(0).text()).contains("bore 3.3 mm");
    assertThat(lines.get(lines.size() - 1).text()).contains("Rind 1");
  }

  @Test
  void aCautionThatBelongsToNoStepIsSaidInItsWords() {
    for (String caution : List.of("opening", "opening-hive", "spinning-arm")) {
      List<JournalEntry> one =
          List.of(entry(0, Optional.empty(), new Event.CautionAcknowledged(caution)));
      assertThat(record(one).lines().get().get(0).text()).hasSizeGreaterThan(40);
    }
  }

  @Test
  void whatTheFolderIsIsNotOfferedForUndoing() {
    List<JournalEntry> begun =
        List.of(
            entry(0, Optional.empty(), new InstrumentCreated("Rind 1", false)),
            entry(1, Optional.empty(), new Event.RehearsalBegun()));
    assertThat(record(begun).undo(InstrumentState.replay(begun), struck -> {})).isFalse();
  }

  @Test
  void aCorrectedLineStaysStruckWithWhoWhenAndWhy() {
    RecordModel record = record(corrected());
    assertThat(record.lines().get())
        .filteredOn(RecordModel.Line::struck)
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.text()).contains("bore 3.2 mm");
              assertThat(line.mark()).isEqualTo(Mark.CORRECTED);
              assertThat(line.strike()).contains("Ida", "typed wrong", "21 November 2026", "14:33");
            });
    assertThat(record.title()).contains("one corrected");
  }

  @Test
  void aWaiverIsMarked() {
    List<JournalEntry> entries = new ArrayList<>(corrected());
    entries.add(entry(4, Optional.of("glue-heater"), new Waived("heater-ball", "dry room")));
    assertThat(record(entries).lines().get().get(0).mark()).isEqualTo(Mark.ATTENTION);
  }

  @Test
  void theBuildLogIsAskedForAndItsFateTold() {
    RecordModel record = record(corrected());
    record.next().get().act().orElseThrow().run().run();
    assertThat(asked).containsExactly(record);

    record.logWritten(Path.of("log.html"), Checked.ok(Path.of("log.html")));
    assertThat(record.next().get().sentence()).contains("log.html");
    assertThat(record.next().get().act()).isEmpty();

    record.logBroke(new IOException("No space left on device"));
    assertThat(record.next().get().mark()).isEqualTo(Mark.BLOCKED);
    assertThat(record.next().get().act()).isPresent();

    record.logWritten(
        Path.of("log.html"),
        Checked.refused(Problem.error("output.exists", Where.file("log.html"), "")));
    assertThat(record.next().get().detail()).contains("exists already");
  }

  @Test
  void anEmptyJournalSaysWhatWillStandHere() {
    RecordModel record = record(List.of());
    assertThat(record.title()).isEqualTo(words.text("window.record.empty"));
    assertThat(record.next().get().act()).isEmpty();
  }
}
