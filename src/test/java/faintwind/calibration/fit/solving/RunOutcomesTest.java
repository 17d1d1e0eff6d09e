package faintwind.calibration.fit.solving;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static faintwind.calibration.fit.solving.HealthyFit.SET;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.RunOutcome;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Compared with the simulation that made the runs, and by hand from the runs table. */
class RunOutcomesTest {
  private final List<RunOutcome> outcomes =
      RunOutcomes.of(FIT, SET, Map.of("spin03", "why.wild.weighted", "spin04", "why.left-out"));

  private RunOutcome of(String run) {
    return outcomes.stream().filter(o -> o.run().equals(run)).findFirst().orElseThrow();
  }

  @Test
  void everyRunHasOneInTheOrderOfTheTable() {
    assertThat(outcomes)
        .extracting(RunOutcome::run)
        .containsExactlyElementsOf(SET.runs().stream().map(r -> r.name()).toList());
  }

  /** Spin 1: 2π · 0.6 m · 122 / 330.85 s = 1.3901 m/s, less the air carried round. */
  @Test
  void airSpeedIsThatOfTheArmLessTheCarriedAir() {
    double share = HealthyFit.value("carried_share");
    double arm_m_s = 2 * Math.PI * 0.6 * 122 / 330.85;
    double gain = FIT.setup().gain("spin01", FIT.values());
    assertThat(of("spin01").speed_m_s().orElseThrow())
        .isCloseTo(arm_m_s * gain * (1 - share), within(1e-9));
  }

  /** The simulation's air speed lies within three standard uncertainties. */
  @Test
  void speedsAreThoseOfTheSimulation() {
    Map<String, Double> arm_m_s =
        Map.of("spin02", 0.39982, "spin03", 2.09904, "spin05", 2.99864, "spin07", 0.79964);
    arm_m_s.forEach(
        (run, speed) -> {
          double truth = speed * (1 - 0.02743);
          double u = of(run).u_speed_m_s().orElseThrow();
          assertThat(of(run).speed_m_s().orElseThrow()).isCloseTo(truth, within(3 * u));
          assertThat(u).isLessThan(0.03 * speed);
        });
  }

  /** Radius 1 in 600, clicks 0.3 in 330.85: what is left is carried air and scatter. */
  @Test
  void uncertaintyHoldsRadiusClicksScatterAndCarriedAir() {
    int share = FIT.setup().layout().carriedShare();
    double carried = FIT.covariance()[share][share];
    double own = FIT.setup().statedSpread("spin01");
    double expected =
        Math.sqrt(1 / 600.0 / 600.0 + carried + own * own + FIT.runScatter() * FIT.runScatter());
    assertThat(RunOutcomes.u_relative(FIT, HealthyFit.run("spin01")))
        .isCloseTo(expected, within(1e-12));
    assertThat(own).isGreaterThanOrEqualTo(0.3 / 330.85);
  }

  @Test
  void aRunWithLessWeightIsUsedAndOneLeftOutIsNot() {
    assertThat(of("spin01").used()).isTrue();
    assertThat(of("spin01").why()).isEmpty();
    assertThat(of("spin03").used()).isTrue();
    assertThat(of("spin03").why()).isEqualTo("why.wild.weighted");
    assertThat(of("spin04").used()).isFalse();
  }

  @Test
  void stillRunsHaveAResidualAndNoSpeed() {
    RunOutcome still = of("still");
    assertThat(still.speed_m_s()).isEmpty();
    assertThat(still.u_speed_m_s()).isEmpty();
    double rms = ResidualReport.of(FIT).rms();
    assertThat(still.residual()).isBetween(0.2 * rms, 3 * rms);
  }

  @Test
  void aZeroRunIsHeldAgainstTheOffset() {
    double mean = HealthyFit.run("zero").recording().signal().mean();
    double offset = HealthyFit.value("offset");
    assertThat(of("zero").residual()).isCloseTo(Math.abs(mean - offset), within(0.01));
  }
}
