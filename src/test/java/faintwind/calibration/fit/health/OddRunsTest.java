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
    Step change = new OddRuns(runs).change().orElseThrow();
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
