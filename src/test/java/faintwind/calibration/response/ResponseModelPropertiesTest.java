package faintwind.calibration.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import faintwind.physics.AirState;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Properties of every response model (seed 20261125)")
class ResponseModelPropertiesTest {
  private static final AirState REFERENCE = new AirState(294, 100_300, 0.4);

  static Stream<ResponseModel> models() {
    return Stream.of(
        ResponseModel.of("physics-shaped", REFERENCE, 0.0127),
        ResponseModel.of("king-half", REFERENCE, 0.0127),
        ResponseModel.of("king", REFERENCE, 0.0127),
        ResponseModel.of("mixed", REFERENCE, 0.0127),
        ResponseModel.of("mixed-linear", REFERENCE, 0.0127));
  }

  @Test
  void aBallTwiceAsLargeAtHalfTheSpeedIsForcedAlike() {
    double[] q = {6.5e-4, 1, 1e-6, 1e-9, 1e-9, 0, 3, 1.1};
    AirPoint air = AirPoint.of(REFERENCE);
    ResponseModel one = ResponseModel.of("physics-shaped", REFERENCE, 0.0127);
    ResponseModel two = ResponseModel.of("physics-shaped", REFERENCE, 0.0254);
    assertThat(at(two, q, 0.5, 20, air)).isCloseTo(at(one, q, 1, 20, air), withinPercentage(1e-6));
    assertThat(two.speed_m_s(q, at(one, q, 1, 20, air), 20, air))
        .isCloseTo(0.5, withinPercentage(1e-6));
  }

  @Test
  void naturalConvectionGoesWithTheDiameterToThePowerOfThreeQuarters() {
    double[] q = {6.5e-4, 1, 1, 1e-9, 1e-9, 0, 3, 1.1};
    double conduction = 6.5e-4;
    AirPoint air = AirPoint.of(REFERENCE);
    ResponseModel one = ResponseModel.of("physics-shaped", REFERENCE, 0.0127);
    ResponseModel two = ResponseModel.of("physics-shaped", REFERENCE, 0.0254);
    double k = air.conductivity(air.air_K() + 10) / air.conductivity(REFERENCE.temperature_K());
    double above = at(one, q, 0, 20, air) - k * conduction;
    // Gr ~ d^3 and Nu - 2 ~ Gr^(1/4): 2^0.75 = 1.6818
    assertThat(at(two, q, 0, 20, air) - k * conduction)
        .isCloseTo(1.6818 * above, withinPercentage(0.01));
  }

  @ParameterizedTest
  @MethodSource("models")
  void partialDerivativesAgreeWithFiniteDifferences(ResponseModel model) {
    Random random = new Random(20261125);
    for (int trial = 0; trial < 200; trial++) {
      double[] q = draw(model.quantities(), random);
      double speed = 0.02 * Math.pow(200, random.nextDouble());
      double delta = 3 + 40 * random.nextDouble();
      AirPoint air = AirPoint.of(new AirState(280 + 25 * random.nextDouble(), 95_000, 0.3));
      double[] out = new double[3 + q.length];
      model.loss(q, speed, delta, air, out);
      double h = 1e-5;
      double bySpeed =
          (at(model, q, speed * (1 + h), delta, air) - at(model, q, speed * (1 - h), delta, air))
              / (2 * h * speed);
      double byDelta =
          (at(model, q, speed, delta + h, air) - at(model, q, speed, delta - h, air)) / (2 * h);
      assertThat(out[1]).isCloseTo(bySpeed, within(1e-6 * Math.abs(bySpeed) + 1e-10));
      assertThat(out[2]).isCloseTo(byDelta, within(1e-5 * Math.abs(byDelta) + 1e-9));
      for (int i = 0; i < q.length; i++) {
        double step = 1e-6 * Math.max(Math.abs(q[i]), 1e-3);
        double[] up = q.clone();
        double[] down = q.clone();
        up[i] += step;
        down[i] -= step;
        double expected =
            (at(model, up, speed, delta, air) - at(model, down, speed, delta, air)) / (2 * step);
        assertThat(out[3 + i])
            .as(model.id() + " parameter " + model.quantities().get(i).name())
            .isCloseTo(expected, within(1e-5 * Math.abs(expected) + 1e-9));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void speedOfTheLossAtASpeedIsThatSpeed(ResponseModel model) {
    Random random = new Random(20261125);
    for (int trial = 0; trial < 500; trial++) {
      double[] q = draw(model.quantities(), random);
      double speed = 0.05 * Math.pow(100, random.nextDouble());
      double delta = 3 + 40 * random.nextDouble();
      AirPoint air = AirPoint.of(new AirState(280 + 25 * random.nextDouble(), 95_000, 0.3));
      double loss = at(model, q, speed, delta, air);
      assertThat(model.speed_m_s(q, loss, delta, air)).isCloseTo(speed, within(1e-6 * speed));
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void lossBelowThatOfStillAirIsSpeedZero(ResponseModel model) {
    double[] q = draw(model.quantities(), new Random(1));
    AirPoint air = AirPoint.of(REFERENCE);
    double still = at(model, q, 0, 25, air);
    assertThat(model.speed_m_s(q, 0.9 * still, 25, air)).isZero();
  }

  private static double at(
      ResponseModel model, double[] q, double speed, double delta, AirPoint air) {
    double[] out = new double[3 + q.length];
    model.loss(q, speed, delta, air, out);
    return out[0];
  }

  private static double[] draw(List<ParameterPrior> quantities, Random random) {
    double[] q = new double[quantities.size()];
    for (int i = 0; i < q.length; i++) {
      ParameterPrior quantity = quantities.get(i);
      double step = 0.5 * quantity.spread() * random.nextGaussian();
      q[i] = quantity.positive() ? quantity.prior() * Math.exp(step) : quantity.prior() + step;
    }
    return q;
  }
}
