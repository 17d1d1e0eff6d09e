package faintwind.bench;

import faintwind.calibration.fit.judging.MonteCarlo;
import faintwind.calibration.fit.judging.Refits;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualDraw;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Processor seconds of a fit and of refits as the runs grow from 5 to 50, on a made-up build. After
 * {@code mvn test-compile}: {@code java -cp 'target/classes:target/test-classes:target/lib/*'
 * src/bench/java/faintwind/bench/FitGrowth.java}
 */
public final class FitGrowth {
  private static final long SEED = 3003;
  private static final int REFITS = 20;

  private static long steps;

  private FitGrowth() {}

  /** The first number of runs is done twice: once to warm up. */
  public static void main(String[] arguments) {
    for (int spins : new int[] {5, 5, 10, 20, 50}) {
      RunSet set =
          VirtualRehearsal.calibration(VirtualDraw.build(SEED), plan(spins), SEED).runSet();
      steps = 0;
      double begun = own_s();
      FitResult fit =
          FitToRuns.fit(set, FitGrowth::count)
              .fold(
                  (ok, notes) -> ok,
                  problems -> {
                    throw new IllegalStateException(problems.toString());
                  });
      double fitted = own_s();
      long fitSteps = steps;
      steps = 0;
      Refits refits = new Refits(fit);
      for (int i = 0; i < REFITS; i++) {
        refits.draw(MonteCarlo.seedOf(1, i), FitGrowth::count);
      }
      double refitted = own_s();
      System.out.printf(
          "%d spins: fit %.2f s, %d steps, %.1f ms a step; refit %.1f ms, %.1f steps%n",
          spins,
          fitted - begun,
          fitSteps,
          1000 * (fitted - begun) / fitSteps,
          1000 * (refitted - fitted) / REFITS,
          (double) steps / REFITS);
    }
  }

  private static boolean count() {
    steps++;
    return false;
  }

  /** Speeds from 0.1 to 3 m/s in even ratios, each a recording of its own. */
  private static VirtualPlan plan(int spins) {
    List<VirtualPlan.Spin> all =
        IntStream.range(0, spins)
            .mapToDouble(i -> 0.1 * Math.pow(30, (double) i / (spins - 1)))
            .mapToObj(v -> new VirtualPlan.Spin(v, v < 0.5 ? 0.3 : v < 2 ? 0.6 : 0.9, Direction.CW))
            .toList();
    return new VirtualPlan(all, VirtualPlan.Way.SEPARATE, 600, 3000, 400);
  }

  private static double own_s() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() * 1e-9;
  }
}
