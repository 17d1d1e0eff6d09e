package faintwind.calibration.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.TestCalibration;
import faintwind.physics.AirState;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ResponsePartsTest {
  private static final Calibration CALIBRATION = TestCalibration.ofModel();
  private static final AirState REFERENCE = new AirState(294, 100_300, 0.4);

  /** NIST Monograph 175, from memory to a digit: Seebeck coefficients at 0 and 25 °C, µV/K. */
  @ParameterizedTest(name = "{0} at {1} °C: {2} µV/K")
  @CsvSource({
    "K, 25, 40.5",
    "K, 0, 39.5",
    "T, 25, 40.7",
    "T, 0, 38.7",
    "E, 0, 58.7",
    "J, 0, 50.4",
    "N, 0, 25.9"
  })
  void sensitivityIsThatOfTheLetter(String letter, double celsius, double expected_uV_K) {
    double sensitivity = TypeLetter.of(letter).orElseThrow().sensitivity_V_K(celsius + 273.15);
    assertThat(1e6 * sensitivity).isCloseTo(expected_uV_K, within(0.15));
  }

  @Test
  void slopeAndBendAreThoseOfTheSensitivity() {
    for (TypeLetter type : TypeLetter.values()) {
      double at = 310;
      double h = 0.01;
      double s = type.sensitivity_V_K(at);
      double up = type.sensitivity_V_K(at + h);
      double down = type.sensitivity_V_K(at - h);
      assertThat(type.slopeAt(at)).isCloseTo((up - down) / (2 * h) / s, within(1e-8));
      assertThat(type.bendAt(at)).isCloseTo((up - 2 * s + down) / (h * h) / s / 2, within(1e-7));
    }
    assertThat(TypeLetter.of(" k ")).contains(TypeLetter.K);
    assertThat(TypeLetter.of("X")).isEmpty();
    assertThat(TypeLetter.known()).isEqualTo("E, J, K, N, R, S, T");
  }

  /** V = 0.3 of D = 0.4 m/s: up to 0.5 and down to nothing; of D = 0.1: 0.0162 and 0.0172. */
  @Test
  void aDraughtCountsMostInSlowAir() {
    assertThat(StillDraught.u95_m_s(0.3, 0.4)).isCloseTo(0.3, within(1e-12));
    assertThat(StillDraught.u95_m_s(0.3, 0.1)).isCloseTo(0.3 - Math.sqrt(0.08), within(1e-12));
    assertThat(StillDraught.u95_m_s(0, 0.1)).isCloseTo(0.1, within(1e-12));
    assertThat(StillDraught.u95_m_s(0.3, 0)).isZero();
    assertThat(StillDraught.of(CALIBRATION)).isZero();
  }

  /**
   * By hand from the formula of the class: 0.8 ∛(12 h (σ/slope)²) with slope = 5 % of U times how
   * the heat goes with U.
   */
  @Test
  void theEstimateIsAsQuickAsItsNoiseLets() {
    Formula formula = Formula.of(CALIBRATION);
    AirPoint air = AirPoint.of(CALIBRATION.formula().referenceAir());
    double delta = formula.steadyDelta_K(1, OptionalDouble.empty(), air);
    double h = 1e-5;
    double byU =
        (formula.loss_1_s(1 + h, delta, air) - formula.loss_1_s(1 - h, delta, air)) / (2 * h);
    double perKelvin =
        (formula.signal(delta + h, air.air_K()) - formula.signal(delta - h, air.air_K())) / (2 * h);
    double noise_K = CALIBRATION.performance().noise() / perKelvin;
    double slope_K_s = 0.05 * byU * delta;
    double line_s =
        Math.cbrt(12 * CALIBRATION.performance().rowStep_s() * Math.pow(noise_K / slope_K_s, 2));
    assertThat(EstimateRise.s(CALIBRATION, 1)).isCloseTo(Math.max(2, 0.8 * line_s), within(1e-3));
    assertThat(EstimateRise.s(CALIBRATION, 0.01)).isGreaterThan(3);
    assertThat(EstimateRise.s(CALIBRATION, 3)).isLessThan(EstimateRise.s(CALIBRATION, 1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"physics-shaped", "king-half", "king", "mixed", "mixed-linear"})
  void theLossOfStillAirIsThatOfNoSpeed(String id) {
    ResponseModel model = ResponseModel.of(id, REFERENCE, 0.0127);
    double[] q = model.quantities().stream().mapToDouble(ParameterPrior::prior).toArray();
    for (AirPoint air :
        List.of(AirPoint.of(REFERENCE), AirPoint.of(new AirState(280, 90_000, 0.8)))) {
      double[] still = new double[3 + q.length];
      double[] none = new double[3 + q.length];
      model.stillLoss(q, 20, air, still);
      model.loss(q, 0, 20, air, none);
      assertThat(still[0]).isCloseTo(none[0], within(1e-12));
      assertThat(still[2]).isCloseTo(none[2], within(1e-12));
      ExactLoss exact = new ExactLoss(model, q);
      assertThat(exact.stillLoss_1_s(20, air)).isCloseTo(none[0], within(1e-12));
      assertThat(exact.stillSlope()).isCloseTo(none[2], within(1e-12));
      double[] out = new double[3 + q.length];
      exact.loss(0.7, 20, air, out);
      double[] speeds = {out[0], none[0] / 2};
      exact.speeds_m_s(speeds, 20, air);
      assertThat(speeds[0]).isCloseTo(0.7, within(1e-6));
      assertThat(speeds[1]).isZero();
    }
  }

  /** King's law: (loss − a)/b = √U in the reference air. */
  @Test
  void kingsLawByHand() {
    ResponseModel king = ResponseModel.of("king-half", REFERENCE, 0.0127);
    double[] q = {1e-3, 4e-3};
    double[] out = new double[5];
    king.loss(q, 0.25, 20, AirPoint.of(REFERENCE), out);
    assertThat(out[0]).isCloseTo(1e-3 + 4e-3 * 0.5, within(1e-12));
    assertThat(out[1]).isCloseTo(4e-3 * 0.5 / 0.5, within(1e-12));
    assertThat(king.speed_m_s(q, 5e-3, 20, AirPoint.of(REFERENCE))).isCloseTo(1, within(1e-9));
  }

  /** a (1 + r Δ) + [(b U^n)^m + (c Δ^¼)^m]^(1/m), with Δ = 16 K and m = 2: 3-4-5. */
  @Test
  void mixedFlowByHand() {
    ResponseModel mixed = ResponseModel.of("mixed-linear", REFERENCE, 0.0127);
    double[] q = {1e-3, 3e-3, 0.5, 2e-3, 2, 0.01};
    double[] out = new double[9];
    mixed.loss(q, 1, 16, AirPoint.of(REFERENCE), out);
    assertThat(out[0]).isCloseTo(1.16e-3 + 5e-3, within(1e-12));
    assertThat(mixed.speed_m_s(q, out[0], 16, AirPoint.of(REFERENCE))).isCloseTo(1, within(1e-9));
  }

  /** Colder or thinner air: its own conductivity, viscosity and 1/T, by their ratios. */
  @Test
  void anotherAirChangesEachPartByItsProperties() {
    ResponseModel mixed = ResponseModel.of("mixed", REFERENCE, 0.0127);
    AirPoint reference = AirPoint.of(REFERENCE);
    AirPoint air = AirPoint.of(new AirState(280, 90_000, 0.4));
    double k = air.conductivity(280) / reference.conductivity(294);
    double nu = air.viscosity(280) / reference.viscosity(294);
    double[] q = {1e-3, 3e-3, 0.5, 2e-3, 3, 0};
    double[] out = new double[9];
    mixed.loss(new double[] {q[0], q[1], q[2], q[3], q[4]}, 0, 16, air, out);
    double natural = 4e-3 * k * Math.pow(294 / 280.0 / (nu * nu), 0.25);
    assertThat(out[0]).isCloseTo(1e-3 * k + natural, within(1e-10));
    ResponseModel king = ResponseModel.of("king", REFERENCE, 0.0127);
    king.loss(new double[] {1e-3, 3e-3, 0.5}, 1, 16, air, out);
    assertThat(out[0]).isCloseTo(1e-3 * k + 3e-3 * k / Math.sqrt(nu), within(1e-10));
  }

  private static double value(Map<String, FormulaConstants.Constant> all, String name) {
    return Objects.requireNonNull(all.get(name)).value();
  }

  @Test
  void constantsAreThoseOfTheFormulas() {
    Map<String, FormulaConstants.Constant> all =
        FormulaConstants.of(CALIBRATION.formula(), CALIBRATION.signal());
    assertThat(value(all, "ball_diameter_m")).isEqualTo(0.0127);
    assertThat(all.get("nominal_supply_V")).isEqualTo(new FormulaConstants.Constant(5, "V"));
    assertThat(all.get("signal_per_K")).isEqualTo(new FormulaConstants.Constant(1, "K/K"));
    assertThat(value(all, "zero_celsius_K")).isEqualTo(273.15);
    assertThat(value(all, "reference_K")).isEqualTo(293.15);
    double bend = TypeLetter.K.bendAt(293.15);
    assertThat(value(all, "sensitivity_bend")).isEqualTo(bend).isNegative();
    AirPoint air = AirPoint.of(CALIBRATION.formula().referenceAir());
    assertThat(value(all, "reference_nu")).isEqualTo(air.viscosity(293.15));
  }

  /** A curve and its way back; the slope is that of differences. */
  @Test
  void aThermocouplesCurveBendsUpwards() {
    ThermocoupleCurve curve = new ThermocoupleCurve(2, 293.15, 1e-3, 1e-6);
    double signal = curve.signal(30, 298.15);
    double mean = 1 + 1e-3 * 20 + 1e-6 * (35 * 35 * 35 - 125) / 90;
    assertThat(signal).isCloseTo(60 * mean, within(1e-9));
    assertThat(curve.delta_K(signal, 298.15)).isCloseTo(30, within(1e-9));
    double h = 1e-4;
    assertThat(curve.signalByDelta(30, 298.15))
        .isCloseTo(
            (curve.signal(30 + h, 298.15) - curve.signal(30 - h, 298.15)) / (2 * h), within(1e-6));
    ThermocoupleCurve steeper = new ThermocoupleCurve(2, 293.15, 1e-3 + h, 1e-6);
    assertThat(curve.signalBySlope(30, 298.15))
        .isCloseTo((steeper.signal(30, 298.15) - signal) / h, within(1e-6));
  }

  /**
   * Steam tables: 3169 Pa saturate air at 25 °C. Of 101 325 Pa that is 3.13 %, and water vapour is
   * lighter than air by 0.378, so that the kinematic viscosity rises by 1.20 %.
   */
  @Test
  void moistAirIsLighter() {
    AirPoint dry = AirPoint.of(new AirState(298.15, 101_325, 0));
    AirPoint moist = AirPoint.of(new AirState(298.15, 101_325, 1));
    AirPoint half = AirPoint.of(new AirState(298.15, 101_325, 0.5));
    assertThat(moist.viscosity(300) / dry.viscosity(300)).isCloseTo(1.01197, within(5e-5));
    assertThat(half.viscosity(300) / dry.viscosity(300)).isCloseTo(1.00595, within(3e-5));
  }
}
