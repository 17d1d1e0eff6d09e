package faintwind.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The heat balance of the two balls in air of one state, everything the program predicts: C·dT/dt =
 * P − [h(U,T)·A + radiation + leads]·(T − T_air) for each ball, and delta θ = T_heated −
 * T_reference. Convection: Whitaker's forced and Churchill's natural part mixed by the third power
 * above conduction ({@link SphereConvection}); {@link Radiation}; leads as fins ({@link LeadWire}).
 * Immutable; safe from any thread.
 */
public final class HeatBalance {
  private static final double SOLVER_K = 1e-12;
  private static final String FILM = "range.film-temperature";

  private final BallPair pair;
  private final double air_K;
  private final FilmAir film;
  private final ModelForm form;

  public HeatBalance(BallPair pair, AirState air) {
    this(pair, air.temperature_K(), new FilmAir(air), ModelForm.PUBLISHED);
  }

  private HeatBalance(BallPair pair, double air_K, FilmAir film, ModelForm form) {
    this.pair = pair;
    this.air_K = air_K;
    this.film = film;
    this.form = form;
  }

  /** The same air around other balls. */
  public HeatBalance with(BallPair other) {
    return new HeatBalance(other, air_K, film, form);
  }

  /** The same with formulas of another form, to follow how far published ones lie apart. */
  public HeatBalance with(ModelForm other) {
    return new HeatBalance(pair, air_K, film, other);
  }

  /** Temperature of the air, K. */
  public double air_K() {
    return air_K;
  }

  public BallPair pair() {
    return pair;
  }

  /** The air at any film temperature. */
  public FilmAir film() {
    return film;
  }

  /**
   * Nusselt number of a ball, with every range left.
   *
   * @param ball the ball
   * @param excess_K the ball above the air, K
   * @param speed_m_s air speed, m/s, 0 or more
   */
  public Ranged nusselt(Ball ball, double excess_K, double speed_m_s) {
    double nu = film.kinematicViscosity_m2_s(air_K);
    double re = speed_m_s * ball.diameter_m() / nu;
    double ratio = film.viscosity_Pa_s(air_K) / film.viscosity_Pa_s(air_K + excess_K);
    Ranged forced = SphereConvection.whitaker(re, film.prandtl(air_K), ratio);
    double film_K = air_K + excess_K / 2;
    Ranged natural =
        SphereConvection.churchill(rayleigh(ball, excess_K, film_K), film.prandtl(film_K));
    List<Ranged.RangeLeft> left = new ArrayList<>(SphereConvection.mixed(forced, natural).left());
    left.addAll(AirProperties.left(air_K, film.pressure_Pa()));
    left.addAll(Ranged.check(FILM, "T / K", film_K, 250, 400));
    return new Ranged(
        convection_W_K(ball, excess_K, speed_m_s) / perNusselt_W_K(ball, excess_K), left);
  }

  /** Rayleigh number g·β·ΔT·D³·Pr/ν² at film temperature, β = 1/T_film. */
  public double rayleigh(Ball ball, double excess_K, double film_K) {
    double nu = film.kinematicViscosity_m2_s(film_K);
    double d = ball.diameter_m();
    double gr = Constants.GRAVITY_M_S2 / film_K * Math.abs(excess_K) * d * d * d / (nu * nu);
    return gr * film.prandtl(film_K);
  }

  /** Heat carried off by the air per kelvin of excess, h·A, W/K. */
  public double convection_W_K(Ball ball, double excess_K, double speed_m_s) {
    double re = speed_m_s * ball.diameter_m() / film.kinematicViscosity_m2_s(air_K);
    double pr = film.prandtl(air_K);
    double ratio = film.viscosity_Pa_s(air_K) / film.viscosity_Pa_s(air_K + excess_K);
    double forced =
        SphereConvection.whitakerAboveConduction(re, pr, ratio)
            // Whitaker takes the conductivity of the free stream, the rest that of the film
            * film.conductivity_W_mK(air_K)
            / film.conductivity_W_mK(air_K + excess_K / 2);
    double film_K = air_K + excess_K / 2;
    double natural =
        SphereConvection.churchillAboveConduction(
            rayleigh(ball, excess_K, film_K), film.prandtl(film_K));
    double nu =
        SphereConvection.CONDUCTION
            + SphereConvection.mixedAboveConduction(forced, natural, form.mixing());
    return form.convection() * nu * perNusselt_W_K(ball, excess_K);
  }

