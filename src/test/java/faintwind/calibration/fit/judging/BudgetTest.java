package faintwind.calibration.fit.judging;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.HealthyFit;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of a budget, whatever the fit. */
class BudgetTest {
  private final Budget budget = new Budget(FIT);

  /**
   * JCGM 100:2008, 5.1.2: the squares of the shares add up to the variance that is told. In this
   * fit the profile of the carried air gives it less than its curvature does.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 1, 3})
  void sharesAddUpToTheWhole(double speed_m_s) {
    assertThat(share(budget, FIT, speed_m_s)).isBetween(0.995, 1.000001);
  }

  /** The same where the profile gives the carried air more. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 1, 3})
  void sharesAddUpWhereTheProfileIsWider(double speed_m_s) {
    FitResult wider = HealthyFit.withCarriedVariance(0.8);
    assertThat(share(new Budget(wider), wider, speed_m_s)).isBetween(0.995, 1.000001);
    assertThat(new Budget(wider).of("budget.carried", speed_m_s))
        .isGreaterThan(1.2 * budget.of("budget.carried", speed_m_s));
  }

  private static double share(Budget budget, FitResult fit, double speed_m_s) {
    double squares = budget.at(speed_m_s).stream().mapToDouble(s -> s.u_m_s() * s.u_m_s()).sum();
    return squares / Math.pow(Verdict.u_m_s(fit, speed_m_s), 2);
  }

  @Test
  void theLargestShareComesFirstAndSmallOnesFallAway() {
    List<BudgetShare> shares = budget.at(0.3);
    assertThat(shares)
        .isSortedAccordingTo(Comparator.comparingDouble(BudgetShare::u_m_s).reversed());
    assertThat(shares.get(shares.size() - 1).u_m_s()).isGreaterThan(0.03 * shares.get(0).u_m_s());
    assertThat(shares).extracting(BudgetShare::source).doesNotHaveDuplicates();
  }

  @Test
  void aShareIsFoundByItsName() {
    BudgetShare first = budget.at(1).get(0);
    assertThat(budget.of(first.source(), 1)).isEqualTo(first.u_m_s());
    assertThat(budget.of("budget.nothing", 1)).isZero();
  }

  /** A quarter of the carried air, 0.25 · 0.027 = 0.7 %, is what the recovery may not show. */
  @Test
  void carriedAirIsAboutItsShareOfASpeed() {
    double carried = HealthyFit.value("carried_share");
    assertThat(budget.of("budget.carried", 1)).isBetween(0.25 * carried, 0.8 * carried);
  }

  /** The least radius is 300 ± 1 mm. */
  @Test
  void theRadiusIsASmallShare() {
    assertThat(budget.of("budget.radius", 1)).isLessThan(1.0 / 300);
  }
}
