package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static faintwind.calibration.fit.solving.HealthyFit.index;
import static faintwind.calibration.fit.solving.HealthyFit.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Performance;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.fit.solving.FormAllowance;
import faintwind.calibration.fit.solving.ResidualReport;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class VerdictTest {
  private static final AirPoint AIR = AirPoint.of(FIT.setting().referenceAir());

  /** Cross-checked: the heat balance integrated in steps after a change of the heat by 0.1 %. */
  @Test
  void riseIsThatOfTheBalanceAfterASmallChange() {
    for (double speed_m_s : new double[] {0.1, 1}) {
      Formula formula = FIT.formula();
      double before = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), AIR);
      double p = 1.001 * formula.heating_K_s(OptionalDouble.empty());
      double end = before;
      for (int i = 0; i < 60; i++) {
        end = p / formula.loss_1_s(speed_m_s, end, AIR);
      }
      double now = before;
      double from_s = 0;
      double to_s = 0;
      for (double t = 0; to_s == 0; t += 0.05) {
        now += 0.05 * (p - formula.loss_1_s(speed_m_s, now, AIR) * now);
        double share = (now - before) / (end - before);
        from_s = from_s == 0 && share >= 0.1 ? t : from_s;
        to_s = share >= 0.9 ? t : 0;
      }
      double rise_s = Verdict.rise_s(formula, speed_m_s, AIR);
      assertThat(rise_s).isCloseTo(to_s - from_s, within(0.005 * rise_s));
    }
  }

  @Test
  void theTableRisesWithTheSpeeds() {
    Performance all = Verdict.of(FIT);
    assertThat(all.speeds()).extracting(AtSpeed::speed_m_s).isEqualTo(Verdict.SPEEDS);
    for (int i = 1; i < all.speeds().size(); i++) {
      assertThat(all.speeds().get(i).rise_s()).isLessThan(all.speeds().get(i - 1).rise_s());
    }
    assertThat(all.rowStep_s()).isEqualTo(10, within(0.5));
    assertThat(all.noise()).isEqualTo(FIT.setting().noise());
    assertThat(all.runScatter()).isEqualTo(FIT.runScatter());
  }

  /** The normal factor of 1.96 is the least; few runs make it more (JCGM 100:2008, G.4). */
  @Test
  void expandedUncertaintyIsTwiceTheStandardOneOrMore() {
    Performance all = Verdict.of(FIT);
    for (AtSpeed at : all.speeds()) {
      double factor = at.u95_m_s() / Verdict.u_m_s(FIT, at.speed_m_s());
      assertThat(factor).isBetween(1.9599, 4.0);
      assertThat(at.u95_m_s()).isEqualTo(Verdict.u95_m_s(FIT, at.speed_m_s()));
    }
  }

  /** In still air the signal comes near the largest that was recorded, with no offset in it. */
  @Test
  void stillSignalIsThatOfTheWarmUp() {
    Performance all = Verdict.of(FIT);
    double largest = FIT.setting().largest() - value("offset");
    assertThat(all.stillSignal()).isCloseTo(largest, within(0.05 * largest));
  }

  /** From half of the speed on it is told from none: below, the uncertainty is more. */
  @Test
  void theSmallestSpeedIsTwiceItsUncertaintyAtLeast() {
    Performance all = Verdict.of(FIT);
    double floor = all.floor_m_s();
    assertThat(floor).isBetween(0.004, 0.2);
    assertThat(Verdict.u95_m_s(FIT, floor)).isLessThanOrEqualTo(0.5 * floor);
  }

  /** A fit that knows less of the forced part sees less. */
  @Test
  void theFormIsAllowedForInItsParts() {
    double[] values = FIT.values();
    assertThat(FormAllowance.form(FIT.setup(), values, index("forced")))
        .isCloseTo(Math.pow(0.0015 * value("forced"), 2), within(1e-15));
    assertThat(FormAllowance.form(FIT.setup(), values, index("natural")))
        .isCloseTo(Math.pow(0.003 * value("natural"), 2), within(1e-15));
    assertThat(FormAllowance.form(FIT.setup(), values, index("tilt")))
        .isCloseTo(1e-6, within(1e-15));
    assertThat(FormAllowance.form(FIT.setup(), values, index("leads"))).isZero();
  }

  /** A quarter of the share scales every speed, and forced goes with speed^−0.53. */
  @Test
  void carriedAirIsAllowedForInTheForcedPartAlone() {
    double[] values = FIT.values();
    double expected = 0.25 * value("carried_share") * 0.53 * value("forced");
    assertThat(FormAllowance.carried(FIT.setup(), values, index("forced")))
        .isCloseTo(expected * expected, within(1e-15));
    assertThat(FormAllowance.carried(FIT.setup(), values, index("natural"))).isZero();
  }

  @Test
  void bothAllowancesAreInTheFormulasCovariance() {
    int forced = index("forced");
    double[] values = FIT.values();
    double more =
        FormAllowance.form(FIT.setup(), values, forced)
            + FormAllowance.carried(FIT.setup(), values, forced);
    double[] only = new double[FIT.formulaFit().values().length];
    only[forced] = 1;
    assertThat(FIT.formulaFit().covariance().variance(only))
        .isCloseTo(FIT.covariance()[forced][forced] + more, within(1e-12));
    assertThat(FIT.formulaFit().parameters().get(forced).u())
        .isCloseTo(Math.sqrt(FIT.covariance()[forced][forced] + more), within(1e-12));
  }

  /** Hurvich and Tsai 1989, from memory: deviance + 2k + 2k(k + 1)/(n − k − 1). */
  @Test
  void akaikesCriterionIsCorrectedForFewReadings() {
    double k = 0;
    for (int i = 0; i < FIT.formulaFit().values().length; i++) {
      k += Math.max(0, 1 - FIT.solution().optimum().unitCovariance()[i][i]);
    }
    double n = ResidualReport.of(FIT).effectiveReadings();
    assertThat(k).isBetween(3.0, 15.0);
    assertThat(n).isGreaterThan(2 * k + 2);
    assertThat(ModelChoice.aicc(FIT))
        .isCloseTo(FIT.deviance() + 2 * k + 2 * k * (k + 1) / (n - k - 1), within(1e-9));
  }
}
