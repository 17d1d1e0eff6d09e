package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.speed.TestCalibration;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * By hand: a ball that is at rest where the formula puts it takes the heat that its heater gives,
 * in still air as at 1 m/s; a ball that cools by itself takes none.
 */
class HeatCourseTest {
  private static final Formula FORMULA = Formula.of(TestCalibration.ofModel());
  private static final double START_S = 300;
  private static final double STOP_S = 900;

  /** 2π · 0.4 m · 238.73 turns in 600 s. */
  private static final double SPEED_M_S = 1;

  private static final double TURNS = SPEED_M_S * 600 / (2 * Math.PI * MadeRuns.RADIUS_M);

  private final AirPoint air = AirPoint.of(Setting.of(MadeRuns.set(spin(t -> 20))).referenceAir());
  private final double still_K = FORMULA.steadyDelta_K(0, OptionalDouble.empty(), air);
  private final double moved_K = FORMULA.steadyDelta_K(SPEED_M_S, OptionalDouble.empty(), air);

  private static Run spin(DoubleUnaryOperator delta_K) {
    return spin(delta_K, 1500);
  }

  private static Run spin(DoubleUnaryOperator delta_K, double end_s) {
    return MadeRuns.spin(
        "spin", MadeRuns.series(0, 2, end_s, delta_K), MadeRuns.arm(START_S, STOP_S, TURNS, 600));
  }

  private List<HeatBlock> of(DoubleUnaryOperator delta_K, double carriedShare) {
    return of(delta_K, carriedShare, 1500);
  }

  private List<HeatBlock> of(DoubleUnaryOperator delta_K, double carriedShare, double end_s) {
    Setting setting =
        Setting.of(
            MadeRuns.set(spin(t -> FORMULA.signal(delta_K.applyAsDouble(t), air.air_K()), end_s)));
    Track track = new Setup(setting, setting.model(PhysicsShaped.ID)).problem().tracks().get(0);
    double[] speed_m_s =
        Arrays.stream(track.rows.time_s).map(t -> past_m_s(t, carriedShare)).toArray();
    return new HeatCourse(setting, FORMULA, Wander.FIRST).of(track, "spin", speed_m_s);
  }

  /** Past the ball; what goes round with the arm rises in 20 s and falls in 25 s. */
  private static double past_m_s(double t_s, double share) {
    double carried = share * SPEED_M_S;
    if (t_s < START_S) {
      return 0;
    }
    return t_s <= STOP_S
        ? SPEED_M_S - carried * (1 - Math.exp(-(t_s - START_S) / 20))
        : carried * Math.exp(-(t_s - STOP_S) / 25);
  }

  private double resting(double t_s) {
    return t_s >= START_S && t_s <= STOP_S ? moved_K : still_K;
  }

  private static List<HeatBlock> only(List<HeatBlock> blocks, Phase phase) {
    return blocks.stream().filter(b -> b.phase() == phase).toList();
  }

  @Test
  void aBallAtRestTakesTheHeatThatIsGiven() {
    List<HeatBlock> blocks = of(this::resting, 0);
    assertThat(blocks).hasSizeGreaterThan(8);
    for (HeatBlock block : blocks) {
      assertThat(block.ratio()).isCloseTo(1, within(1e-3));
      double expected_K = block.phase() == Phase.TURNING ? moved_K : still_K;
      assertThat(block.delta_K()).isCloseTo(expected_K, within(0.01));
    }
  }

  /** Three seconds before a change and 25 s after it count for nothing; no block beyond 150 s. */
  @Test
  void blocksLieWithinTheirPhase() {
    List<HeatBlock> blocks = of(this::resting, 0);
    assertThat(only(blocks, Phase.BEFORE)).allMatch(b -> b.to_s() <= START_S - 3);
    assertThat(only(blocks, Phase.TURNING))
        .hasSize(4)
        .allMatch(b -> b.from_s() >= START_S + 25 && b.to_s() <= STOP_S - 3);
    assertThat(only(blocks, Phase.AFTER)).allMatch(b -> b.from_s() >= STOP_S + 25);
    assertThat(only(blocks, Phase.AFTER).get(0).from_s()).isLessThan(STOP_S + 35);
    for (HeatBlock block : blocks) {
      assertThat(block.to_s() - block.from_s()).isBetween(50.0, 158.0);
    }
  }

