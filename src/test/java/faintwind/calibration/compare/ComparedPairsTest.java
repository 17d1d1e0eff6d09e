package faintwind.calibration.compare;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.EnScore;
import faintwind.calibration.Origin;
import faintwind.calibration.compare.Comparison.Kind;
import faintwind.calibration.fit.judging.CalibrationAssembly;
import faintwind.calibration.fit.judging.Choice;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualHeater;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.message.Checked;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Two calibrations of one made-up build: how often they agree, and whether a changed supply is
 * seen. The virtual instrument is this program's own, so this is regression, not proof. The studies
 * draw from 74 000 on, where nothing was ever chosen, each second session 50 000 further.
 */
class ComparedPairsTest {
  private static final long FIRST_SEED = 4000;
  private static final long FRESH_SEED = Long.getLong("pairs.seed", 74_000);
  private static final long SECOND_SESSION = 50_000;
  private static final double MORE_SUPPLY = 1.03;

  private static Calibration calibrated(VirtualBuild build, long seed) {
    RunSet set = VirtualRehearsal.calibration(build, VirtualPlan.bothDirections(), seed).runSet();
    Checked<FitResult> fit = FitToRuns.fit(set, () -> false);
    Origin origin =
        new Origin("made up", OffsetDateTime.parse("2026-01-01T00:00:00Z"), "test", Map.of());
    return CalibrationAssembly.of(
        Choice.only(((Checked.Ok<FitResult>) fit).value()), set, origin, Optional.empty());
  }

  private static VirtualBuild withSupply(VirtualBuild build, double factor) {
    VirtualHeater was = build.heater();
    VirtualHeater heater =
        new VirtualHeater(
            was.resistance_ohm(),
            factor * was.supply_V(),
            was.drift_V_h(),
            was.node_J_K(),
            was.link_W_K());
    return new VirtualBuild(
        build.heated(), build.reference(), heater, build.chain(), build.arm(), build.room());
  }

  private static Comparison again(long seed) {
    VirtualBuild build = VirtualDraw.build(seed);
    return compared(calibrated(build, seed), calibrated(build, seed + SECOND_SESSION));
  }

  /** More for odd seeds, less for even ones. */
  private static Comparison suppliedOther(long seed) {
    VirtualBuild build = VirtualDraw.build(seed);
    double factor = seed % 2 == 0 ? 1 / MORE_SUPPLY : MORE_SUPPLY;
    return compared(
        calibrated(build, seed), calibrated(withSupply(build, factor), seed + SECOND_SESSION));
  }

  private static Comparison compared(Calibration earlier, Calibration later) {
    Checked<Comparison> compared = CompareCalibrations.of(earlier, later);
    return ((Checked.Ok<Comparison>) compared).value();
  }

  @Test
  void aCalibrationAgreesWithItself() {
    VirtualBuild build = VirtualDraw.build(FIRST_SEED);
    Calibration once = calibrated(build, FIRST_SEED);
    Comparison same = compared(once, once);
    assertThat(same.worst().en().value()).isCloseTo(0, within(1e-9));
    assertThat(same.causes()).isEmpty();
  }

  private static Offset<Double> within(double offset) {
    return Offset.offset(offset);
  }

  @Test
  void aSupplyThreePerCentHigherIsSeenAndNamed() {
    Comparison changed = suppliedOther(FIRST_SEED + 1);
    assertThat(changed.agrees()).isFalse();
    assertThat(changed.likeliest().orElseThrow().kind()).isEqualTo(Kind.SUPPLY);
    assertThat(changed.likeliest().orElseThrow().by()).isCloseTo(0.03, within(0.01));
    assertThat(again(FIRST_SEED + 1).agrees()).isTrue();
  }

  @Test
  @Tag("slow")
  void ofFortyPairsAtLeastNinetyFiveInAHundredAgree() {
    List<Double> worst = worst(Integer.getInteger("pairs.again", 40), ComparedPairsTest::again);
    assertThat(worst.stream().filter(en -> en <= EnScore.LIMIT).count())
        .as("largest En of each pair: %s", worst)
        .isGreaterThanOrEqualTo(Math.round(0.95 * worst.size()));
  }

  @Test
  @Tag("slow")
  void aChangedSupplyIsSeenInEveryPair() {
    List<Double> worst =
        worst(Integer.getInteger("pairs.changed", 40), ComparedPairsTest::suppliedOther);
    assertThat(worst).as("largest En of each pair").allMatch(en -> en > EnScore.LIMIT);
  }

  private static List<Double> worst(int pairs, LongFunction<Comparison> compared) {
    List<Double> worst =
        LongStream.range(FRESH_SEED, FRESH_SEED + pairs)
            .mapToObj(compared)
            .map(comparison -> Math.abs(comparison.worst().en().value()))
            .toList();
    System.out.println("largest En of each pair: " + worst);
    return worst;
  }
}
