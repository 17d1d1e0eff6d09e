package faintwind.properties;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.physics.AirProperties;
import faintwind.physics.AirState;
import faintwind.physics.Ball;
import faintwind.physics.BallPair;
import faintwind.physics.FilmAir;
import faintwind.physics.HeatBalance;
import faintwind.physics.Heating;
import faintwind.physics.LeadWire;
import faintwind.physics.PairCourse;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Over builds drawn from a seed that stands in each test's name. */
class HeatBalancePropertiesTest {

  record Build(int seed, HeatBalance balance, double power_W) {
    @Override
    public String toString() {
      return "seed " + seed;
    }
  }

  static Stream<Build> builds() {
    return IntStream.range(1, 41).mapToObj(HeatBalancePropertiesTest::build);
  }

  private static Build build(int seed) {
    Random random = new Random(seed);
    LeadWire lead =
        new LeadWire(between(random, 5e-5, 4e-4), 5e-4, between(random, 0.01, 0.2), 395);
    Ball heated =
        new Ball(
            between(random, 0.008, 0.02),
            between(random, 1, 10),
            between(random, 0.02, 0.95),
            List.of(lead, lead));
    Ball reference = new Ball(heated.diameter_m() * 1.01, 3, 0.1, List.of());
    AirState air =
        new AirState(between(random, 255, 318), between(random, 6e4, 1.1e5), between(random, 0, 1));
    HeatBalance balance = new HeatBalance(new BallPair(heated, reference), air);
    return new Build(seed, balance, between(random, 0.02, 0.5));
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  @ParameterizedTest
  @MethodSource("builds")
  void deltaFallsWithSpeed(Build b) {
    double before = Double.MAX_VALUE;
    for (double u = 0; u < 6; u = 1.3 * u + 0.005) {
      double delta = b.balance.delta_K(Heating.heater(b.power_W), u).value();
      assertThat(delta).isLessThan(before).isPositive();
      before = delta;
    }
  }

  @ParameterizedTest
  @MethodSource("builds")
  void deltaGrowsWithPower(Build b) {
    for (double u : new double[] {0, 0.05, 0.5, 3}) {
      double less = b.balance.delta_K(Heating.heater(b.power_W), u).value();
      double more = b.balance.delta_K(Heating.heater(1.02 * b.power_W), u).value();
      assertThat(more).isGreaterThan(less);
    }
  }

  @ParameterizedTest
  @MethodSource("builds")
  void whatIsLostIsWhatIsPutInToOneInABillion(Build b) {
    Ball heated = b.balance.pair().heated();
    for (double u : new double[] {0, 0.001, 0.03, 0.3, 1, 5}) {
      double excess = b.balance.excess_K(heated, b.power_W, u);
      double parts =
          b.balance.convection_W_K(heated, excess, u)
              + b.balance.radiation_W_K(heated, excess)
              + b.balance.leads_W_K(heated, excess, u);
      assertThat(parts * excess / b.power_W).isCloseTo(1, within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("builds")
  void noJumpWhereTheForcedCorrelationBegins(Build b) {
    double nu = b.balance.film().kinematicViscosity_m2_s(b.balance.air_K());
    double border = 3.5 * nu / b.balance.pair().heated().diameter_m();
    for (double u : new double[] {1e-9, border}) {
      double below = b.balance.delta_K(Heating.heater(b.power_W), u * (1 - 1e-9)).value();
      double above = b.balance.delta_K(Heating.heater(b.power_W), u * (1 + 1e-9)).value();
      assertThat(above).isCloseTo(below, within(1e-6));
    }
    assertThat(b.balance.delta_K(Heating.heater(b.power_W), 0.9 * border).isInside()).isFalse();
    assertThat(b.balance.delta_K(Heating.heater(b.power_W), 1.1 * border).isInside()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("builds")
  void courseWithConstantLossFollowsTheAnalyticSolution(Build b) {
    BallPair pair = b.balance.pair();
    double g = 0.007;
    PairCourse course = new PairCourse(pair, (x, u) -> g * x, (x, u) -> 0.9 * g * x);
    List<Double> times = IntStream.rangeClosed(1, 30).mapToObj(i -> 60.0 * i).toList();
    Heating heating = new Heating(b.power_W, 0.3 * b.power_W);
    List<PairCourse.Point> points =
        course.follow(new PairCourse.Point(0, 0, 5), t -> new PairCourse.Drive(heating, 1), times);
    double tauH = pair.heated().heatCapacity_J_K() / g;
    double tauR = pair.reference().heatCapacity_J_K() / (0.9 * g);
    double endR = heating.reference_W() / (0.9 * g);
    for (PairCourse.Point p : points) {
      double heated = heating.heated_W() / g * -Math.expm1(-p.time_s() / tauH);
      double reference = endR + (5 - endR) * Math.exp(-p.time_s() / tauR);
      assertThat(p.heated_K()).isCloseTo(heated, within(1e-6));
      assertThat(p.reference_K()).isCloseTo(reference, within(1e-6));
      assertThat(p.delta_K()).isCloseTo(heated - reference, within(2e-6));
    }
  }

  @ParameterizedTest
  @MethodSource("builds")
  void warmUpEndsAtTheEquilibrium(Build b) {
    double tau = b.balance.timeConstant_s(b.power_W, 0.5);
    double equilibrium = b.balance.delta_K(Heating.heater(b.power_W), 0.5).value();
    List<PairCourse.Point> points =
        b.balance
            .course()
            .follow(
                new PairCourse.Point(0, 0, 0),
                t -> new PairCourse.Drive(Heating.heater(b.power_W), 0.5),
                List.of(tau, 20 * tau));
    assertThat(points.get(0).delta_K() / equilibrium).isBetween(0.55, 0.75);
    assertThat(points.get(1).delta_K()).isCloseTo(equilibrium, within(1e-4));
  }

  @ParameterizedTest
  @MethodSource("builds")
  void filmTableKeepsToTheEquationsWithinFivePerMillion(Build b) {
    AirState state = new AirState(300.37, 95_000, 0.3);
    FilmAir film = new FilmAir(state);
    AirProperties exact = AirProperties.of(state);
    assertThat(film.conductivity_W_mK(300.37) / exact.conductivity_W_mK())
        .isCloseTo(1, within(5e-6));
    assertThat(film.kinematicViscosity_m2_s(300.37) / exact.kinematicViscosity_m2_s())
        .isCloseTo(1, within(5e-6));
    assertThat(film.prandtl(300.37) / exact.prandtl()).isCloseTo(1, within(5e-6));
    // and the build's own air, at the air's temperature
    double t = b.balance.air_K();
    assertThat(b.balance.film().viscosity_Pa_s(t)).isBetween(1.5e-5, 2.2e-5);
  }
}
