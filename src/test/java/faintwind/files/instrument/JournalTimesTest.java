package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder.Access;
import faintwind.files.instrument.InstrumentFolder.Opened;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clocks set back or an hour off: the order of the lines stays, and it is said. */
class JournalTimesTest {
  @TempDir Path temp;
  private InstrumentFolder folder;

  @BeforeEach
  void begin() throws IOException {
    folder =
        InstrumentFolder.create(
            temp.resolve("rind"),
            entry("e0", "2026-10-25T00:30+02:00", new Event.InstrumentCreated("Rind", false)));
  }

  private static JournalEntry entry(String id, String at, Event event) {
    return new JournalEntry(id, OffsetDateTime.parse(at), "Käthe", Optional.empty(), event);
  }

  private void note(String id, String at) throws IOException {
    folder.append(List.of(entry(id, at, new Event.NoteWritten(id))));
  }

  private List<Problem> problems() throws IOException {
    Opened opened = folder.audit();
    assertThat(opened.access()).isEqualTo(Access.READ_WRITE);
    assertThat(opened.state().lines()).extracting(Standing::entry).startsWith("e0", "e1", "e2");
    return opened.problems();
  }

  @Test
  void aClockSetBackBreaksNothingAndIsNamed() throws IOException {
    note("e1", "2026-10-26T09:00+01:00");
    note("e2", "2019-01-01T00:00Z");
    note("e3", "2026-10-26T09:02+01:00");
    assertThat(problems()).extracting(Problem::id).containsExactly("journal.time-back");
    assertThat(problems().get(0).found()).isEqualTo("e2");
    assertThat(problems()).noneMatch(Problem::isError);
  }

  @Test
  void theEndOfSummerTimeIsNoStepBack() throws IOException {
    note("e1", "2026-10-25T02:50+02:00");
    note("e2", "2026-10-25T02:10+01:00");
    note("e3", "2026-10-25T03:00+01:00");
    assertThat(problems()).isEmpty();
  }

  @Test
  void aClockThatMissedTheEndOfSummerTimeIsNamed() throws IOException {
    note("e1", "2026-10-25T02:50+02:00");
    note("e2", "2026-10-25T02:10+02:00");
    assertThat(problems()).extracting(Problem::id).containsExactly("journal.time-back");
  }

  @Test
  void twoComputersAFewMinutesApartAreNotNamed() throws IOException {
    note("e1", "2026-10-26T09:04+01:00");
    note("e2", "2026-10-26T09:00+01:00");
    assertThat(problems()).isEmpty();
  }

  @Test
  void aClockThatRanAheadIsNamedWhereItCameBack() throws IOException {
    note("e1", "2026-10-27T12:00+01:00");
    note("e2", "2026-10-26T09:00+01:00");
    assertThat(problems()).extracting(Problem::id).containsExactly("journal.time-back");
  }
}
