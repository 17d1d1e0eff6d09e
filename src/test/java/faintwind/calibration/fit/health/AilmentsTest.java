package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.health.Ailment.Kind;
import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * By hand: a run of ten blocks, the heat of each off by a pattern that is put in. The amplitude of
 * the pattern must come out as it went in.
 */
class AilmentsTest {
  private static final double SCATTER = 0.0014;
  private static final double U = 0.0048;

  /**
   * A tenth in all ten: rests 600 s apart share 1/e of 0.0014², so that six of them count as less
   * (worked out apart with NumPy, aᵀ C⁻¹ a).
   */
  private static final double SCALE_GAIN = 3812.953599154045;

  /** Weighted mean of five blocks that share in the same way (apart, with NumPy). */
  private static final double DRAUGHTY_SHARE = -0.05011662213823298;

  private static HeatBlock block(int k, double ratio) {
    Phase phase = k < 3 ? Phase.BEFORE : k < 7 ? Phase.TURNING : Phase.AFTER;
    double delta_K = phase == Phase.TURNING ? 8 : 20;
    return new HeatBlock(phase, 150 * k, 150 * k + 140, ratio, U, 0, delta_K);
  }

  private static List<Ailment> off(ToDoubleFunction<HeatBlock> pattern) {
    List<HeatBlock> blocks = new ArrayList<>();
    for (int k = 0; k < 10; k++) {
      blocks.add(block(k, 1.02 * (1 + pattern.applyAsDouble(block(k, 1)))));
    }
    return Ailments.of(new RunHealth("run", blocks), 1.02, SCATTER);
  }

  private static void isOnly(List<Ailment> found, Kind kind, double share, double from_s) {
    assertThat(found).extracting(Ailment::kind).containsExactly(kind);
    assertThat(found.get(0).share()).isCloseTo(share, within(1e-9));
    assertThat(found.get(0).from_s()).isEqualTo(from_s);
  }

  private static boolean turns(HeatBlock block) {
    return block.phase() == Phase.TURNING;
  }

  @Test
  void aHealthyRunHasNone() {
    assertThat(off(b -> 0)).isEmpty();
    assertThat(off(b -> 0.019)).isEmpty();
    assertThat(Ailments.of(new RunHealth("run", List.of()), 1, SCATTER)).isEmpty();
  }

  @Test
  void oneFactorIsTheScale() {
    List<Ailment> found = off(b -> 0.1);
    isOnly(found, Kind.SCALE, 0.1, 0);
    assertThat(found.get(0).gain()).isCloseTo(SCALE_GAIN, within(1e-6));
    assertThat(found.get(0).spoilsRecording()).isTrue();
  }

  /** One kelvin on 20: a twentieth at rest, an eighth while turning. */
  @Test
  void oneAmountIsAnOffset() {
    isOnly(off(b -> 1 / b.delta_K()), Kind.OFFSET, 0.05, 0);
  }

  @Test
  void aFactorFromSomeTimeOnIsAStepOfTheScale() {
    isOnly(off(b -> b.from_s() < 300 ? 0 : -0.1), Kind.SCALE_STEP, -0.1, 300);
  }

  @Test
  void anAmountFromSomeTimeOnIsAStepOfTheOffset() {
    isOnly(off(b -> b.from_s() < 600 ? 0 : 2 / b.delta_K()), Kind.OFFSET_STEP, 0.1, 600);
  }

  @Test
  void whatGetsLessAndLessIsFading() {
    isOnly(off(b -> -0.3 * Math.exp(-b.from_s() / 400)), Kind.FADING, -0.3, 0);
  }

  @Test
  void lessHeatAtRestOnlyIsMovingAir() {
    List<Ailment> found = off(b -> turns(b) ? 0 : -0.06);
    isOnly(found, Kind.REST, -0.06, 0);
    assertThat(found.get(0).spoilsRecording()).isTrue();
    assertThat(off(b -> turns(b) ? 0 : -0.04).get(0).spoilsRecording()).isFalse();
  }

