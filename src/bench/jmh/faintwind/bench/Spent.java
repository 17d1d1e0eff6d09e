package faintwind.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * Processor time of the measuring thread in one iteration: other work on the machine lengthens it
 * far less than the clock's.
 */
@State(Scope.Thread)
public class Spent {
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private long begun_ns;
  private long done;

  /** Counts rows or runs that were done. */
  public void on(long count) {
    done += count;
  }

  @Setup(Level.Iteration)
  public void begin() {
    done = 0;
    begun_ns = threads.getCurrentThreadCpuTime();
  }

  /** Prints it for src/bench/kernels.sh. */
  @TearDown(Level.Iteration)
  public void end() {
    double spent_us = 1e-3 * (threads.getCurrentThreadCpuTime() - begun_ns);
    System.out.printf("%nprocessor %.4f us each%n", spent_us / done);
  }
}
