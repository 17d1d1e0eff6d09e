package faintwind.calibration.pool;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SameClassTest {
  private static RunSet turned(double ball_m, double... radii_m) {
    List<Run> runs = new ArrayList<>();
    for (double radius_m : radii_m) {
      ArmTurning arm =
          new ArmTurning(
              Uncertain.of(radius_m, 0.001), 10, Uncertain.of(60, 0.3), 0, 60, Optional.empty());
      runs.add(run(RunKind.SPIN, Optional.of(arm)));
    }
    return set(ball_m, runs);
  }

  private static RunSet set(double ball_m, List<Run> runs) {
    BuildFacts facts =
        new BuildFacts(
            Optional.of(Uncertain.of(ball_m)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            BuildFacts.Wires.NOT_KNOWN);
    return new RunSet(runs, SignalChain.AS_IS, Optional.of(facts));
  }

  private static Run run(RunKind kind, Optional<ArmTurning> arm) {
    Series signal = Series.of(new double[] {0, 60}, new double[] {20, 20});
    RunConditions room =
        new RunConditions(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            "");
    return new Run(
        "run",
        kind,
        "run.csv",
        Recording.of(SignalUnit.DELTA_K, signal),
        room,
        arm,
        Optional.empty());
  }

  private static List<String> trouble(RunSet... sets) {
    Map<String, RunSet> named = new LinkedHashMap<>();
    for (RunSet set : sets) {
      named.put("pair " + (named.size() + 1), set);
    }
    return SameClass.trouble(named).stream()
        .map(problem -> problem.where().file().orElse("") + " " + problem.id())
        .toList();
  }

  @Test
  void oneDesignOnOneArmShares() {
    assertThat(trouble(turned(0.0127, 0.3, 0.6), turned(0.0127, 0.302), turned(0.0127, 0.6)))
        .isEmpty();
  }

  @Test
  void anotherArmIsNamed() {
    assertThat(trouble(turned(0.0127, 0.3, 0.6), turned(0.0127, 0.3, 0.6), turned(0.0127, 0.45)))
        .containsExactly("pair 3 pool.other-arm");
  }

  @Test
  void anotherDesignIsNamed() {
    assertThat(trouble(turned(0.0127, 0.3), turned(0.01, 0.3), turned(0.0127, 0.3)))
        .containsExactly("pair 2 pool.other-design");
  }

  @Test
  void withoutAnArmNothingIsShared() {
    RunSet still = set(0.0127, List.of(run(RunKind.STILL, Optional.empty())));
    assertThat(trouble(turned(0.0127, 0.3), still, turned(0.0127, 0.3)))
        .containsExactly("pair 2 pool.no-arm");
  }
}
