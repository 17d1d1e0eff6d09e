package faintwind.calibration.fit.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.Uncertain;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** By hand: three spins whose speeds are known exactly but for what they scatter. */
class RunScatterTest {
  private static final Series SIGNAL = MadeRuns.series(0, 5, 900, t -> t < 300 ? 20 : 12);
  private final Setup setup = setup();
  private final double[] values = setup.unknowns().values(new double[setup.unknowns().size()]);
  private final double[][] certain = new double[values.length][values.length];

  private static Setup setup() {
    RunSet set = MadeRuns.set(MadeRuns.still("still", SIGNAL), spin("a"), spin("b"), spin("c"));
    Setting setting = Setting.of(set);
    return new Setup(setting, setting.model(PhysicsShaped.ID));
  }

  private static Run spin(String name) {
    ArmTurning arm =
        new ArmTurning(
            Uncertain.of(0.4, 0.0),
            60,
            Uncertain.of(290, 0.0),
            300,
            600,
            Optional.empty(),
            OptionalDouble.of(302));
    return MadeRuns.spin(name, SIGNAL, arm);
  }

  private int column(String run) {
    return Objects.requireNonNull(setup.speedColumns().get(run));
  }

  /** The expectation of 0.5 % is worth two runs, and three were found without any scatter. */
  @Test
  void runsThatAgreeLeaveLessThanIsExpected() {
    double scatter = RunScatter.settle(setup, values, certain, 0.01);
    assertThat(scatter).isCloseTo(0.005 * Math.sqrt(2 / 5.0), within(1e-12));
    assertThat(setup.unknowns().get(column("a")).spread()).isCloseTo(scatter, within(1e-12));
    assertThat(RunScatter.freedom(setup)).isEqualTo(4);
  }

  /** One run 1 % off, another known to 1 %: (2 · 0.005² + 0.01² + 0.01²)/5. */
  @Test
  void distanceAndUncertaintyBothCount() {
    values[column("a")] = 0.01;
    certain[column("b")][column("b")] = 1e-4;
    assertThat(RunScatter.settle(setup, values, certain, 0.01))
        .isCloseTo(Math.sqrt(2.5e-4 / 5), within(1e-12));
  }

  /** Ten spreads off: 5/(4 + 100) of the weight. */
  @Test
  void aRunFarOffDragsLittle() {
    values[column("a")] = 0.1;
    double expected = Math.sqrt((5e-5 + 5 / 104.0 * 0.01) / 5);
    double scatter = RunScatter.settle(setup, values, certain, 0.01);
    assertThat(scatter).isCloseTo(expected, within(1e-12));
    double squared = 0.01 / (scatter * scatter);
    assertThat(setup.unknowns().get(column("a")).spread())
        .isCloseTo(scatter / Math.sqrt(5 / (4 + squared)), within(1e-9));
    assertThat(setup.unknowns().get(column("b")).spread()).isCloseTo(scatter, within(1e-12));
  }

  @Test
  void aSpeedThatDoesNotCountIsLeftAlone() {
    setup.free(Set.of("a"));
    values[column("a")] = 1;
    assertThat(RunScatter.settle(setup, values, certain, 0.01))
        .isCloseTo(0.005 * Math.sqrt(2 / 4.0), within(1e-12));
    assertThat(setup.unknowns().get(column("a")).spread()).isEqualTo(3);
    assertThat(setup.counts("a")).isFalse();
    assertThat(setup.counts("b")).isTrue();
  }

  @Test
  void startsLieInFourValleys() {
    List<double[]> starts = Starts.of(setup);
    int heater = setup.layout().path(ThermalPath.HEATER_TIME);
    assertThat(starts).hasSize(4);
    assertThat(starts).extracting(x -> x[heater]).containsExactly(-1.0, 0.0, 1.5, 0.0);
    assertThat(starts.get(1)).containsOnly(0);
    assertThat(starts.get(3)[setup.layout().carriedRise()]).isEqualTo(1.5);
  }

  @Test
  void anArmWithoutARestOfTwoMinutesHasShortRests() {
    assertThat(setup.restsAreShort()).isFalse();
    Run brief = MadeRuns.spin("a", SIGNAL.window(0, 719), spin("a").arm().orElseThrow());
    Setting setting = Setting.of(MadeRuns.set(MadeRuns.still("still", SIGNAL), brief));
    assertThat(new Setup(setting, setting.model(PhysicsShaped.ID)).restsAreShort()).isTrue();
    assertThat(setup.turns()).isTrue();
    assertThat(setup.statedShare()).isFalse();
  }
}
