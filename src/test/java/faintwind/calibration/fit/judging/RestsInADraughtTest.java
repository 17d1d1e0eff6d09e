package faintwind.calibration.fit.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.health.HeatBlock;
import faintwind.calibration.fit.health.HeatBlock.Phase;
import faintwind.calibration.fit.health.RunHealth;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.solving.SetAside;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import faintwind.calibration.virtual.VirtualRoom;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Runs of a room whose draught the fit found are held against rest in it (seed 518)")
class RestsInADraughtTest {
  private static final long SEED = 518;

  @Test
  void soundRestsTakeTheHeatThatIsExpected() {
    FitResult fit = SampleRuns.value(FitToRuns.fit(runs(), () -> false));
    assertThat(fit.draught_m_s()).isBetween(0.012, 0.03);
    for (RunHealth run : SetAside.health(fit)) {
      List<HeatBlock> rests =
          run.blocks().stream().filter(block -> block.phase() != Phase.TURNING).toList();
      double mean = rests.stream().mapToDouble(HeatBlock::ratio).average().orElse(1);
      assertThat(mean).as(run.run()).isCloseTo(1, within(0.025));
    }
    assertThat(Diagnosis.runsContradict(fit, runs())).isFalse();
  }

  private static RunSet runs() {
    VirtualBuild build = VirtualDraw.build(SEED);
    VirtualRoom room = build.room();
    VirtualBuild draughty =
        build.in(new VirtualRoom(room.air(), room.drift_K_h(), room.wander_K(), 0.02));
    return VirtualRehearsal.calibration(draughty, VirtualPlan.inTurn(SEED), SEED).runSet();
  }
}
