package faintwind.physics.arm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The mechanics of the arm against worked examples of textbooks and closed forms. */
class ArmMechanicsTest {
  private static final double G = 9.80665;

  @Test
  @DisplayName(
      "A car at 25.0 m/s in a bend of 500 m: 1.25 m/s² (OpenStax College Physics, ex. 6.2,"
          + " from memory)")
  void accelerationInABendIsThatOfTheTextbook() {
    assertThat(new Turning(500, 25).acceleration_m_s2()).isCloseTo(1.25, within(0.005));
  }

  @Test
  @DisplayName(
      "7.50 cm from the axis at 75 000 turns a minute: 4.63e6 m/s² (OpenStax College"
          + " Physics, ex. 6.3, from memory)")
  void accelerationInACentrifugeIsThatOfTheTextbook() {
    double speed = 2 * Math.PI * 0.075 * 75_000 / 60;
    assertThat(new Turning(0.075, speed).acceleration_m_s2()).isCloseTo(4.63e6, within(5e3));
  }

  @Test
  @DisplayName("20 turns in 94.25 s at 750 mm are 1 m/s (definition of speed)")
  void turnsAndSpeedBelongTogether() {
    assertThat(new Turning(0.75, 0.99998).turns_1_s()).isCloseTo(20 / 94.25, within(1e-6));
  }

  /** With its upper end on the axis the thread is the conical pendulum: ω² = g/(L·cos φ). */
  @ParameterizedTest(name = "a conical pendulum of {0} m at {1}°")
  @CsvSource({"1, 30", "0.06, 10", "0.3, 60", "0.06, 80"})
  void aThreadOnTheAxisIsTheConicalPendulum(double length_m, double degrees) {
    double phi = Math.toRadians(degrees);
    double omega = Math.sqrt(G / (length_m * Math.cos(phi)));
    double near = 1e-9;
    double growth = ThreadSwing.growth_m(new Turning(near, near * omega), length_m);
    assertThat(growth).isCloseTo(length_m * Math.sin(phi), within(1e-6 * length_m));
  }

  /**
   * Worked by hand for 300 mm, 2.5 m/s and 60 mm of thread: ω = 8.333 1/s, tan φ = 69.44 · 0.3557 /
   * 9.807 = 2.519, φ = 68.35°, 60 mm · sin φ = 55.8 mm. Cross-checked, not published.
   */
  @Test
  void aPairOnAThreadReadsNearlyAFifthWrong() {
    double growth = ThreadSwing.growth_m(new Turning(0.3, 2.5), 0.06);
    assertThat(growth).isCloseTo(0.0558, within(0.0001));
    assertThat(growth / 0.3).isBetween(0.18, 0.19);
  }

  @Test
  void atRestAThreadHangsStraight() {
    assertThat(ThreadSwing.growth_m(new Turning(0.5, 0), 0.06)).isCloseTo(0, within(1e-9));
  }

  /** Tables of sections give 833 cm⁴ for 100 mm square and 30.7 cm⁴ for 50 mm round (memory). */
  @Test
  void momentsOfAreaAreThoseOfTheTables() {
    assertThat(Beam.rectangle_m4(0.1, 0.1)).isCloseTo(833e-8, within(0.5e-8));
    assertThat(Beam.round_m4(0.05)).isCloseTo(30.7e-8, within(0.05e-8));
  }

  /** 1 kN at 2 m of a steel bar 100 mm square: 8000/(3 · 200e9 · 8.333e-6) = 1.6 mm (by hand). */
  @Test
  void aSteelBarBendsAsWorkedByHand() {
    Beam bar = new Beam(2, 200e9, Beam.rectangle_m4(0.1, 0.1));
    assertThat(bar.tipDeflection_m(1000)).isCloseTo(1.6e-3, within(1e-8));
  }

  /** The same load spread evenly bends the tip 3/8 as far (tables of cantilever beams). */
  @Test
  void anEvenLoadBendsThreeEighthsAsFar() {
    Beam bar = new Beam(0.5, Beam.SOFTWOOD_PA, Beam.rectangle_m4(0.02, 0.02));
    assertThat(bar.evenDeflection_m(4)).isCloseTo(0.375 * bar.tipDeflection_m(2), within(1e-12));
  }

  /** A plank over an edge: M·b = m·(r − b), the law of the lever. */
  @Test
  void atRestTheStandIsALever() {
    double foot = new Stand(0.25, 0.5).leastFoot_kg(new Turning(0.75, 0), 0.2);
    assertThat(foot).isCloseTo(0.2 * (0.75 - 0.25) / 0.25, within(1e-12));
  }

