package faintwind.calibration.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.correction.CarriedShare.Reading;
import faintwind.calibration.run.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

class CarriedShareTest {

  @Test
  void exactReadingsGiveTheShare() {
    List<Reading> readings =
        List.of(
            new Reading(1, 0.03, 0.004), new Reading(2, 0.06, 0.004), new Reading(3, 0.09, 0.004));
    Uncertain share = CarriedShare.of(readings).orElseThrow();
    assertThat(share.value()).isCloseTo(0.03, within(1e-12));
    // 1/sqrt(sum v^2/u^2) = 0.004/sqrt(1 + 4 + 9)
    assertThat(share.u().orElseThrow()).isCloseTo(0.004 / Math.sqrt(14), within(1e-12));
  }

  @Test
  void readingsThatDisagreeWidenTheUncertainty() {
    List<Reading> agree = List.of(new Reading(2, 0.06, 0.002), new Reading(2, 0.061, 0.002));
    List<Reading> apart = List.of(new Reading(2, 0.04, 0.002), new Reading(2, 0.08, 0.002));
    assertThat(CarriedShare.of(apart).orElseThrow().u().orElseThrow())
        .isGreaterThan(3 * CarriedShare.of(agree).orElseThrow().u().orElseThrow());
  }

  @Test
  void orderDoesNotMatter() {
    Reading one = new Reading(1, 0.02, 0.005);
    Reading other = new Reading(3, 0.1, 0.01);
    assertThat(CarriedShare.of(List.of(one, other)).orElseThrow().value())
        .isCloseTo(CarriedShare.of(List.of(other, one)).orElseThrow().value(), within(1e-15));
  }

  @Test
  void nothingReadGivesNothing() {
    assertThat(CarriedShare.of(List.of())).isEmpty();
    assertThatThrownBy(() -> new Reading(0, 0.1, 0.1)).isInstanceOf(IllegalArgumentException.class);
  }
}
