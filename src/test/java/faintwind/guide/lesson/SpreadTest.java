package faintwind.guide.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

class SpreadTest {
  /** By hand: median 32.0; deviations 0.5 0.1 0 0.1 0.3 6; their median 0.2; times 1.4826. */
  @Test
  void oneFarAwayIsOutsideAndMovesNeitherMiddleNorDeviation() {
    Spread spread =
        Spread.of(Map.of(1, 31.5, 2, 31.9, 3, 32.0, 4, 32.0, 5, 32.3, 6, 26.0)).orElseThrow();
    assertThat(spread.median()).isEqualTo(31.95, within(1e-9));
    assertThat(spread.deviation()).isEqualTo(1.4826 * 0.2, within(1e-3));
    assertThat(spread.outside()).containsOnlyKeys(6);
    assertThat(spread.outside().get(6)).isNegative();
  }

  @Test
  void ofThreeNobodyIsAccused() {
    assertThat(Spread.of(Map.of(1, 32.0, 2, 32.0, 3, 5.0)).orElseThrow().outside()).isEmpty();
  }

  @Test
  void classThatAgreesDoesNotAccuseOneThatIsHardlyOff() {
    Spread spread = Spread.of(Map.of(1, 100.0, 2, 100.0, 3, 100.0, 4, 101.0)).orElseThrow();
    assertThat(spread.outside()).isEmpty();
    assertThat(Spread.of(Map.of())).isEmpty();
  }
}
