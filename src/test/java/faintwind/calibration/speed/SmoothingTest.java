package faintwind.calibration.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.speed.state.BlockSmoother;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SmoothingTest {
  private static final double WALK2_1_S = 1e-4;
  private final ModelInstrument instrument = new ModelInstrument(0.02);
  private final List<LogSample> log =
      instrument.settledLog(
          ModelInstrument.times(1, 4000),
          ModelInstrument.Weather.of(t -> 0.5 + 0.2 * Math.sin(t / 200)),
          1);

  @Test
  void smoothingInBlocksIsSmoothingTheWhole() {
    SmoothingBlock small = new SmoothingBlock(300, 40_000, 300, 300, 300);
    SmoothingBlock whole = new SmoothingBlock(100_000, 200_000, 1e9, 300, 300);
    List<SpeedRow> blocks = ModelInstrument.convert(smoothing(small), log);
    List<SpeedRow> once = ModelInstrument.convert(smoothing(whole), log);
    assertThat(blocks).hasSameSizeAs(once);
    for (int i = 0; i < once.size(); i++) {
      // noise is taken block by block, so the two differ by what a few per cent of noise make
      assertThat(blocks.get(i).speed_m_s().orElseThrow())
          .as("row " + i)
          .isCloseTo(once.get(i).speed_m_s().orElseThrow(), within(0.01));
    }
  }

  @Test
  void streamGivesOneRowAtOnceAndDoesNotLookAhead() {
    SpeedEstimator estimator = SteadySpeedTest.filtering(instrument);
    List<SpeedRow> whole = ModelInstrument.convert(SteadySpeedTest.filtering(instrument), log);
    for (int i = 0; i < 1500; i++) {
      List<SpeedRow> ready = new ArrayList<>();
      estimator.accept(log.get(i), ready::add);
      assertThat(ready).containsExactly(whole.get(i));
    }
  }

  @Test
  void averageOfTheSmoothedSpeedIsTheMeanOfTheUnaveraged() {
    SpeedSettings none = new SpeedSettings(0, LogAir.UNKNOWN);
    SpeedSettings minute = new SpeedSettings(60, LogAir.UNKNOWN);
    List<SpeedRow> raw =
        ModelInstrument.convert(SpeedEstimator.smoothing(instrument.calibration(), none), log);
    List<SpeedRow> averaged =
        ModelInstrument.convert(SpeedEstimator.smoothing(instrument.calibration(), minute), log);
    for (int i = 500; i < 3500; i += 100) {
      double mean =
          raw.subList(i - 30, i + 31).stream()
              .mapToDouble(r -> r.speed_m_s().orElseThrow())
              .average()
              .orElseThrow();
      assertThat(averaged.get(i).speed_m_s().orElseThrow()).isCloseTo(mean, within(1e-6));
    }
  }

  @Test
  void suddenChangeStaysSharpOnBothSides() {
    List<LogSample> stepped =
        instrument.settledLog(
            ModelInstrument.times(1, 3000), ModelInstrument.Weather.of(t -> t < 1500 ? 0.3 : 2), 2);
    List<SpeedRow> rows = ModelInstrument.convert(SteadySpeedTest.smoothing(instrument), stepped);
    assertThat(rows.get(1495).speed_m_s().orElseThrow()).isCloseTo(0.3, within(0.05));
    assertThat(rows.get(1510).speed_m_s().orElseThrow()).isCloseTo(2, within(0.2));
  }

  private SpeedEstimator smoothing(SmoothingBlock block) {
    return new SmoothedSpeed(
        instrument.calibration(),
        new SpeedSettings(30, LogAir.UNKNOWN),
        block,
        new BlockSmoother(instrument.calibration(), OptionalDouble.of(WALK2_1_S)),
        Optional.empty(),
        SpeedEstimator.Workers.NOBODY_ELSE);
  }
}
