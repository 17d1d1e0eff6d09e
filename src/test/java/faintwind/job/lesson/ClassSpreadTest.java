package faintwind.job.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.lesson.Spread;
import faintwind.message.Messages;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is said of numbers that a whole class has measured. */
class ClassSpreadTest {
  private static List<String> said(Quantity quantity, double... values) {
    Map<Integer, Double> byPair = new HashMap<>();
    for (int i = 0; i < values.length; i++) {
      byPair.put(i + 1, values[i]);
    }
    List<String> lines = new ArrayList<>();
    new ClassText(Messages.of(Locale.ENGLISH))
        .spread(quantity, Spread.of(byPair).orElseThrow(), lines);
    return lines;
  }

  @Test
  void aFloorIsCalledOneAndValuesCanBeToldApart() {
    assertThat(said(Quantity.HEATER, 100.2, 100.2, 100.2, 100.2, 100.2, 100.2, 102.5))
        .hasSize(2)
        .anyMatch(l -> l.contains("100.2 Ω in the middle of 7; at least half of them lie within"))
        .anyMatch(l -> l.startsWith("Pair 7 lies outside with 102.5 Ω."));
  }

  @Test
  void aSpreadThatIsMeasuredIsSaid() {
    assertThat(said(Quantity.HEATER, 99, 100, 101, 102))
        .containsExactly(
            "Heater alone: 100 Ω in the middle of 4; they lie apart by 1.5 Ω (robust standard"
                + " deviation).");
  }

  @Test
  void threeAreTooFewToNameOne() {
    assertThat(said(Quantity.HEATER, 100.2, 100.3, 104.0))
        .contains(
            "They go from 100.2 to 104.0 Ω: too few to tell which of them is off, which needs"
                + " four.");
  }

  @Test
  void anUncertaintyIsAFaultOnlyWhereItIsMuchLarger() {
    assertThat(said(Quantity.U95, 2.29, 2.18, 2.30, 2.29, 2.28)).hasSize(1);
    assertThat(said(Quantity.U95, 2.29, 2.45, 2.30, 2.29, 2.28)).hasSize(1);
    assertThat(said(Quantity.U95, 2.29, 3.40, 2.30, 2.29, 2.28))
        .anyMatch(l -> l.startsWith("Pair 2 lies outside with 3.4"));
  }
}
