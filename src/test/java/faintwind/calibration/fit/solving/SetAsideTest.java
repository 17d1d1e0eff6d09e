package faintwind.calibration.fit.solving;

import static faintwind.calibration.fit.solving.HealthyFit.FIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.health.HeatBlock;
import faintwind.calibration.fit.health.RunHealth;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SetAsideTest {
  private static RunHealth rest(String run, double ratio) {
    HeatBlock block = new HeatBlock(HeatBlock.Phase.BEFORE, 0, 140, ratio, 0.003, 0, 20);
    return new RunHealth(run, List.of(block));
  }

  private static List<RunHealth> rests(double... ratios) {
    List<RunHealth> runs = new ArrayList<>();
    for (double ratio : ratios) {
      runs.add(rest("run " + (runs.size() + 1), ratio));
    }
    return runs;
  }

  @Test
  void aLastingChangeOfTheHeatNamesTheRunsOnBothSides() {
    SetAside.Change change = SetAside.heatChange(rests(1, 1, 1, 1.1, 1.1)).orElseThrow();
    assertThat(change.before()).containsExactly("run 1", "run 2", "run 3");
    assertThat(change.after()).containsExactly("run 4", "run 5");
    assertThat(change.size()).isCloseTo(0.1, within(1e-9));
    assertThat(SetAside.heatChange(rests(1, 1, 1, 1, 1))).isEmpty();
  }

  @Test
  void theFewerRunsAreTheOddOnes() {
    assertThat(new SetAside.Change(List.of("a", "b"), List.of("c"), 0.1).fewer())
        .containsExactly("c");
    assertThat(new SetAside.Change(List.of("a"), List.of("b", "c"), 0.1).fewer())
        .containsExactly("a");
    assertThat(new SetAside.Change(List.of("a"), List.of("b"), 0.1).fewer()).containsExactly("b");
  }

  /** By hand: four hundredths, and twice their scatter. */
  @Test
  void speedsOffByOneFactorAgree() {
    assertThat(new SetAside.Speeds(0.05, 0.02).agree()).isTrue();
    assertThat(new SetAside.Speeds(-0.05, 0.02).agree()).isTrue();
    assertThat(new SetAside.Speeds(0.05, 0.026).agree()).isFalse();
    assertThat(new SetAside.Speeds(0.039, 0.001).agree()).isFalse();
  }

  @Test
  void speedsAreTheMeanAndScatterOfTheFit() {
    double one = HealthyFit.value("speed spin01");
    double two = HealthyFit.value("speed spin02");
    SetAside.Speeds speeds = SetAside.Speeds.of(FIT, List.of("spin01", "spin02"));
    assertThat(speeds.mean()).isCloseTo((one + two) / 2, within(1e-12));
    assertThat(speeds.scatter()).isCloseTo(Math.abs(one - two) / Math.sqrt(2), within(1e-12));
  }

  @Test
  void nothingIsWrongWithHealthyRuns() {
    assertThat(SetAside.recordings(FIT)).isEmpty();
    assertThat(SetAside.wild(FIT)).isEmpty();
    assertThat(SetAside.speedChange(FIT)).isEmpty();
    assertThat(SetAside.speedsScatter(FIT)).isFalse();
    assertThat(SetAside.shift_s(FIT, HealthyFit.run("spin01"))).isEmpty();
  }

  @Test
  void turnedRunsComeInOrderOfTimeAndOfSpeed() {
    assertThat(SetAside.turned(FIT))
        .containsExactly("spin01", "spin02", "spin03", "spin04", "spin05", "spin06", "spin07");
    assertThat(SetAside.bySpeed(FIT))
        .containsExactly("spin04", "spin06", "spin02", "spin07", "spin01", "spin03", "spin05");
    FitResult without = FIT.withoutRuns(Set.of("spin03"));
    assertThat(SetAside.turned(without)).doesNotContain("spin03").hasSize(6);
    assertThat(SetAside.bySpeed(without)).doesNotContain("spin03").hasSize(6);
  }

  /** The simulation puts in no fault but a slight draught, which takes up to 5 % at rest. */
  @Test
  void healthyRunsTakeTheHeatThatTheirHeaterGives() {
    List<RunHealth> health = SetAside.health(FIT);
    assertThat(health).extracting(RunHealth::run).contains("still", "spin01", "spin07");
    int blocks = 0;
    for (RunHealth run : health) {
      for (HeatBlock block : run.blocks()) {
        boolean turns = block.phase() == HeatBlock.Phase.TURNING;
        assertThat(block.ratio()).isBetween(1 - (turns ? 4 * block.u() : 0.055), 1 + 4 * block.u());
        assertThat(block.to_s() - block.from_s()).isBetween(50.0, 160.0);
        assertThat(block.u()).isBetween(0.003, 0.05);
        blocks++;
      }
    }
    assertThat(blocks).isGreaterThan(20);
  }

  /** Settling for 25 s after a start or stop, so that no block lies within it. */
  @Test
  void blocksKeepAwayFromStartsAndStops() {
    double start_s = HealthyFit.run("spin02").arm().orElseThrow().spinStart_s();
    double stop_s = HealthyFit.run("spin02").arm().orElseThrow().spinStop_s();
    RunHealth health =
        SetAside.health(FIT).stream()
            .filter(r -> r.run().equals("spin02"))
            .findFirst()
            .orElseThrow();
    assertThat(health.blocks()).extracting(HeatBlock::phase).contains(HeatBlock.Phase.TURNING);
    for (HeatBlock block : health.blocks()) {
      boolean turning = block.phase() == HeatBlock.Phase.TURNING;
      if (turning) {
        assertThat(block.from_s()).isGreaterThanOrEqualTo(start_s + 20);
        assertThat(block.to_s()).isLessThanOrEqualTo(stop_s + 1);
      } else if (block.phase() == HeatBlock.Phase.AFTER) {
        assertThat(block.from_s()).isGreaterThanOrEqualTo(stop_s + 20);
      }
    }
  }
}
