package faintwind.calibration.fit.solving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.Uncertain;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What one fit says to the others of its class, and what it costs to agree with them. */
class FitResultTest {
  private static final FitResult FIT = HealthyFit.FIT;

  /** Of what is positive by nature the logarithm is told, of everything else itself. */
  @Test
  void sharedUnknownsAreToldWhereTheyAreNormal() {
    SessionShown shown = FIT.shown();
    double[] values = FIT.values();
    double[][] covariance = FIT.covariance();
    assertThat(shown.names()).hasSize(FIT.setup().layout().shared()).contains("forced", "tilt");
    int forced = HealthyFit.index("forced");
    int tilt = HealthyFit.index("tilt");
    assertThat(shown.estimates().get(forced)).isCloseTo(Math.log(values[forced]), within(1e-9));
    assertThat(shown.estimates().get(tilt)).isCloseTo(values[tilt], within(1e-9));
    assertThat(shown.covariance().at(tilt, tilt))
        .isCloseTo(covariance[tilt][tilt], within(1e-9 * covariance[tilt][tilt]));
    double relative = covariance[forced][forced] / values[forced] / values[forced];
    assertThat(shown.covariance().at(forced, forced)).isCloseTo(relative, within(1e-6 * relative));
    assertThat(shown.covariance().at(tilt, forced))
        .isEqualTo(shown.covariance().at(forced, tilt))
        .isCloseTo(covariance[tilt][forced] / values[forced], within(1e-9));
    assertThat(shown.believed().at(tilt, tilt)).isGreaterThan(shown.covariance().at(tilt, tilt));
  }

  /**
   * By the product of normal densities: where the recordings alone say m ± s, a belief of c ± w in
   * the place of the old one of 0 ± 1 changes the least by (m − c)²/(s² + w²) − m²/(s² + 1), all in
   * units of the old belief. The fit is not quite straight, so that it holds to a seventh.
   */
  @Test
  void agreeingCostsWhatTheNormalDensitiesSay() {
    int tilt = HealthyFit.index("tilt");
    double x = FIT.solution().optimum().point()[tilt];
    double v = FIT.solution().optimum().unitCovariance()[tilt][tilt];
    double m = x / (1 - v);
    double square = v / (1 - v);
    double spread = FIT.setup().unknowns().get(tilt).spread();
    double first = FIT.setup().unknowns().get(tilt).value(0);
    for (double off : new double[] {0, 2, -2}) {
      double c = m + off * Math.sqrt(square);
      double w = 0.1;
      ClassKnown others =
          new ClassKnown(Map.of("tilt", Uncertain.of(first + c * spread, w * spread)), List.of());
      double expected = (m - c) * (m - c) / (square + w * w) - m * m / (square + 1);
      assertThat(FIT.costOfAgreeing(others, () -> false))
          .isCloseTo(expected, within(0.3 + expected / 7));
    }
  }
}
