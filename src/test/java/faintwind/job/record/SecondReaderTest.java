package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The second of a pair reads a caution by another name, or by the pair's own. */
class SecondReaderTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-03T08:00Z");

  private static boolean isTaken(String first, String second) {
    InstrumentState state =
        InstrumentState.replay(
            List.of(
                new JournalEntry(
                    "e1",
                    AT,
                    "Teacher",
                    Optional.empty(),
                    new InstrumentCreated("Pair 1, Otters", false, Optional.of(2))),
                new JournalEntry(
                    "e2", AT, first, Optional.of("plan"), new CautionAcknowledged("hot"))));
    return EntryRules.reader(state, "plan", "hot", second).isOk();
  }

  @Test
  void thePairsOwnNameStandsForEachOfThem() {
    assertThat(isTaken("Pair 1", "pair 1 ")).isTrue();
    assertThat(isTaken("Otters", "Otters")).isTrue();
    assertThat(isTaken("Ada", "Bo")).isTrue();
    assertThat(isTaken("Ada", "ADA")).isFalse();
  }
}
