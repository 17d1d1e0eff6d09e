package faintwind.calibration.virtual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.physics.AirState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VirtualInstrumentTest {

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void energySuppliedIsHeldOrLost(long seed) {
    VirtualBuild build = VirtualDraw.build(seed);
    VirtualHeat heat = new VirtualHeat(build);
    AirState air = build.room().air();
    double before_J = heat.held_J(air.temperature_K());
    for (int i = 0; i < 4000; i++) {
      heat.step(0.5, air, i < 1000 ? 0 : 0.7, 0.25);
    }
    double held_J = heat.held_J(air.temperature_K()) - before_J;
    assertThat(held_J + heat.lost_J()).isCloseTo(heat.supplied_J(), within(0.05));
    assertThat(heat.supplied_J()).isCloseTo(500, within(1e-6));
  }

  @Test
  void settledStateStaysWhereItIs() {
    VirtualBuild build = VirtualDraw.build(3).noiseless();
    VirtualInstrument instrument = new VirtualInstrument(build, 3);
    instrument.blow(0.5, Heater.ON);
    instrument.settle();
    double first = instrument.sampleAt(0).signal();
    double later = instrument.sampleAt(600).signal();
    assertThat(later).isCloseTo(first, within(1e-6 * Math.abs(first)));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14, 15, 16})
  void quarterWattBallStandsWhereDesignExpectsIt(long seed) {
    VirtualBuild build = VirtualDraw.build(seed).noiseless();
    VirtualChain kelvin =
        new VirtualChain(
            faintwind.calibration.run.SignalUnit.DELTA_K,
            VirtualChain.Wire.K,
            1,
            0,
            build.chain().reading(),
            2);
    assertThat(settled(build.readBy(kelvin), 0)).isBetween(22.0, 40.0);
    assertThat(settled(build.readBy(kelvin), 1)).isBetween(9.5, 16.0);
    assertThat(settled(build.readBy(kelvin), 3)).isBetween(5.5, 9.5);
  }

  @Test
  void sameSeedGivesSameNumbersAndAnotherSeedOthers() {
    VirtualBuild build = VirtualDraw.build(5);
    VirtualPlan plan = VirtualPlan.staircase();
    VirtualCalibration once = VirtualRehearsal.calibration(build, plan, 9);
    VirtualCalibration again =
        VirtualRehearsal.calibration(VirtualDraw.build(5), VirtualPlan.staircase(), 9);
    VirtualCalibration other = VirtualRehearsal.calibration(build, plan, 10);
    assertThat(signal(once)).isEqualTo(signal(again));
    assertThat(signal(once)).isNotEqualTo(signal(other));
  }

  @Test
  void separateRunsGiveOneFileEachAndTheArmSpeedsOfThePlan() {
    VirtualCalibration made =
        VirtualRehearsal.calibration(VirtualDraw.build(2), VirtualPlan.separateRuns(), 2);
    assertThat(made.runs()).hasSize(9);
    assertThat(made.files()).hasSize(9);
    for (Run run : made.runs()) {
      if (run.kind() == RunKind.SPIN) {
        double truth = made.truthOf(run.name()).arm_m_s();
        assertThat(run.arm().orElseThrow().speed_m_s()).isCloseTo(truth, within(0.02 * truth));
      }
    }
  }

  @Test
  void staircaseRowsShareOneFileAndFollowEachOther() {
    VirtualCalibration made =
        VirtualRehearsal.calibration(VirtualDraw.build(2), VirtualPlan.staircase(), 2);
    assertThat(made.files().keySet()).containsExactlyInAnyOrder("zero.csv", "session.csv");
    Run first = made.runs().get(2);
    Run second = made.runs().get(3);
    assertThat(second.recording().signal().first_s())
        .isBetween(first.recording().signal().last_s(), first.recording().signal().last_s() + 5);
  }

  @Test
  void carriedAirLowersTheSpeedPastTheBall() {
    VirtualBuild build = VirtualDraw.build(4);
    VirtualArm arm =
        new VirtualArm(
            0,
            0.001,
            0,
            0,
            new VirtualArm.Carried(0.05, 10, 10, 0),
            new VirtualArm.Inertia(0.01, 0.01));
    VirtualInstrument instrument = new VirtualInstrument(build.noiseless().on(arm), 1);
    instrument.stage(VirtualStage.spin(1, 1, 0.6, faintwind.calibration.run.Direction.CW));
    instrument.advanceTo(200);
    assertThat(instrument.airSpeed_m_s()).isCloseTo(0.95, within(1e-6));
    instrument.stage(VirtualStage.rest(1, Heater.ON));
    instrument.advanceTo(210);
    assertThat(instrument.airSpeed_m_s()).isCloseTo(0.05 * Math.exp(-1), within(0.001));
  }

  @Test
  void armThatTurnsBackMeetsTheAirThatItCarried() {
    VirtualArm arm =
        new VirtualArm(
            0,
            0.001,
            0,
            0,
            new VirtualArm.Carried(0.05, 10, 10, 0),
            new VirtualArm.Inertia(0.01, 0.01));
    VirtualInstrument instrument =
        new VirtualInstrument(VirtualDraw.build(4).noiseless().on(arm), 1);
    instrument.stage(VirtualStage.spin(1, 1, 0.6, faintwind.calibration.run.Direction.CW));
    instrument.advanceTo(200);
    instrument.stage(VirtualStage.spin(1, 1, 0.6, faintwind.calibration.run.Direction.CCW));
    instrument.advanceTo(200.5);
    assertThat(instrument.airSpeed_m_s()).isCloseTo(1.05, within(0.006));
    instrument.advanceTo(400);
    assertThat(instrument.airSpeed_m_s()).isCloseTo(0.95, within(1e-6));
  }

  @Test
  void armComesToSpeedAndToRestInItsOwnTime() {
    VirtualArm arm =
        new VirtualArm(
            0, 0.001, 0, 0, new VirtualArm.Carried(0, 10, 10, 0), new VirtualArm.Inertia(3, 2));
    VirtualInstrument instrument =
        new VirtualInstrument(VirtualDraw.build(4).noiseless().on(arm), 1);
    instrument.stage(VirtualStage.spin(1, 1, 0.6, faintwind.calibration.run.Direction.CW));
    instrument.advanceTo(3);
    assertThat(instrument.airSpeed_m_s()).isCloseTo(1 - Math.exp(-1), within(1e-6));
    instrument.advanceTo(100);
    instrument.stage(VirtualStage.rest(1, Heater.ON));
    instrument.advanceTo(102);
    assertThat(instrument.airSpeed_m_s()).isCloseTo(Math.exp(-1), within(1e-6));
  }

  @Test
  void timeThatGoesBackIsRefusedNamingBothTimes() {
    VirtualInstrument instrument = new VirtualInstrument(VirtualDraw.build(1), 1);
    instrument.advanceTo(10);
    assertThatThrownBy(() -> instrument.sampleAt(9))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("t_s = 9.0")
        .hasMessageContaining("10.0");
  }

  private static double settled(VirtualBuild build, double speed_m_s) {
    VirtualInstrument instrument = new VirtualInstrument(build, 1);
    instrument.blow(speed_m_s, Heater.ON);
    instrument.settle();
    return instrument.sampleAt(0).signal();
  }

  private static double[] signal(VirtualCalibration made) {
    return made.file("session.csv").signal().values();
  }
}
