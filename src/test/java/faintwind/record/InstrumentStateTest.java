package faintwind.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Amount;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.ReadingEntered;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InstrumentStateTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");

  private static JournalEntry entry(int number, Event event) {
    return new JournalEntry(
        "e" + number, AT.plusMinutes(number), "Ada Test", Optional.of("step-a"), event);
  }

  private static ReadingEntered reading(double value) {
    return new ReadingEntered(
        "loop", String.valueOf(value), Amount.exact(value, "Ω"), Optional.empty());
  }

  @Test
  void aCorrectionStrikesThroughAndKeepsBoth() {
    InstrumentState state =
        InstrumentState.replay(
            List.of(
                entry(1, reading(12)),
                entry(2, new Corrected("e1", "comma slipped", Optional.of(reading(1.2))))));
    List<Standing<ReadingEntered>> history = state.history("step-a", "loop");
    assertThat(history).extracting(l -> l.event().amount().value()).containsExactly(12.0, 1.2);
    Standing.Strike strike = history.get(0).strike().orElseThrow();
    assertThat(strike.who()).isEqualTo("Ada Test");
    assertThat(strike.at()).isEqualTo(AT.plusMinutes(2));
    assertThat(strike.why()).isEqualTo("comma slipped");
    assertThat(history.get(1).replaces()).contains("e1");
    assertThat(state.reading("step-a", "loop").orElseThrow().event().amount().value())
        .isEqualTo(1.2);
  }

  @Test
  void undoBringsBackTheReadingBefore() {
    InstrumentState state =
        InstrumentState.replay(
            List.of(
                entry(1, reading(12)),
                entry(2, reading(13)),
                entry(3, new Corrected("e2", "wrong ball", Optional.empty()))));
    assertThat(state.reading("step-a", "loop").orElseThrow().entry()).isEqualTo("e1");
    assertThat(state.history("step-a", "loop")).hasSize(2);
  }

  @Test
  void aCorrectionOfNothingOrOfSomethingStruckIsStray() {
    InstrumentState state =
        InstrumentState.replay(
            List.of(
                entry(1, reading(12)),
                entry(2, new Corrected("e9", "?", Optional.empty())),
                entry(3, new Corrected("e1", "!", Optional.empty())),
                entry(4, new Corrected("e1", "again", Optional.of(reading(5))))));
    assertThat(state.strayCorrections()).containsExactly("e2", "e4");
    assertThat(state.reading("step-a", "loop")).isEmpty();
  }

  @Test
  void theCalibrationInForceIsTheLastOnePutInForceByThen() {
    InstrumentState state =
        InstrumentState.replay(
            List.of(
                entry(10, new CalibrationPutInForce("a.json")),
                entry(20, new CalibrationPutInForce("b.json"))));
    assertThat(state.calibrationInForce(AT.plusMinutes(9))).isEmpty();
    assertThat(state.calibrationInForce(AT.plusMinutes(10))).contains("a.json");
    assertThat(state.calibrationInForce(AT.plusMinutes(19))).contains("a.json");
    assertThat(state.calibrationInForce(AT.plusDays(1))).contains("b.json");
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whateverIsCorrectedNothingEverLeavesTheRecord(long seed) {
    Random random = new Random(seed);
    List<JournalEntry> entries = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 200; i++) {
      Event event = reading(random.nextInt(1000));
      if (i > 0 && random.nextInt(3) == 0) {
        Optional<Event> replacement =
            random.nextBoolean() ? Optional.of(reading(i)) : Optional.empty();
        event = new Corrected("e" + random.nextInt(i), "why " + i, replacement);
      }
      entries.add(entry(i, event));
      InstrumentState state = InstrumentState.replay(entries);
      Set<String> now = new HashSet<>();
      state.lines().forEach(line -> now.add(line.entry()));
      assertThat(now).containsAll(seen);
      assertThat(state.lines()).isSortedAccordingTo((a, b) -> a.at().compareTo(b.at()));
      seen.addAll(now);
      long struck = state.lines().stream().filter(line -> !line.stands()).count();
      long corrections = entries.stream().filter(e -> e.event() instanceof Corrected).count();
      assertThat(struck + state.strayCorrections().size()).isEqualTo(corrections);
    }
  }
}