  /** A tenth of the speed goes round with the arm: 0.9 m/s past the ball. */
  @Test
  void airThatIsCarriedRoundTakesLess() {
    List<HeatBlock> blocks = of(this::resting, 0.1);
    double p = FORMULA.heating_K_s(OptionalDouble.empty());
    double expected = FORMULA.loss_1_s(0.9 * SPEED_M_S, moved_K, air) * moved_K / p;
    List<HeatBlock> turning = only(blocks, Phase.TURNING);
    assertThat(expected).isLessThan(0.97);
    assertThat(turning.get(turning.size() - 1).ratio()).isCloseTo(expected, within(2e-3));
    assertThat(turning.get(0).ratio()).isBetween(expected, 1.0);
    assertThat(only(blocks, Phase.AFTER).get(0).ratio()).isGreaterThan(1.001);
    assertThat(only(blocks, Phase.AFTER).get(3).ratio()).isCloseTo(1, within(1e-3));
  }

  /** Δ falls by loss · Δ itself: what it loses it gives up, and takes nothing. */
  @Test
  void aBallThatCoolsByItselfTakesNoHeat() {
    double[] cooled = new double[1600];
    cooled[0] = still_K;
    for (int i = 1; i < cooled.length; i++) {
      double now = cooled[i - 1];
      cooled[i] = i < 930 ? still_K : now - FORMULA.loss_1_s(0, now, air) * now;
    }
    List<HeatBlock> after =
        only(of(t -> t > STOP_S ? cooled[(int) t] : resting(t), 0), Phase.AFTER);
    assertThat(after.get(1).ratio()).isCloseTo(0, within(0.03));
    assertThat(after.get(2).ratio()).isCloseTo(0, within(0.03));
  }

  /** Half of the still-air difference: what is lost of it over what is given. */
  @Test
  void aBallThatStaysTooColdTakesLess() {
    List<HeatBlock> blocks = of(t -> t < START_S ? still_K / 2 : resting(t), 0);
    double half = still_K / 2;
    double expected =
        FORMULA.loss_1_s(0, half, air) * half / FORMULA.heating_K_s(OptionalDouble.empty());
    assertThat(blocks.get(0).ratio()).isCloseTo(expected, within(2e-3));
  }

  /** An eighth of the largest difference parts cold from warming. */
  @Test
  void aBallThatIsStillColdHasNoBlock() {
    assertThat(of(t -> t < 150 ? 0.11 * still_K : resting(t), 0).get(0).from_s())
        .isGreaterThan(140);
    assertThat(of(t -> t < 150 ? 0.13 * still_K : resting(t), 0).get(0).from_s()).isLessThan(20);
  }

  /** Rest that counts begins 25 s after the stop at 900 s. */
  @Test
  void aBlockLastsFiftySecondsAtLeast() {
    assertThat(only(of(this::resting, 0, 965), Phase.AFTER)).isEmpty();
    assertThat(only(of(this::resting, 0, 995), Phase.AFTER)).hasSize(1);
  }

  /**
   * The form is known to 0.3 %; at rest the loss wanders by √(0.01 s / 150 s) = 0.8 % besides, and
   * weighted by a parabola, as a straight line's slope is, the square is 6/5 of that (of few rows a
   * little less); noise of 1 mK is nothing beside that. The speed's 1.2 % is shared by all turning.
   */
  @Test
  void uncertaintyIsThatOfFormAndWander() {
    List<HeatBlock> blocks = of(t -> resting(t) + (t % 4 == 0 ? 1e-3 : -1e-3), 0);
    HeatBlock rest = only(blocks, Phase.AFTER).get(1);
    double length_s = rest.to_s() - rest.from_s();
    assertThat(rest.u())
        .isCloseTo(Math.sqrt(0.003 * 0.003 + 1.2 * Wander.FIRST.rest_s() / length_s), within(3e-4));
    HeatBlock turning = only(blocks, Phase.TURNING).get(1);
    double[] loss = FORMULA.lossAndSlopes(SPEED_M_S, moved_K, air);
    double bySpeed = loss[1] * SPEED_M_S / loss[0];
    double wander = Wander.FIRST.turning_s() / (turning.to_s() - turning.from_s());
    assertThat(turning.u())
        .isCloseTo(Math.sqrt(0.003 * 0.003 + 1.2 * bySpeed * bySpeed * wander), within(3e-4));
    assertThat(turning.u_run()).isCloseTo(0.012 * bySpeed, within(2e-4));
  }
}
