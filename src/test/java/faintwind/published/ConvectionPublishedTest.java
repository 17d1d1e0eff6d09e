package faintwind.published;

import static faintwind.physics.SphereConvection.churchill;
import static faintwind.physics.SphereConvection.whitaker;

import faintwind.physics.AirState;
import faintwind.physics.Ball;
import faintwind.physics.BallPair;
import faintwind.physics.Constants;
import faintwind.physics.FilmAir;
import faintwind.physics.HeatBalance;
import faintwind.physics.Heating;
import faintwind.physics.PairCourse;
import faintwind.physics.Radiation;
import faintwind.physics.Ranged;
import faintwind.physics.SphereConvection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class ConvectionPublishedTest {

  @TestFactory
  Stream<DynamicTest> convection() {
    return PublishedRow.tests("convection.csv", ConvectionPublishedTest::compute);
  }

  private static double compute(PublishedRow row) {
    return switch (row.what()) {
      case "whitaker" -> whitaker(re(row), row.number("Pr"), row.number("ratio")).value();
      case "whitaker_among_published" -> among(row);
      case "churchill" -> churchill(row.number("Ra"), row.number("Pr")).value();
      case "gr", "grid_churchill", "grid_whitaker" -> grid(row);
      case "radiation" -> Radiation.coefficient_W_m2K(row.number("eps"), row.number("T"));
      case "mixed" ->
          SphereConvection.mixed(
                  Ranged.inside(row.number("forced")), Ranged.inside(row.number("natural")))
              .value();
      case "excess" -> settled_K(row);
      case "ex_followed" -> CopperBall.followed_K(row.number("t"));
      case "biot" ->
          new Ball(row.number("D"), 1, 0, List.of()).biot(row.number("h"), row.number("k"));
      default ->
          row.what().startsWith("ex_") ? CopperBall.step(row.what()) : SteelBall.step(row.what());
    };
  }

  /** Excess once the integration of warm-up and cool-down has come to rest. */
  private static double settled_K(PublishedRow row) {
    Ball ball = new Ball(row.number("D"), 1, 0, List.of());
    PairCourse.Loss loss = (excess_K, speed_m_s) -> row.number("h") * ball.area_m2() * excess_K;
    return new PairCourse(BallPair.equal(ball), loss, loss)
        .follow(
            new PairCourse.Point(0, 0, 0),
            t -> new PairCourse.Drive(Heating.heater(row.number("P")), 0),
            List.of(5000.0))
        .get(0)
        .delta_K();
  }

  private static double re(PublishedRow row) {
    return row.number("Re");
  }

  private static double among(PublishedRow row) {
    double nu = whitaker(re(row), row.number("Pr"), row.number("ratio")).value();
    double middle = 0.5 * (row.number("low") + row.number("high"));
    return Math.abs(nu / middle - 1) <= 0.12 ? 1 : 0;
  }

  private static double grid(PublishedRow row) {
    AirState dry = new AirState(row.number("T"), Constants.ATMOSPHERE_PA, 0);
    Ball ball = new Ball(row.number("D"), 1, 0, List.of());
    HeatBalance balance = new HeatBalance(BallPair.equal(ball), dry);
    FilmAir film = balance.film();
    double excess = row.number("dT");
    double film_K = row.number("T") + excess / 2;
    double ra = balance.rayleigh(ball, excess, film_K);
    if (row.what().equals("gr")) {
      return ra / film.prandtl(film_K);
    }
    if (row.what().equals("grid_churchill")) {
      return churchill(ra, film.prandtl(film_K)).value();
    }
    double air_K = row.number("T");
    double re = row.number("U") * ball.diameter_m() / film.kinematicViscosity_m2_s(air_K);
    double ratio = film.viscosity_Pa_s(air_K) / film.viscosity_Pa_s(air_K + excess);
    return whitaker(re, film.prandtl(air_K), ratio).value();
  }

  /** Copper ball of 10 mm, 75 °C, air 23 °C at 10 m/s, cools to 35 °C. */
  private static final class CopperBall {
    private static final double RE = 10 * 0.01 / 15.36e-6;
    private static final double NU = whitaker(RE, 0.709, 181.6e-7 / 197.8e-7).value();
    private static final double H = NU * 0.0258 / 0.01;

    /** Excess after a time, by the integration that warm-up and cool-down use. */
    static double followed_K(double time_s) {
      Ball ball = new Ball(0.01, 8933 * Math.PI / 6 * 1e-6 * 387, 0, List.of());
      PairCourse.Loss loss = (excess_K, speed_m_s) -> H * ball.area_m2() * excess_K;
      return new PairCourse(BallPair.equal(ball), loss, loss)
          .follow(
              new PairCourse.Point(0, 75 - 23, 0),
              t -> new PairCourse.Drive(Heating.OFF, 10),
              List.of(time_s))
          .get(0)
          .heated_K();
    }

    static double step(String what) {
      return switch (what) {
        case "ex_nu" -> NU;
        case "ex_h" -> H;
        // the book's Biot number has the length r/3 = D/6
        case "ex_bi" -> new Ball(0.01, 1, 0, List.of()).biot(H, 399);
        default -> throw new IllegalArgumentException(what);
      };
    }
  }

  /** Steel ball of 25 cm, 300 to 200 °C, air 25 °C at 3 m/s. */
  private static final class SteelBall {
    private static final double RE = 3 * 0.25 / 1.562e-5;
    private static final double NU = whitaker(RE, 0.7296, 1.849e-5 / 2.76e-5).value();
    private static final double H = NU * 0.02551 / 0.25;

    static double step(String what) {
      return switch (what) {
        case "ce_nu" -> NU;
        case "ce_h" -> H;
        default -> throw new IllegalArgumentException(what);
      };
    }
  }
}
