package faintwind.guide.turntable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.beat.Steadiness;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Series;
import faintwind.calibration.virtual.VirtualArm;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualHeater;
import faintwind.calibration.virtual.VirtualRoom;
import faintwind.calibration.virtual.VirtualSample;
import faintwind.guide.turntable.Advice.Action;
import faintwind.physics.AirState;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Virtual recordings: our own idea of a bench, so regression rather than proof. */
class LiveGuideTest {
  private static final VirtualRoom CALM =
      new VirtualRoom(new AirState(294, 100_000, 0.5), 0.1, 0.03, 0.003);

  private static VirtualBuild build(long seed) {
    return VirtualDraw.build(seed).in(CALM);
  }

  private static VirtualTable table(long seed, double... speeds_m_s) {
    return new VirtualTable(build(seed), seed, VirtualTable.plan(speeds_m_s));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 7, 11, 13, 21})
  void healthySessionIsGuidedToItsEndWithoutTrouble(long seed) {
    VirtualTable table = table(seed, 1.0, 0.2, 2.0).toTheEnd();
    assertThat(table.troubles).as("seed %d", seed).isEmpty();
    assertThat(table.actions)
        .startsWith(Action.KEEP_OFF, Action.SWITCH_ON, Action.WARMING, Action.SPIN_NOW)
        .endsWith(Action.STILL_CHECK, Action.DONE)
        .containsSubsequence(
            Action.SPIN_NOW, Action.KEEP_TURNING, Action.STOP, Action.STAND_BACK, Action.SPIN_NOW);
    List<DoneStep> done = table.guide.done();
    assertThat(done).hasSize(9);
    assertThat(done.get(1).to_s() - done.get(1).from_s()).as("warm-up").isBetween(700.0, 3001.0);
    assertThat(done.get(3).to_s() - done.get(3).from_s()).isGreaterThanOrEqualTo(180);
  }

  @Test
  void warmUpSaysHowLongStillAndComesDownToNothing() {
    VirtualTable table = table(7, 1.0).until(1).waits(1200);
    Advice early = table.next();
    assertThat(early.action()).isEqualTo(Action.WARMING);
    double then_s = early.more_s().getAsDouble();
    table.waits(then_s / 2);
    assertThat(table.next().more_s().orElse(0)).isCloseTo(then_s / 2, within(0.35 * then_s));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 7, 11, 13, 21})
  void onceItIsTimeToSpinItStaysSoUntilThePersonSpins(long seed) {
    VirtualTable table = table(seed, 1.0).until(1);
    while (table.next().action() != Action.SPIN_NOW) {}
    table.waits(600);
    assertThat(table.actions)
        .containsExactly(Action.KEEP_OFF, Action.SWITCH_ON, Action.WARMING, Action.SPIN_NOW);
  }

  @Test
  void expectedPathRunsOnFromNowAndComesNearToWhatComes() {
    VirtualTable table = table(3, 1.0, 0.4).until(4);
    Series path = table.guide.path().orElseThrow();
    assertThat(path.first_s()).isCloseTo(table.guide.since_s(), within(3.0));
    double still = table.guide.course().settled(0) - table.guide.course().offset();
    VirtualTable later = table.until(6);
    double end_s = later.guide.since_s();
    Series now = later.guide.path().orElseThrow();
    double foretold = valueAt(path, end_s);
    assertThat(now.value(0)).isCloseTo(foretold, within(0.12 * Math.abs(still)));
  }

  private static double valueAt(Series path, double time_s) {
    int i = 0;
    while (i + 1 < path.size() && path.time_s(i) < time_s) {
      i++;
    }
    return path.value(i);
  }

  @Test
  void exchangedLeadsAreToldWithinTwoMinutes() {
    VirtualTable table =
        table(2, 1.0)
            .spoiled(
                (s, heated_s) ->
                    new VirtualSample(s.time_s(), -s.signal(), s.air_K(), s.supply_V()))
            .until(1);
    table.waits(120);
    assertThat(table.troubles).containsExactly(Trouble.Kind.WRONG_WAY);
  }

  @Test
  void heaterThatIsNotPluggedInIsToldWithinTwoMinutes() {
    VirtualTable table = table(2, 1.0).withoutHeater().until(1);
    table.waits(120);
    assertThat(table.troubles).contains(Trouble.Kind.NO_REACTION);
  }

  @Test
  void armThatDoesNotTurnIsToldWithinTwoMinutes() {
    VirtualTable table = table(2, 1.0).withoutTurning().until(2);
    assertThat(table.troubles).isEmpty();
    table.waits(120);
    assertThat(table.troubles).containsExactly(Trouble.Kind.NO_REACTION);
  }

  @Test
  void signalAtItsStopIsTold() {
    VirtualBuild build = build(2);
    double stop = 14 * build.chain().scale();
    VirtualTable table =
        new VirtualTable(build, 2, VirtualTable.plan(1.0))
            .spoiled(
                (s, heated_s) ->
                    new VirtualSample(
                        s.time_s(), Math.min(stop, s.signal()), s.air_K(), s.supply_V()))
            .until(1);
    table.waits(700);
    assertThat(table.troubles).containsExactly(Trouble.Kind.SATURATED);
  }

  @Test
  void mainsInTheSignalIsTold() {
    VirtualBuild build = build(3);
    double ripple = 0.3 * build.chain().scale();
    VirtualTable table =
        new VirtualTable(build, 3, VirtualTable.plan(1.0))
            .spoiled(
                (s, heated_s) ->
                    new VirtualSample(
                        s.time_s(),
                        s.signal() + (heated_s > 300 ? ripple * Math.sin(1.9 * s.time_s()) : 0),
                        s.air_K(),
                        s.supply_V()))
            .until(1);
    table.waits(300);
    assertThat(table.troubles).isEmpty();
    table.waits(300);
    assertThat(table.troubles).containsExactly(Trouble.Kind.MAINS);
  }

  @Test
  void draughtInAStillStretchIsTold() {
    VirtualTable table = table(5, 1.0).until(1).waits(1500);
    assertThat(table.troubles).isEmpty();
    table.breeze(0.3).waits(120);
    assertThat(table.troubles).containsExactly(Trouble.Kind.DRAUGHT);
  }

  @Test
  void changedSupplyIsTold() {
    VirtualTable table =
        table(5, 1.0)
            .spoiled(
                (s, heated_s) ->
                    new VirtualSample(
                        s.time_s(),
                        s.signal(),
                        s.air_K(),
                        s.supply_V() - (heated_s > 400 ? 0.1 : 0)))
            .until(1);
    table.waits(395);
    assertThat(table.troubles).isEmpty();
    table.waits(60);
    assertThat(table.troubles).containsExactly(Trouble.Kind.SUPPLY_CHANGED);
  }

  @Test
  void warmUpThatNeverFlattensIsToldAndDoesNotKeepThePersonWaiting() {
    VirtualBuild build = build(5);
    VirtualHeater h = build.heater();
    VirtualHeater creeping =
        new VirtualHeater(h.resistance_ohm(), h.supply_V(), 0.5, h.node_J_K(), h.link_W_K());
    VirtualBuild odd =
        new VirtualBuild(
            build.heated(), build.reference(), creeping, build.chain(), build.arm(), CALM);
    VirtualTable table =
        new VirtualTable(odd, 5, VirtualTable.plan(1.0))
            .spoiled(
                (s, heated_s) -> new VirtualSample(s.time_s(), s.signal(), s.air_K(), h.supply_V()))
            .until(1);
    table.waits(3200);
    assertThat(table.troubles).containsExactly(Trouble.Kind.NEVER_FLAT);
    assertThat(table.next().action()).isEqualTo(Action.SPIN_NOW);
  }

  @Test
  void unsteadyArmIsTold() {
    VirtualTable table = table(5, 1.0).until(2).waits(30);
    table.guide.steadiness(new Steadiness(0.9, 0.05, 0.01, 0.02));
    assertThat(table.next().troubles()).isEmpty();
    table.guide.steadiness(new Steadiness(0.9, 0.05, 0.01, 0.08));
    assertThat(table.next().troubles())
        .extracting(Trouble::kind)
        .containsExactly(Trouble.Kind.UNSTEADY_ARM);
  }

  /** Two time constants of this instrument are more than an hour: nobody turns that long. */
  @Test
  void spinOfASlowInstrumentEndsAtOneAndAHalfTimesItsPlan() {
    Plan plan = VirtualTable.plan(1.0);
    LiveGuide guide = new LiveGuide(plan, new ExpectedCourse(0, 0.01, 1 / 4000.0, 1 / 4000.0));
    guide.read(reading(0));
    guide.did(300);
    guide.read(reading(3300));
    guide.did(3300);
    assertThat(guide.at()).isEqualTo(2);
    assertThat(plan.steps().get(2).duration_s()).isEqualTo(500);
    assertThat(guide.read(reading(3310)).more_s()).hasValue(740);
    assertThat(guide.read(reading(4049)).action()).isEqualTo(Action.KEEP_TURNING);
    assertThat(guide.read(reading(4050)).action()).isEqualTo(Action.STOP);
  }

  private static LiveReading reading(double time_s) {
    return new LiveReading(time_s, 1, OptionalDouble.of(5));
  }

  @Test
  void nothingGoesPastThePersonByItself() {
    VirtualTable table = table(2, 1.0).waits(2000);
    assertThat(table.guide.advice().action()).isEqualTo(Action.SWITCH_ON);
    table.until(2).waits(2000);
    assertThat(table.guide.advice().action()).isEqualTo(Action.STOP);
    assertThat(table.guide.advice().step().map(PlannedStep::kind)).contains(PlannedStep.Kind.SPIN);
  }

  @Test
  void noisyBenchWithACarryingArmRaisesNoFalseAlarm() {
    VirtualBuild build = build(17);
    VirtualArm arm =
        new VirtualArm(
            0.001,
            0.001,
            0.03,
            0.003,
            new VirtualArm.Carried(0.05, 40, 40, 0),
            new VirtualArm.Inertia(2, 1.5));
    VirtualTable table =
        new VirtualTable(build.on(arm), 17, VirtualTable.plan(2.5, 0.1)).toTheEnd();
    assertThat(table.troubles).isEmpty();
  }
}
