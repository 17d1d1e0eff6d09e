package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Covariance;
import faintwind.calibration.CoverageFactor;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Uncertain;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Uncertainty against the guides")
class UncertaintyPublishedTest {
  static Stream<Arguments> factors() {
    FitColumns table = FitColumns.read("student-t-table.csv");
    double[] freedom = table.numbers("nu");
    double[] factor = table.numbers("p95");
    return IntStream.range(0, freedom.length).mapToObj(i -> Arguments.of(freedom[i], factor[i]));
  }

  @ParameterizedTest(name = "Student t, ν {0}: {1} (JCGM 100:2008 Table G.2, recomputed)")
  @MethodSource("factors")
  void coverageFactorsOfTheGuide(double freedom, double factor) {
    assertThat(CoverageFactor.of(freedom)).isCloseTo(factor, within(1e-5));
  }

  @Test
  @DisplayName(
      "Welch–Satterthwaite: ν_eff 19.0, U95 2.2 % (JCGM 100:2008 G.4.3, memory; recomputed)")
  void effectiveFreedomOfTheGuide() {
    double[] u = {0.25, 0.57, 0.82};
    double freedom = CoverageFactor.effectiveFreedom(u, new double[] {9, 4, 14});

    assertThat(freedom).isCloseTo(18.9987, within(1e-3));
    assertThat(CoverageFactor.of(19) * Math.sqrt(0.25 * 0.25 + 0.57 * 0.57 + 0.82 * 0.82))
        .isCloseTo(2.1547, within(1e-3));
  }

  @Test
  @DisplayName("GUM H.3 with a common reference error 0.005 °C (H.3.6, seen): u and ν_eff merged")
  void commonErrorDoesNotAverageOut() {
    Covariance line = Covariance.of(new double[][] {{0.00287760 * 0.00287760, 0}, {0, 0}});
    double own = line.variance(new double[] {1, 0});
    double merged = Math.sqrt(own + 0.005 * 0.005);

    assertThat(merged).isCloseTo(0.00576893, within(1e-6));
    assertThat(
            CoverageFactor.effectiveFreedom(
                new double[] {0.00287760, 0.005}, new double[] {9, Double.POSITIVE_INFINITY}))
        .isCloseTo(145.380, within(0.01));
  }

  /** The five sets of V (V), I (A) and φ (rad) of Table H.2, from memory; the results were seen. */
  @Test
  @DisplayName("GUM H.2 (Table H.4, seen): R 127.732 (0.071), X 219.847 (0.295), Z 254.260 (0.236)")
  void correlatedInputsOfTheGuide() {
    double[][] sets = {
      {5.007, 19.663e-3, 1.0456},
      {4.994, 19.639e-3, 1.0438},
      {5.005, 19.640e-3, 1.0468},
      {4.990, 19.685e-3, 1.0428},
      {4.999, 19.678e-3, 1.0433}
    };
    double[] mean = new double[3];
    for (double[] set : sets) {
      for (int k = 0; k < 3; k++) {
        mean[k] += set[k] / sets.length;
      }
    }
    double[][] covariance = new double[3][3];
    for (double[] set : sets) {
      for (int a = 0; a < 3; a++) {
        for (int b = 0; b < 3; b++) {
          covariance[a][b] += (set[a] - mean[a]) * (set[b] - mean[b]) / (5 * 4);
        }
      }
    }
    Covariance inputs = Covariance.of(covariance);
    double v = mean[0];
    double i = mean[1];
    double phi = mean[2];
    double z = v / i;
    double resistance = z * Math.cos(phi);
    double reactance = z * Math.sin(phi);
    assertThat(resistance).isCloseTo(127.732, within(1e-3));
    assertThat(reactance).isCloseTo(219.847, within(1e-3));
    assertThat(z).isCloseTo(254.260, within(1e-3));
    double[] byR = {resistance / v, -resistance / i, -reactance};
    double[] byX = {reactance / v, -reactance / i, resistance};
    double[] byZ = {z / v, -z / i, 0};
    assertThat(Math.sqrt(inputs.variance(byR))).isCloseTo(0.071, within(1e-3));
    assertThat(Math.sqrt(inputs.variance(byX))).isCloseTo(0.295, within(1e-3));
    assertThat(Math.sqrt(inputs.variance(byZ))).isCloseTo(0.236, within(1e-3));
  }

  @Test
  @DisplayName("GUM H.1, components rounded as printed: ν_eff 16.76, cut to 16 (recomputed)")
  void freedomOfTheEndGauge() {
    double freedom =
        CoverageFactor.effectiveFreedom(
            new double[] {25, 9.7, 2.9, 16.6}, new double[] {18, 25.6, 50, 2});
    assertThat(freedom).isCloseTo(16.76, within(5e-3));
  }

  @Test
  @DisplayName(
      "Arm 750 mm, 20 turns, 94.25 s: 0.99998 m/s; u(R) 2 mm, u(t) 0.2 s: 0.3408 % (recomputed)")
  void speedOfTheArm() {
    Uncertain speed =
        ArmSpeed.of(
            new ArmTurning(
                Uncertain.of(0.750, 0.002),
                20,
                Uncertain.of(94.25, 0.2),
                0,
                100,
                Optional.empty()));
    assertThat(speed.value()).isCloseTo(0.99998, within(1e-5));
    assertThat(speed.u().orElseThrow() / speed.value()).isCloseTo(0.003408, within(1e-6));
  }
}
