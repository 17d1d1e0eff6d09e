package faintwind.calibration.complete;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.Relation;
import faintwind.calibration.speed.TestCalibration;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What another program finds in the file. */
class CompleteFormulaTest {
  private final Calibration calibration = TestCalibration.ofModel();
  private final CompleteFormula complete = CompleteFormula.of(calibration);

  /** The still-air difference is that of the instrument; its greatest loss that of 6 m/s. */
  @Test
  void theFilterKnowsTheLimitsOfTheHeater() {
    Map<String, Double> settings = complete.filter().settings();
    assertThat(settings.get("still_delta_K"))
        .isCloseTo(calibration.performance().stillSignal(), within(0.01));
    assertThat(settings.get("greatest_loss_1_s")).isBetween(0.01, 0.1);
    assertThat(settings).containsKeys("first_walk", "supply_tolerance");
    assertThat(complete.filter().walks_1_sqrt_s()).hasSize(6);
  }

  @Test
  void eachChainEndsWithWhatItIsFor() {
    assertThat(complete.relations().speed())
        .extracting(Relation::name)
        .last()
        .isEqualTo("speed_m_s");
    assertThat(complete.relations().loss()).extracting(Relation::name).last().isEqualTo("loss_1_s");
    assertThat(complete.relations().state()).extracting(Relation::name).last().isEqualTo("signal");
    assertThat(complete.constants()).containsKey("ball_diameter_m");
    assertThat(complete.uncertainty()).containsEntry("still_draught_m_s", 0.0);
    assertThat(complete.testVectors()).hasSize(20);
  }
}
