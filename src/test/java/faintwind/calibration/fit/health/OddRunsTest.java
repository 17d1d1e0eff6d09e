package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.health.Ailment.Kind;
import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Runs are told odd by what their rests and their turning say together")
class OddRunsTest {
  /** Rests of sound runs, made up: a standard deviation of 0.6 %. */
  private static final double[] SOUND = {
    1.002, 0.996, 1.008, 1.001, 0.999, 0.994, 1.010, 1.004, 1.005, 1.002, 0.992, 1.007
  };

  private static final double BLOCK_S = 150;

  private static final double U = 0.003;

  @Test
  void theOneThatDiffersIsTheWorst() {
    OddRuns odd = of(1.05, 1.05, 1.15, 1.05, 1.05);
    assertThat(odd.worst()).contains("run 3");
    assertThat(odd.ailments(run("another", 1.05))).isEmpty();
    assertThat(odd.ailments(run("another", 1.155)).get(0).share()).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void theWorseOfTwoIsNamed() {
    assertThat(of(1, 1.1, 1, 1.2, 1, 1, 1).worst()).contains("run 4");
  }

  @Test
  void healthyRunsHaveNoWorst() {
    assertThat(of(1, 1.002, 0.998, 1.001, 1).worst()).isEmpty();
  }

  @Test
  void threeRunsAccuseNobody() {
    assertThat(of(1, 1, 1.2).worst()).isEmpty();
    assertThat(of(1, 1, 1, 1.2).worst()).isPresent();
  }

  @Test
  void aLastingChangeIsRelativeToTheMedian() {
    LastingChange change = of(2, 2, 2, 2.2, 2.2).change().orElseThrow();
    assertThat(change.from()).isEqualTo(3);
    assertThat(change.size()).isCloseTo(0.1, within(1e-12));
    assertThat(of(1, 1, 1, 1.01, 1.01).change()).isEmpty();
  }

  /** Three hundredths in one block at rest, and five of its uncertainties. */
  @Test
  void aBlockAtRestThatIsFarOffIsSeen() {
    OddRuns odd = of(1, 1, 1, 1);
    assertThat(odd.restsOff(run("a", 0.969))).isTrue();
    assertThat(odd.restsOff(run("a", 1.031))).isTrue();
    assertThat(odd.restsOff(run("a", 0.971))).isFalse();
    HeatBlock unsure = new HeatBlock(Phase.AFTER, 0, 140, 0.95, 0.0101, 0, 20);
    assertThat(odd.restsOff(new RunHealth("a", List.of(unsure)))).isFalse();
    HeatBlock turning = new HeatBlock(Phase.TURNING, 0, 140, 0.8, U, 0, 20);
    assertThat(odd.restsOff(new RunHealth("a", List.of(turning)))).isFalse();
  }

  @Test
  void runsThatRestAreListedInOrder() {
    HeatBlock turning = new HeatBlock(Phase.TURNING, 0, 140, 1, U, 0, 20);
    OddRuns odd =
        new OddRuns(List.of(run("b", 1), new RunHealth("turns", List.of(turning)), run("a", 1)));
    assertThat(odd.resting()).containsExactly("b", "a");
  }

  /**
   * Half of seven runs are 0.02 off: 1.4826 · 0.02 = 0.03, so that 0.05 is not sure, where the
   * speed of the turning is no surer.
   */
  @Test
  void scatteredRunsAccuseLess() {
    OddRuns wide = of(1, 1.02, 0.98, 1.02, 0.98, 1.03, 0.97);
    OddRuns close = of(1, 1, 1, 1, 1, 1, 1);
    assertThat(wide.ailments(run("a", 1.05, 0.03)))
        .extracting(Ailment::kind)
        .doesNotContain(Ailment.Kind.SCALE);
    assertThat(close.ailments(run("a", 1.05, 0.03)))
        .extracting(Ailment::kind)
        .contains(Ailment.Kind.SCALE);
  }

  @Test
  void aDraughtInTheLastRestsIsNoChangeOfTheBall() {
    List<RunHealth> runs = sound();
    runs.add(spin("spin13", 0.975, 1.001));
    runs.add(still("end", 0.977, 5));
    OddRuns odd = new OddRuns(runs);
    assertThat(odd.change()).isEmpty();
    assertThat(odd.worst()).isEmpty();
  }

  @Test
  void aBallThatStaysCoolerAtRestAndTurningHasChanged() {
    List<RunHealth> runs = sound();
    runs.add(spin("spin13", 0.975, 0.975));
    runs.add(still("end", 0.977, 5));
    LastingChange change = new OddRuns(runs).change().orElseThrow();
    assertThat(change.from()).isEqualTo(SOUND.length);
    assertThat(change.size()).isCloseTo(-0.026, within(0.003));
  }

  @Test
  void manyBlocksInOneDraughtAreNoSurerThanRunsScatter() {
    List<RunHealth> runs = sound();
    RunHealth draughty = still("still", 0.977, 12);
    runs.add(draughty);
    assertThat(new OddRuns(runs).ailments(draughty)).isEmpty();
  }

  @Test
  void aSupplyThatSaggedInOneRunIsFound() {
    List<RunHealth> runs = sound();
    RunHealth sagged = spin("spin13", 0.94, 0.94);
    runs.add(sagged);
    OddRuns odd = new OddRuns(runs);
    assertThat(odd.worst()).contains("spin13");
    assertThat(odd.ailments(sagged).get(0).kind()).isEqualTo(Kind.SCALE);
    assertThat(odd.ailments(sagged).get(0).share()).isCloseTo(-0.06, within(0.005));
  }

  @Test
  void aSupplyThatSaggedMidwayIsFoundWhereItBegan() {
    List<RunHealth> runs = sound();
    List<HeatBlock> blocks = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      blocks.add(block(Phase.BEFORE, i, i < 6 ? 1.0 : 0.96));
    }
    RunHealth sagged = new RunHealth("still", blocks);
    runs.add(sagged);
    assertThat(new OddRuns(runs).ailments(sagged))
        .filteredOn(ailment -> ailment.kind() == Kind.SCALE_STEP)
        .singleElement()
        .extracting(Ailment::from_s)
        .isEqualTo(6 * BLOCK_S);
  }

