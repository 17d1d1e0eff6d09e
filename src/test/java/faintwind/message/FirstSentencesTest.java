package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FirstSentencesTest {
  @ParameterizedTest
  @CsvSource({
    "Wipe it. Let it dry. Measure., 30, Wipe it. Let it dry. Measure.",
    "Wipe it. Let it dry. Measure., 20, Wipe it. Let it dry.",
    "Wipe it. Let it dry. Measure., 10, Wipe it.",
    "Wipe it. Let it dry. Measure., 3, Wipe it.",
    "One that does not end, 5, One that does not end",
    "Is it 1.5 V? Switch off., 14, Is it 1.5 V?"
  })
  void wholeSentencesAreKept(String text, int most, String kept) {
    assertThat(FirstSentences.of(text, most)).isEqualTo(kept);
  }
}
