package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.HealthyFit;
import faintwind.message.Problem;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LossShapeTest {
  @Test
  void aBallIsTold() {
    assertThat(PhysicsGate.unlikeABall(HealthyFit.FIT)).isEmpty();
  }

  /** The beliefs are those of PhysicsShaped: 0 ± 0.03, 3 times a fifth of e, 1.1 ± 0.15. */
  @ParameterizedTest
  @CsvSource({
    "tilt, 0.099, false",
    "tilt, 0.111, true",
    "tilt, -0.111, true",
    "mixing, 5.9, false",
    "mixing, 6.3, true",
    "warmth, 1.61, false",
    "warmth, 1.64, true"
  })
  void whatNoBallDoesIsNamed(String unknown, double value, boolean off) {
    FitResult fit = HealthyFit.told(HealthyFit.SET, Set.of(), Map.of(unknown, value));
    assertThat(PhysicsGate.unlikeABall(fit).map(Problem::id))
        .isEqualTo(off ? Optional.of("fit.no-ball." + unknown) : Optional.empty());
  }

  @Test
  void ofSeveralTheFarthestIsNamed() {
    FitResult fit = HealthyFit.told(HealthyFit.SET, Set.of(), Map.of("warmth", 1.7, "tilt", -0.2));
    Problem off = PhysicsGate.unlikeABall(fit).orElseThrow();
    assertThat(off.id()).isEqualTo("fit.no-ball.tilt");
    assertThat(off.found()).isEqualTo("6.7");
  }
}
