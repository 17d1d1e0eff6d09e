package faintwind.calibration.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.ArmShown;
import faintwind.calibration.Calibration;
import faintwind.calibration.Coverage;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.response.StillDraught;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpeedFlagsTest {
  private final ModelInstrument instrument = new ModelInstrument(0.01);

  static Stream<Function<ModelInstrument, SpeedEstimator>> bothWays() {
    return Stream.of(SteadySpeedTest::smoothing, SteadySpeedTest::filtering);
  }

  @ParameterizedTest
  @MethodSource("bothWays")
  void coldStartIsFlaggedUntilATenthOfTheStillDifference(
      Function<ModelInstrument, SpeedEstimator> way) {
    List<LogSample> log =
        instrument.coldLog(ModelInstrument.times(1, 2000), ModelInstrument.Weather.of(t -> 0.3), 1);
    List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
    double tenth_K = instrument.stillDelta_K() / 10;
    for (int i = 0; i < log.size(); i++) {
      double delta_K = log.get(i).signal().orElseThrow() - 0.1;
      if (delta_K < 0.97 * tenth_K) {
        assertThat(rows.get(i).flags()).as("row " + i).contains(SpeedFlag.WARMUP);
      }
      if (i > 150) {
        assertThat(rows.get(i).flags()).as("row " + i).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("bothWays")
  void stillAirIsBelowTheFloorAndABreezeIsNot(Function<ModelInstrument, SpeedEstimator> way) {
    List<LogSample> log =
        instrument.settledLog(
            ModelInstrument.times(1, 4000),
            ModelInstrument.Weather.of(t -> t < 2000 ? 0 : 0.15),
            2);
    List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
    assertThat(rows.subList(200, 1900)).allMatch(r -> r.flags().contains(SpeedFlag.FLOOR));
    assertThat(rows.subList(2300, 3900)).allMatch(SpeedRow::usable);
    assertThat(rows.subList(200, 1900)).allMatch(r -> r.speed_m_s().isPresent());
  }

  @Test
  void whatADraughtOfTheCalibrationMayHaveBeenIsNotToldAsWind() {
    // found: 20 mm/s; had there been none, still air would read as those 20 mm/s
    Calibration draughty = draughty(instrument.calibration(), 0.02);
    List<LogSample> log =
        instrument.settledLog(
            ModelInstrument.times(1, 4000),
            ModelInstrument.Weather.of(t -> t < 2000 ? 0.018 : 0.045),
            2);
    SpeedSettings settings = new SpeedSettings(0, LogAir.UNKNOWN);
    List<SpeedRow> rows =
        ModelInstrument.convert(SpeedEstimator.smoothing(draughty, settings), log);
    assertThat(rows.subList(400, 1800)).allMatch(r -> r.flags().contains(SpeedFlag.FLOOR));
    double u95_m_s = rows.get(3000).u95_m_s().orElseThrow();
    double quiet_m_s =
        ModelInstrument.convert(
                SpeedEstimator.smoothing(draughty(instrument.calibration(), 0), settings), log)
            .get(3000)
            .u95_m_s()
            .orElseThrow();
    double speed_m_s = rows.get(3000).speed_m_s().orElseThrow();
    assertThat(u95_m_s)
        .isCloseTo(Math.hypot(quiet_m_s, StillDraught.u95_m_s(speed_m_s, 0.02)), within(1e-9));
  }

  private static Calibration draughty(Calibration c, double draught_m_s) {
    Parameter none = new Parameter("none", 0, 0, "1");
    ArmShown arm =
        new ArmShown(
            none,
            none,
            none,
            none,
            new Parameter("draught", draught_m_s, 0, "m/s"),
            Optional.empty());
    Coverage was = c.coverage();
    Coverage coverage =
        new Coverage(
            was.lowest_m_s(),
            was.highest_m_s(),
            was.lowestSignal(),
            was.highestSignal(),
            was.carriedAirShown(),
            Optional.of(arm));
    Performance sharp =
        new Performance(
            0.001,
            c.performance().stillSignal(),
            c.performance().noise(),
            c.performance().rowStep_s(),
            c.performance().runScatter(),
            List.of());
    return new Calibration(
        c.origin(), c.signal(), c.formula(), coverage, c.evidence(), sharp, c.warnings());
  }

  @ParameterizedTest
  @MethodSource("bothWays")
  void windBeyondTheCalibratedSpeedsIsFlaggedAbove(Function<ModelInstrument, SpeedEstimator> way) {
    List<LogSample> log =
        instrument.settledLog(
            ModelInstrument.times(1, 2000), ModelInstrument.Weather.of(t -> t < 1000 ? 2 : 4), 3);
    List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
    assertThat(rows.subList(200, 900)).allMatch(SpeedRow::usable);
    assertThat(rows.subList(1200, 1900))
        .allMatch(r -> r.flags().equals(EnumSet.of(SpeedFlag.ABOVE)));
  }

  @ParameterizedTest
  @MethodSource("bothWays")
  void breakInTheRecordIsFlaggedJustAfterAndNotForLong(
      Function<ModelInstrument, SpeedEstimator> way) {
    List<LogSample> log =
        new ArrayList<>(
            instrument.settledLog(
                ModelInstrument.times(1, 3000), ModelInstrument.Weather.of(t -> 0.5), 4));
    log.subList(1500, 1620).clear();
    List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
    assertThat(rows.get(1500).flags()).contains(SpeedFlag.GAP);
    assertThat(rows.subList(200, 1500)).noneMatch(r -> r.flags().contains(SpeedFlag.GAP));
    assertThat(rows.subList(1600, 2800)).allMatch(SpeedRow::usable);
  }

  @ParameterizedTest
  @MethodSource("bothWays")
  void aFewMissingRowsAreNoBreak(Function<ModelInstrument, SpeedEstimator> way) {
    List<LogSample> log =
        new ArrayList<>(
            instrument.settledLog(
                ModelInstrument.times(1, 2000), ModelInstrument.Weather.of(t -> 0.5), 4));
    log.remove(1500);
    log.remove(1000);
    List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
    assertThat(rows.subList(200, 1900)).allMatch(SpeedRow::usable);
  }

  @ParameterizedTest
  @MethodSource("bothWays")
  void rowsThatCannotBeReadAreBadAndKeepTheirPlace(Function<ModelInstrument, SpeedEstimator> way) {
    List<LogSample> log =
        new ArrayList<>(
            instrument.settledLog(
                ModelInstrument.times(1, 1000), ModelInstrument.Weather.of(t -> 0.5), 5));
    LogSample good = log.get(500);
    OptionalDouble none = OptionalDouble.empty();
    log.set(500, new LogSample(good.time_s(), none, good.air(), good.supply_V()));
    log.set(600, new LogSample(none, good.signal(), good.air(), good.supply_V()));
    log.set(700, log.get(699));
    log.set(701, new LogSample(OptionalDouble.of(3), good.signal(), good.air(), good.supply_V()));
    List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
    assertThat(rows).hasSameSizeAs(log);
    for (int i = 200; i < rows.size(); i++) {
      boolean bad = i == 500 || i == 600 || i == 700 || i == 701;
      assertThat(rows.get(i).flags().contains(SpeedFlag.BAD)).as("row " + i).isEqualTo(bad);
      assertThat(rows.get(i).speed_m_s().isEmpty()).as("row " + i).isEqualTo(bad);
    }
  }

  @ParameterizedTest
  @MethodSource("bothWays")
  void supplyFarOffIsFlaggedPower(Function<ModelInstrument, SpeedEstimator> way) {
    ModelInstrument.Weather weather =
        new ModelInstrument.Weather(t -> 0.5, t -> t < 1000 ? 5 : 4.5, ModelInstrument.AIR);
    List<LogSample> log = instrument.settledLog(ModelInstrument.times(1, 2500), weather, 6);
    List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
    assertThat(rows.subList(200, 900)).allMatch(SpeedRow::usable);
    assertThat(rows.subList(1050, 2400)).allMatch(r -> r.flags().contains(SpeedFlag.POWER));
  }

  @Test
  void anImpossibleJumpDoesNotBendTheSpeed() {
    List<LogSample> log =
        new ArrayList<>(
            instrument.settledLog(
                ModelInstrument.times(1, 2000), ModelInstrument.Weather.of(t -> 0.5), 7));
    LogSample good = log.get(1000);
    log.set(
        1000, new LogSample(good.time_s(), OptionalDouble.of(300), good.air(), good.supply_V()));
    for (Function<ModelInstrument, SpeedEstimator> way : bothWays().toList()) {
      List<SpeedRow> rows = ModelInstrument.convert(way.apply(instrument), log);
      assertThat(rows.subList(900, 1100))
          .allSatisfy(r -> assertThat(r.speed_m_s().orElseThrow()).isBetween(0.45, 0.55));
    }
  }

  @Test
  void wordsOfFlagsAreJoinedInTheirOrder() {
    assertThat(SpeedFlag.text(EnumSet.noneOf(SpeedFlag.class))).isEmpty();
    assertThat(SpeedFlag.text(EnumSet.of(SpeedFlag.POWER, SpeedFlag.FLOOR)))
        .isEqualTo("floor+power");
  }
}
