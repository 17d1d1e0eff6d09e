package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Situation;
import faintwind.record.ReadingVerdict;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingTest {
  private final Checklist checklist = ShippedChecklist.standard();
  private final Map<String, Double> values = new HashMap<>(Situation.values(SampleBuild.sheet()));

  private ReadingVerdict verdict(String readingId, String typed) {
    Reading reading =
        checklist.stepOfReading(readingId).orElseThrow().reading(readingId).orElseThrow();
    return reading.judge(SampleBuild.amount(typed, reading.unit()), values).orElseThrow().verdict();
  }

  @ParameterizedTest(name = "{0} {1} is {2} (common practice, no source: 20 and 1 megohm)")
  @CsvSource({
    "lead-a-ball, OL, GOOD",
    "lead-a-ball, > 20 M, GOOD",
    "lead-a-ball, 20, GOOD",
    "lead-a-ball, 19.9, DOUBTFUL",
    "lead-a-ball, 6 M, DOUBTFUL",
    "lead-a-ball, 1, DOUBTFUL",
    "lead-a-ball, 999k, STOP",
    "lead-a-ball, 420k, STOP",
    "lead-a-ball, 0, STOP",
    "lead-a-ball, > 2 M, DOUBTFUL",
    "lead-a-ball, < 30 M, STOP"
  })
  void insulationIsJudgedByItsLimits(String reading, String typed, ReadingVerdict expected) {
    assertThat(verdict(reading, typed)).isEqualTo(expected);
  }

  @ParameterizedTest(
      name =
          "{0} {1} is {2}: band 99 to 101 ohm, 0.2 ohm of the meter's leads, 3 % beyond it"
              + " doubtful")
  @CsvSource({
    "heater-alone, 99, GOOD",
    "heater-alone, 101, GOOD",
    "heater-alone, '98,9', DOUBTFUL",
    "heater-alone, 96.03, DOUBTFUL",
    "heater-alone, 96.02, STOP",
    "heater-alone, 101.2, GOOD",
    "heater-alone, 101.3, DOUBTFUL",
    "heater-alone, 104.23, DOUBTFUL",
    "heater-alone, 104.24, STOP",
    "heater-alone, OL, STOP",
    "heater-alone, 0.1k, GOOD",
    "loop, 10, GOOD",
    "loop, 7, DOUBTFUL",
    "loop, 6.99, STOP",
    "loop, 21, DOUBTFUL",
    "loop, OL, STOP",
    "sense-change, 0.28, GOOD",
    "sense-change, 0.1, DOUBTFUL",
    "sense-change, -0.28, STOP",
    "zero-signal, -10 µV, GOOD",
    "zero-signal, 20 µV, DOUBTFUL",
    "zero-signal, -31 µV, STOP"
  })
  void bandsFromTheDesignAreThoseWorkedByHand(
      String reading, String typed, ReadingVerdict expected) {
    assertThat(verdict(reading, typed)).isEqualTo(expected);
  }

  @Test
  void theSecondBlankIsComparedWithTheFirst() {
    values.put("reading_blank_a", 9.57);
    assertThat(verdict("blank-b", "9.61")).isEqualTo(ReadingVerdict.GOOD);
    assertThat(verdict("blank-b", "9.62")).isEqualTo(ReadingVerdict.DOUBTFUL);
    assertThat(verdict("blank-b", "9.47")).isEqualTo(ReadingVerdict.STOP);
  }

  @Test
  void aBandWithoutItsOtherReadingIsNotJudged() {
    Reading reading =
        checklist.stepOfReading("blank-b").orElseThrow().reading("blank-b").orElseThrow();
    assertThat(reading.judge(SampleBuild.amount("9.6", "g"), values)).isEmpty();
  }

  @Test
  void withoutADesignNothingIsJudged() {
    Reading reading =
        checklist.stepOfReading("heater-alone").orElseThrow().reading("heater-alone").orElseThrow();
    assertThat(reading.judge(SampleBuild.amount("100", "Ω"), Map.of())).isEmpty();
  }
}