  private static RunHealth run(String name, double rest) {
    return run(name, rest, 0);
  }

  /** Two blocks at rest, two of turning and two at rest again, all of the same heat. */
  private static RunHealth run(String name, double rest, double u_speed) {
    List<HeatBlock> blocks = new ArrayList<>();
    for (int k = 0; k < 6; k++) {
      boolean turns = k == 2 || k == 3;
      Phase phase = turns ? Phase.TURNING : k < 2 ? Phase.BEFORE : Phase.AFTER;
      blocks.add(
          new HeatBlock(
              phase, 150 * k, 150 * k + 140, rest, U, turns ? u_speed : 0, turns ? 8 : 20));
    }
    return new RunHealth(name, blocks);
  }

  private static OddRuns of(double... rests) {
    List<RunHealth> runs = new ArrayList<>();
    for (double rest : rests) {
      runs.add(run("run " + (runs.size() + 1), rest));
    }
    return new OddRuns(runs);
  }

  private static List<RunHealth> sound() {
    List<RunHealth> runs = new ArrayList<>();
    for (int i = 0; i < SOUND.length; i++) {
      runs.add(spin("spin" + (i + 1), SOUND[i], 1 + (SOUND[i] - 1) / 4));
    }
    return runs;
  }

  /** Four blocks of turning, one of rest after it. */
  private static RunHealth spin(String name, double rest, double turning) {
    List<HeatBlock> blocks = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      blocks.add(block(Phase.TURNING, i, turning));
    }
    blocks.add(block(Phase.AFTER, 4, rest));
    return new RunHealth(name, blocks);
  }

  private static RunHealth still(String name, double rest, int count) {
    List<HeatBlock> blocks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      blocks.add(block(Phase.BEFORE, i, rest));
    }
    return new RunHealth(name, blocks);
  }

  private static HeatBlock block(Phase phase, int at, double ratio) {
    double u_run = phase == Phase.TURNING ? 0.003 : 0;
    return new HeatBlock(phase, at * BLOCK_S, (at + 1) * BLOCK_S, ratio, 0.004, u_run, 30);
  }
}
