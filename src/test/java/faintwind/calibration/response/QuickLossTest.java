package faintwind.calibration.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.physics.AirState;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QuickLossTest {
  private static final double SAME = 1e-8;

  /** A slope is that of the pieces, one order less exact. */
  private static final double SAME_SLOPE = 1e-7;

  private final Random random = new Random(3);
  private final PhysicsShaped exact = new PhysicsShaped(new AirState(294.15, 99_000, 0.4), 0.018);
  private final double[] q = {6.1e-4, 0.93, 1.08, 4.2e-4, 6.6e-5, 0.012, 3.4, 1.03};
  private final QuickLoss quick = new QuickLoss(exact, q);

  @Test
  void powerErrsByNoMoreThanItsBound() {
    for (double p : new double[] {-1.5, 0.25, 0.846, 2.5, 3.7}) {
      QuickCurve curve = new QuickCurve(x -> Math.pow(x, p));
      double bound = Math.pow(2, -24) / 3072 * Math.abs(p * (p - 1) * (p - 2) * (p - 3));
      double rounding = 1e-14;
      for (int i = 0; i < 20_000; i++) {
        double x = Math.exp(between(-20, 20));
        // the fourth derivative is greatest at one end of a piece, a 64th away at most
        double most = 1.1 * bound + rounding;
        assertThat(Math.abs(curve.at(x) / Math.pow(x, p) - 1)).isLessThan(most);
      }
    }
  }

  @Test
  void valueDoesNotDependOnWhatWasAskedBefore() {
    QuickCurve one = new QuickCurve(Math::exp);
    QuickCurve other = new QuickCurve(Math::exp);
    other.at(3.9);
    other.at(2.1);
    assertThat(one.at(2.7)).isEqualTo(other.at(2.7));
    assertThat(one.at(0)).isEqualTo(1);
    assertThat(one.at(-1)).isEqualTo(Math.exp(-1));
  }

  @Test
  void lossAndItsDerivativesAreTheModels() {
    double[] found = new double[3 + q.length];
    double[] wanted = new double[3 + q.length];
    for (int i = 0; i < 5000; i++) {
      double speed_m_s = i % 50 == 0 ? 0 : Math.exp(between(-6, 2));
      double delta_K = Math.exp(between(-3, 4));
      AirPoint air = air();
      exact.loss(q, speed_m_s, delta_K, air, wanted);
      quick.loss(speed_m_s, delta_K, air, found);
      for (int j = 0; j < wanted.length; j++) {
        // a derivative counts beside the loss itself: near 0 its own size is no measure
        double scale = Math.max(Math.abs(wanted[j]), wanted[0]);
        assertThat(found[j]).as("of place " + j).isCloseTo(wanted[j], within(SAME * scale));
      }
    }
  }

  @Test
  void aloneTheLossIsTheSameWhateverWasAskedBefore() {
    double[] out = new double[3 + q.length];
    double[] speeds = new double[1];
    for (int i = 0; i < 2000; i++) {
      double speed_m_s = i % 50 == 0 ? 0 : Math.exp(between(-6, 2));
      double delta_K = i % 40 == 1 ? -1e-9 : Math.exp(between(-3, 4));
      AirPoint air = air();
      AirPoint thicker = air.withPressureTimes(1.05);
      QuickLoss fresh = new QuickLoss(exact, q);
      fresh.loss(speed_m_s, delta_K, thicker, out);
      quick.stillLoss_1_s(delta_K, air);
      assertThat(quick.loss_1_s(speed_m_s, delta_K, thicker)).isEqualTo(out[0]);
      speeds[0] = out[0];
      fresh.speeds_m_s(speeds, delta_K, thicker);
      double wanted_m_s = speeds[0];
      quick.loss_1_s(speed_m_s, delta_K, air.withTemperature(air.air_K() + 3));
      speeds[0] = out[0];
      quick.speeds_m_s(speeds, delta_K, thicker);
      assertThat(speeds[0]).isEqualTo(wanted_m_s);
    }
  }

  @Test
  void stillLossAndItsSlopeAreTheModels() {
    double[] wanted = new double[3 + q.length];
    for (int i = 0; i < 5000; i++) {
      double delta_K = between(-5, 60);
      AirPoint air = air();
      exact.stillLoss(q, delta_K, air, wanted);
      double found = quick.stillLoss_1_s(delta_K, air);
      assertThat(found).isCloseTo(wanted[0], within(SAME * wanted[0]));
      assertThat(quick.stillSlope())
          .isCloseTo(wanted[2], within(SAME_SLOPE * Math.abs(wanted[2]) + 1e-15));
    }
  }

  @Test
  void speedIsTheModels() {
    for (int i = 0; i < 5000; i++) {
      double loss_1_s = Math.exp(between(-7.5, -3));
      double delta_K = Math.exp(between(-3, 4));
      AirPoint air = air();
      double[] found = {loss_1_s, 1.1 * loss_1_s};
      quick.speeds_m_s(found, delta_K, air);
      double wanted_m_s = exact.speed_m_s(q, loss_1_s, delta_K, air);
      assertThat(found[0]).isCloseTo(wanted_m_s, within(SAME * (wanted_m_s + 0.1)));
    }
  }

  private AirPoint air() {
    return AirPoint.of(
        new AirState(between(265, 320), between(80_000, 105_000), between(0.1, 0.9)));
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
