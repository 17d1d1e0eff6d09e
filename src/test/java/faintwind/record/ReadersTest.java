package faintwind.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event.CautionAcknowledged;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadersTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-03T08:00Z");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pair 1, Otters; Ada; ADA; 1",
        "Pair 1, Otters; Ada; Bo; 2",
        "Pair 1, Otters; Pair 1; Pair 1; 2",
        "Pair 1, Otters; Otters; Pair 1; 2",
        "Pair 1, Otters; Pair 1, Otters; pair 1, otters; 2",
        "Pair 12; Pair 1; Pair 1; 1"
      })
  void eachCountsOnceButThePairs(String row) {
    String[] cells = row.split("; ", -1);
    List<JournalEntry> entries = new ArrayList<>();
    for (int i = 1; i <= 2; i++) {
      entries.add(
          new JournalEntry(
              "e" + i, AT, cells[i], Optional.of("step"), new CautionAcknowledged("hot")));
    }
    List<Standing<CautionAcknowledged>> read =
        InstrumentState.replay(entries).standing(CautionAcknowledged.class);
    assertThat(Readers.of(cells[0], read)).hasSize(Integer.parseInt(cells[3]));
  }
}