  /** The scatter between rests does not count for a spin: 0.096² / 0.0048² = 400 a block. */
  @Test
  void lessHeatWhileTurningIsTheSpeed() {
    List<Ailment> found = off(b -> turns(b) ? 0.096 : 0);
    isOnly(found, Kind.TURNING, 0.096, 0);
    assertThat(found.get(0).gain()).isCloseTo(4 * 400, within(1e-6));
    assertThat(found.get(0).spoilsRecording()).isFalse();
  }

  @Test
  void anotherSpeedFromSomeTurnOnIsNamedWithItsTime() {
    List<Ailment> found = off(b -> turns(b) && b.from_s() >= 750 ? 0.1 : 0);
    isOnly(found, Kind.TURNING_STEP, 0.1, 750);
    assertThat(found.get(0).spoilsRecording()).isTrue();
  }

  /**
   * Three blocks too fast and one too slow, the count over all right: 0.05 and −0.15, 0.2 apart.
   */
  @Test
  void tooFastAndTooSlowThatCancelAreAStepOfTheSpeed() {
    isOnly(
        off(b -> !turns(b) ? 0 : b.from_s() == 900 ? -0.15 : 0.05), Kind.TURNING_STEP, -0.2, 900);
  }

  @Test
  void noHeatToTheEndIsALostHeater() {
    List<Ailment> found = off(b -> b.from_s() < 600 ? 0 : -0.9);
    assertThat(found.get(0).kind()).isEqualTo(Kind.HEATER_LOST);
    assertThat(found.get(0).from_s()).isEqualTo(600);
    assertThat(found.get(0).spoilsRecording()).isTrue();
    assertThat(off(b -> b.from_s() == 600 ? -0.9 : 0))
        .extracting(Ailment::kind)
        .doesNotContain(Kind.HEATER_LOST);
  }

  @Test
  void aStillRunThatTakesAnotherAmountInEachBlockIsDraughty() {
    List<HeatBlock> blocks = new ArrayList<>();
    double[] ratios = {0.93, 0.98, 0.91, 0.99, 0.94};
    for (int k = 0; k < ratios.length; k++) {
      blocks.add(new HeatBlock(Phase.BEFORE, 150 * k, 150 * k + 140, ratios[k], U, 0, 20));
    }
    List<Ailment> found = Ailments.of(new RunHealth("still", blocks), 1, SCATTER);
    assertThat(found).extracting(Ailment::kind).containsExactly(Kind.REST);
    assertThat(found.get(0).share()).isCloseTo(DRAUGHTY_SHARE, within(1e-9));
  }

  @Test
  void aStillRunSteadilyOffIsNotCalledDraughty() {
    List<HeatBlock> blocks = new ArrayList<>();
    for (int k = 0; k < 5; k++) {
      blocks.add(new HeatBlock(Phase.BEFORE, 150 * k, 150 * k + 140, 0.95, U, 0, 20));
    }
    assertThat(Ailments.of(new RunHealth("still", blocks), 1, SCATTER))
        .extracting(Ailment::kind)
        .contains(Kind.SCALE)
        .doesNotContain(Kind.REST);
  }

  /** All patterns are weighed alike: none explains more than the whole that there is. */
  @Test
  void noPatternExplainsMoreThanThereIs() {
    Random random = new Random(7);
    for (int draw = 0; draw < 200; draw++) {
      List<HeatBlock> blocks = new ArrayList<>();
      for (int k = 0; k < 10; k++) {
        blocks.add(block(k, 1 + (k < 7 ? 0.02 : 0.3) * random.nextGaussian()));
      }
      Deviations deviations = new Deviations(blocks, 5 * U);
      double whole = deviations.product(b -> b.ratio() - 1, b -> b.ratio() - 1);
      assertThat(Ailments.of(new RunHealth("run", blocks), 1, 5 * U))
          .as("draw %s", draw)
          .filteredOn(each -> each.kind() != Kind.HEATER_LOST)
          .allSatisfy(each -> assertThat(each.gain()).isLessThanOrEqualTo(whole));
    }
  }
}
