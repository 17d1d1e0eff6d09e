package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand: runs of four blocks at rest and two of turning, each run's heat as written here. */
class OddRunsByHandTest {
  private static final double U = 0.003;

  private static RunHealth run(String name, double rest) {
    return run(name, rest, 0);
  }

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
    Step change = of(2, 2, 2, 2.2, 2.2).change().orElseThrow();
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
}
