package faintwind.physics.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.physics.Interval;
import faintwind.physics.part.Coat;
import faintwind.physics.part.Label;
import faintwind.physics.part.Metal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Balls of 12 mm with holes of 4 mm, in a metal of 8900 kg/m³, against geometry. */
class BallDesignTest {
  private static final Label LABEL = new Label("x", "x", "made up");
  private static final OptionalDouble BLIND_M = OptionalDouble.of(0.008);

  private static BallDesign ball(double diameter_m) {
    Metal metal =
        new Metal(
            LABEL,
            Interval.exact(8900),
            Interval.exact(385),
            Interval.exact(400),
            Interval.exact(1),
            Metal.FirstBath.NICKEL);
    Coat coat =
        new Coat(LABEL, Interval.exact(0.05), Interval.exact(0.3), Coat.Kind.BARE, List.of("x"));
    BallDesign.Bore bore = new BallDesign.Bore(0.004, BLIND_M, OptionalDouble.empty());
    return new BallDesign(metal, coat, Interval.share(diameter_m, 0.01), bore, Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({"12.7, 1/2", "25.4, 1", "50.8, 2", "9.525, 3/8", "14.2875, 9/16", "38.1, 3/2"})
  void sixteenthsOfAnInchAreNamed(double mm, String inches) {
    assertThat(ball(mm / 1000).inches()).contains(inches);
  }

  @ParameterizedTest
  @ValueSource(doubles = {12, 12.75, 0.3})
  void otherDiametersAreNone(double mm) {
    assertThat(ball(mm / 1000).inches()).isEmpty();
  }

  /** What a hole right through leaves is as much as a ball of the hole's length (napkin ring). */
  @Test
  void aHoleRightThroughLeavesTheNapkinRing() {
    BallDesign ball = ball(0.012);
    double wall_m = 2 * Math.sqrt(0.006 * 0.006 - 0.002 * 0.002);
    assertThat(ball.wall_m()).isCloseTo(wall_m, within(1e-12));
    double left_m3 = Math.PI / 6 * Math.pow(0.012, 3) - ball.holeVolume_m3(OptionalDouble.empty());
    assertThat(left_m3).isCloseTo(Math.PI / 6 * Math.pow(wall_m, 3), within(1e-15));
  }

  /**
   * Worked by hand, in mm: dome of 0.3431 deep, π·0.3431²·(18 − 0.3431)/3 = 2.177; cylinder 12.566
   * · 7.657 = 96.219; cone of the drill's point 12.566 · 1.2017/3 = 5.034; in all 103.43 mm³.
   */
  @Test
  void aBlindHoleIsDomeCylinderAndPoint() {
    assertThat(1e9 * ball(0.012).holeVolume_m3(BLIND_M)).isCloseTo(103.430, within(0.001));
  }

  /** 8900 kg/m³ · π/6 · (12 mm)³ = 8.0525 g by hand; a hundredth of diameter is three of mass. */
  @Test
  void aBlankWeighsItsVolume() {
    Interval blank = ball(0.012).blank_kg();
    assertThat(1e3 * blank.nominal()).isCloseTo(8.0525, within(0.0001));
    assertThat(blank.high() / blank.nominal()).isCloseTo(1.0303, within(0.0001));
    assertThat(blank.low() / blank.nominal()).isCloseTo(0.9703, within(0.0001));
  }

  @Test
  void drillingTakesTheHoleAway() {
    BallDesign ball = ball(0.012);
    double off_g = 1e3 * (ball.blank_kg().nominal() - ball.drilled_kg(BLIND_M).nominal());
    assertThat(off_g).isCloseTo(8900e-6 * 103.430, within(1e-5));
    // 8900 kg/m³ · 12.566 mm² · 1 mm by hand
    assertThat(1e6 * ball.perMillimetre_kg()).isCloseTo(111.84, within(0.01));
  }

  /** (904.779 − 103.430) mm³ · 8900 · 385 + 2.1 MJ/(m³ K) · 103.430 mm³ = 2.963 J/K by hand. */
  @Test
  void heatCapacityIsMetalAndWhatFillsTheHole() {
    double capacity = ball(0.012).heatCapacity_J_K(BLIND_M, new BallDesign.Sizes(0.012, 385));
    assertThat(capacity).isCloseTo(2.9630, within(0.0005));
  }

  @Test
  void aHoleIsAsLongAsItsDepthOrTheBall() {
    BallDesign ball = ball(0.012);
    assertThat(ball.length_m(BLIND_M)).isEqualTo(0.008);
    assertThat(ball.length_m(OptionalDouble.empty())).isEqualTo(0.012);
  }

  /** A millimetre of this hole weighs 111.84 mg: so much too light is a millimetre too deep. */
  @Test
  void aWrongMassIsSaidAsADepth() {
    double computed = ball(0.012).drilled_kg(BLIND_M).nominal();
    assertThat(Drilling.extraDepth_m(ball(0.012), BLIND_M, computed - 111.84e-6))
        .isCloseTo(1e-3, within(1e-7));
    assertThat(Drilling.extraDepth_m(ball(0.012), BLIND_M, computed + 55.92e-6))
        .isCloseTo(-0.5e-3, within(1e-7));
  }

  /** 8 mm at 4.2 in place of 4 mm: 8900·π·8·(2.1² − 2²) mm³ = 91.71 mg less, by hand. */
  @Test
  void aWrongMassIsSaidAsADiameter() {
    double computed = ball(0.012).drilled_kg(BLIND_M).nominal();
    assertThat(Drilling.asDiameter_m(ball(0.012), BLIND_M, computed - 91.71e-6).orElseThrow())
        .isCloseTo(4.2e-3, within(1e-7));
    // 8900·π·8·2² mm³ are 894.7 mg: more than the whole hole is missing from it
    assertThat(Drilling.asDiameter_m(ball(0.012), BLIND_M, computed + 0.95e-3)).isEmpty();
    assertThat(Drilling.asDiameter_m(ball(0.012), BLIND_M, computed + 0.85e-3)).isPresent();
  }

  /**
   * Depth 8 mm less the dome of 0.3431 mm, with the point of 1.2017 mm 8.8586 mm: three pecks of 4
   * mm; right through 11.6569 mm and 12.8586 mm, four.
   */
  @Test
  void aDrillGoesFromTheFlatInPecksOfItsDiameter() {
    Drilling blind = Drilling.of(ball(0.012), BLIND_M);
    assertThat(1e3 * blind.fromFlat_m()).isCloseTo(7.6569, within(1e-4));
    assertThat(1e3 * blind.travel_m()).isCloseTo(8.8586, within(1e-4));
    assertThat(blind.pecks()).isEqualTo(3);
    Drilling through = Drilling.of(ball(0.012), OptionalDouble.empty());
    assertThat(1e3 * through.fromFlat_m()).isCloseTo(11.6569, within(1e-4));
    assertThat(through.pecks()).isEqualTo(4);
  }

  /** Each piece is cut 50 mm longer; a pair of wires is used up two legs at a time. */
  @Test
  void aPairIsBoughtForLegsAndMiddle() {
    assertThat(new SenseDesign.Lengths(0.08, 0.6, 0.15).pair_m()).isCloseTo(1.3, within(1e-12));
    assertThat(new SenseDesign.Lengths(0.08, 0.1, 0.5).pair_m()).isCloseTo(0.55, within(1e-12));
  }

  /** Longer contact, lower threshold (ISO 13732-1, as the class says); the one seen is 65 °C. */
  @Test
  void burnThresholdsFallWithTheTimeOfContact() {
    List<TouchLimit.Threshold> all = TouchLimit.thresholds();
    assertThat(all).extracting(TouchLimit.Threshold::temperature_C).startsWith(65.0).endsWith(43.0);
    for (int i = 1; i < all.size(); i++) {
      assertThat(all.get(i).contact_s()).isGreaterThan(all.get(i - 1).contact_s());
      assertThat(all.get(i).temperature_C()).isLessThan(all.get(i - 1).temperature_C());
      assertThat(TouchLimit.temperature_C(all.get(i).contact_s() - 0.01))
          .isEqualTo(all.get(i).temperature_C());
    }
  }
}