  private double perNusselt_W_K(Ball ball, double excess_K) {
    return film.conductivity_W_mK(air_K + excess_K / 2) * Math.PI * ball.diameter_m();
  }

  /** Heat radiated per kelvin of excess, W/K. */
  public double radiation_W_K(Ball ball, double excess_K) {
    if (Math.abs(excess_K) < 1e-6) {
      return Radiation.coefficient_W_m2K(ball.emissivity(), air_K) * ball.area_m2();
    }
    double flux = Radiation.flux_W_m2(ball.emissivity(), air_K + excess_K, air_K);
    return flux / excess_K * ball.area_m2();
  }

  /** Heat taken by all leads per kelvin of excess, W/K. */
  public double leads_W_K(Ball ball, double excess_K, double speed_m_s) {
    double sum = 0;
    for (LeadWire lead : ball.leads()) {
      sum += lead.conductance_W_K(film, air_K, speed_m_s, excess_K, form.wire());
    }
    return sum;
  }

  /** Everything a ball loses, W: (convection + radiation + leads)·excess. */
  public double loss_W(Ball ball, double excess_K, double speed_m_s) {
    return excess_K
        * (convection_W_K(ball, excess_K, speed_m_s)
            + radiation_W_K(ball, excess_K)
            + leads_W_K(ball, excess_K, speed_m_s));
  }

  /**
   * The excess over the air at which a ball loses exactly what it is given, K; solved to 1e-12 K,
   * so that the balance closes to 1e-9 of the power.
   *
   * @param ball the ball
   * @param heat_W heat put in, W, 0 or more
   * @param speed_m_s air speed, m/s
   */
  public double excess_K(Ball ball, double heat_W, double speed_m_s) {
    return excess_K(ball, excess_K -> heat_W, speed_m_s);
  }

  /**
   * The same where the heat put in changes a little with the ball's own excess, as that of a
   * resistor does.
   *
   * @param heat_W heat put in, W, 0 or more, at an excess over the air, K; it must change more
   *     slowly than the loss
   */
  public double excess_K(Ball ball, DoubleUnaryOperator heat_W, double speed_m_s) {
    double first_W = heat_W.applyAsDouble(0);
    if (!(first_W >= 0) || !(speed_m_s >= 0)) {
      throw new IllegalArgumentException("heat_W = " + first_W + ", speed_m_s = " + speed_m_s);
    }
    if (first_W == 0) {
      return 0;
    }
    double most_K = 1.5 * first_W / (SphereConvection.CONDUCTION * perNusselt_W_K(ball, 0) / 2);
    return new BrentSolver(1e-15, SOLVER_K)
        .solve(1000, x -> loss_W(ball, x, speed_m_s) - heat_W.applyAsDouble(x), 0, most_K);
  }

  /** Delta at equilibrium, K, for the heat put into both balls; with every range left. */
  public Ranged delta_K(Heating heating, double speed_m_s) {
    double heated = excess_K(pair.heated(), heating.heated_W(), speed_m_s);
    double reference = excess_K(pair.reference(), heating.reference_W(), speed_m_s);
    return new Ranged(heated - reference, nusselt(pair.heated(), heated, speed_m_s).left());
  }

  /** Conductance G = P/θ of the heated ball at equilibrium, W/K. */
  public double conductance_W_K(double power_W, double speed_m_s) {
    return power_W / excess_K(pair.heated(), power_W, speed_m_s);
  }

  /** Time constant C/G of the heated ball at its equilibrium, s. */
  public double timeConstant_s(double power_W, double speed_m_s) {
    return pair.heated().heatCapacity_J_K() / conductance_W_K(power_W, speed_m_s);
  }

  /** The course of both balls in time under this balance, from both at the air's temperature. */
  public PairCourse course() {
    return new PairCourse(
        pair,
        (excess_K, speed_m_s) -> loss_W(pair.heated(), excess_K, speed_m_s),
        (excess_K, speed_m_s) -> loss_W(pair.reference(), excess_K, speed_m_s));
  }
}