  /** Turning adds m·(v²/r)·h: 0.1 kg at 3 m/s and 0.5 m pull 1.8 N, at 0.5 m height 0.9 N·m. */
  @Test
  void turningTipsMore() {
    Stand stand = new Stand(0.25, 0.5);
    double more =
        stand.leastFoot_kg(new Turning(0.5, 3), 0.1) - stand.leastFoot_kg(new Turning(0.5, 0), 0.1);
    assertThat(more).isCloseTo(0.9 / (G * 0.25), within(1e-12));
  }

  /** The torque of the bar, piece by piece: Σ ½·ρ·C_d·w·(ω·x)²·x·dx to both sides. */
  @Test
  void dragOfTheBarIsTheSumOfItsPieces() {
    Turning tip = new Turning(0.5, 3);
    int pieces = 20_000;
    double sum = 0;
    for (int i = 0; i < pieces; i++) {
      double x = 0.5 * (i + 0.5) / pieces;
      double v = tip.omega_rad_s() * x;
      sum += 2 * 0.5 * 1.2 * 2 * 0.02 * v * v * x * 0.5 / pieces;
    }
    assertThat(new ArmDrag(1.2, 0.02).torque_Nm(tip, 0)).isCloseTo(sum, within(1e-7));
    assertThat(new ArmDrag(1.2, 0.02).power_W(tip, 0)).isCloseTo(sum * 6, within(1e-6));
  }

  /**
   * By hand at ω = 2 1/s with 2e-3 m² carried at 0.5 m: 2 · 0.6·2·0.02·4·0.5⁴/4 +
   * 0.6·1.2·2e-3·1·0.5 = 3.72 mN·m, on a drum of 20 mm 3.72e-3/(9.80665·0.02) = 18.97 g.
   */
  @Test
  void theDrivingWeightHoldsTheDrag() {
    ArmDrag drag = new ArmDrag(1.2, 0.02);
    Turning tip = new Turning(0.5, 1);
    assertThat(drag.torque_Nm(tip, 2e-3)).isCloseTo(3.72e-3, within(1e-9));
    assertThat(drag.drivingWeight_kg(tip, 2e-3, 0.02)).isCloseTo(0.018967, within(1e-6));
  }

  @Test
  void theShortestArmNeedsNoMoreThanATurnASecond() {
    assertThat(PlannedArm.forSpeed(3).tip().radius_m()).isCloseTo(0.5, within(1e-12));
    assertThat(PlannedArm.forSpeed(0.5).tip().radius_m()).isCloseTo(0.4, within(1e-12));
    for (double speed = 0.2; speed < 5; speed += 0.3) {
      PlannedArm arm = PlannedArm.forSpeed(speed);
      assertThat(arm.tip().turns_1_s()).isLessThanOrEqualTo(1 + 1e-9);
      assertThat(arm.holderGrowth_m()).isLessThan(0.01 * arm.tip().radius_m());
      assertThat(arm.threadGrowth_m()).isGreaterThan(arm.holderGrowth_m());
    }
  }

  /**
   * At 3 m/s, worked by hand: 0.5 m, 18 m/s², 1.8 N; the rod bends 1.8·0.1³/(3·10 GPa·201 mm⁴) =
   * 0.298 mm; the bar sags 0.103 mm by itself and 0.306 mm under the pair; the foot holds twice 0.1
   * + 0.367 kg; the drag of 33.48 mN·m takes 0.2009 W or 170.7 g on the drum.
   */
  @Test
  void aPlannedArmIsWhatItsPartsMakeIt() {
    PlannedArm arm = PlannedArm.forSpeed(3);
    assertThat(arm.pull_N()).isCloseTo(1.8, within(1e-9));
    assertThat(1e3 * arm.holderGrowth_m()).isCloseTo(0.2984, within(0.0002));
    assertThat(1e3 * arm.sag_m()).isCloseTo(0.4099, within(0.0002));
    assertThat(arm.counterweight_kg()).isCloseTo(0.2, within(1e-12));
    assertThat(arm.foot_kg()).isCloseTo(0.9342, within(0.0001));
    assertThat(arm.drag_W(1.2)).isCloseTo(0.20088, within(1e-6));
    assertThat(arm.drivingWeight_kg(1.2)).isCloseTo(0.1707, within(0.0001));
    assertThat(arm.clear_m()).isCloseTo(1.0, within(1e-12));
    assertThat(PlannedArm.forSpeed(20).tip().radius_m()).isCloseTo(1.5, within(1e-12));
  }

  @Test
  void whatCannotTurnIsRefused() {
    assertThatThrownBy(() -> new Turning(0, 1)).hasMessageContaining("radius");
    assertThatThrownBy(() -> new Beam(1, 0, 1)).hasMessageContaining("E 0.0");
    assertThatThrownBy(() -> new Beam(0, 1, 1)).hasMessageContaining("length 0.0");
    assertThatThrownBy(() -> new Beam(1, 1, 0)).hasMessageContaining("I 0.0");
    assertThatThrownBy(() -> new Stand(0, 1)).hasMessageContaining("foot");
  }
}
