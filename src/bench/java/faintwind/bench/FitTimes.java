package faintwind.bench;

import com.sun.management.OperatingSystemMXBean;
import faintwind.calibration.fit.judging.Choice;
import faintwind.calibration.fit.judging.ModelChoice;
import faintwind.calibration.fit.judging.MonteCarlo;
import faintwind.calibration.fit.judging.Refits;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.RunSet;
import faintwind.files.run.RunsTable;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * Processor seconds of a fit, of the fit with the choice among the models, and of 500 refits on one
 * thread, each with the number of its steps. The first round shows the cold start; compiling and
 * collecting threads count. After a build: {@code java -cp 'target/classes:target/lib/*'
 * src/bench/java/faintwind/bench/FitTimes.java ROUNDS RUNS.CSV...}
 */
public final class FitTimes {
  private static final int REFITS = 500;

  private static long steps;

  private FitTimes() {}

  /** So many rounds of every table. */
  public static void main(String[] arguments) throws Exception {
    for (int round = 1; round <= Integer.parseInt(arguments[0]); round++) {
      for (String table : List.of(arguments).subList(1, arguments.length)) {
        RunSet set = read(Path.of(table));
        String what = table + ", round " + round + ": ";
        timed(what + "fit", () -> FitToRuns.fit(set, FitTimes::count));
        Choice choice =
            timed(what + "fit with choice", () -> ModelChoice.choose(set, FitTimes::count))
                .fold((ok, notes) -> ok, problems -> refused(problems.toString()));
        List<double[]> draws = timed(what + REFITS + " refits", () -> refits(choice.fit()));
        System.out.println(MonteCarlo.summary(choice.fit(), draws, REFITS - draws.size(), 1));
      }
    }
  }

  private static boolean count() {
    steps++;
    return false;
  }

  private static List<double[]> refits(FitResult fit) {
    Refits refits = new Refits(fit);
    List<double[]> draws = new ArrayList<>();
    for (int i = 0; i < REFITS; i++) {
      Optional<double[]> draw = refits.draw(MonteCarlo.seedOf(1, i), FitTimes::count);
      draw.ifPresent(draws::add);
    }
    return draws;
  }

  private static RunSet read(Path table) throws IOException {
    return RunsTable.read(table)
        .fold((runs, notes) -> runs.runSet().counted(), problems -> refused(problems.toString()));
  }

  private static <T> T refused(String why) {
    throw new IllegalStateException(why);
  }

  private static <T> T timed(String what, Callable<T> work) throws Exception {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    steps = 0;
    long before = system.getProcessCpuTime();
    long own = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    T made = work.call();
    System.out.printf(
        "%s: %.2f s of a processor, %.2f s of its own thread, %d steps%n",
        what,
        (system.getProcessCpuTime() - before) * 1e-9,
        (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - own) * 1e-9,
        steps);
    return made;
  }
}
