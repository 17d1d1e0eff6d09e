package faintwind.ui.work;

import faintwind.job.JobWatch;
import java.time.Duration;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * One long job while it runs. The job's thread tells it the progress and asks whether to stop; the
 * JavaFX thread reads the one and sets the other.
 */
public final class Running implements JobWatch {
  private static final long SHOW_AFTER_NS = 300_000_000L;

  private final AtomicBoolean cancelled = new AtomicBoolean();
  private volatile Progress progress = new Progress("", 0, 0);
  private volatile double share;
  private final Queue<Settled> settling = new ConcurrentLinkedQueue<>();
  private final long startedNs;

  /**
   * How far a job has come.
   *
   * @param stage bundle key of what is going on; empty at the start
   * @param done units finished
   * @param total units in all, 0 where not known
   */
  public record Progress(String stage, long done, long total) {

    /** Share that is done, 0 to 1; 0 where the total is not known. */
    public double share() {
      return total <= 0 ? 0 : Math.min(1, done / (double) total);
    }
  }

  /**
   * A number that settles.
   *
   * @param done units finished
   * @param value the number by them
   */
  public record Settled(long done, double value) {}

  Running(long startedNs) {
    this.startedNs = startedNs;
  }

  @Override
  public void progress(String stage, long done, long total) {
    progress = new Progress(stage, done, total);
  }

  @Override
  public void share(double wholeShare) {
    share = wholeShare;
  }

  @Override
  public void settles(long done, double value) {
    settling.add(new Settled(done, value));
  }

  /** How a number settled so far; most jobs have none. */
  public List<Settled> settling() {
    return List.copyOf(settling);
  }

  /** Share of the whole job that is over, as far as can be told. */
  public double share() {
    return share > 0 ? share : latest().share();
  }

  @Override
  public boolean cancelled() {
    return cancelled.get();
  }

  /** Asks the job to stop as soon as it can. */
  public void cancel() {
    cancelled.set(true);
  }

  public Progress latest() {
    return progress;
  }

  /** Whether it has run long enough to be shown. */
  public boolean shows(long nowNs) {
    return nowNs - startedNs >= SHOW_AFTER_NS;
  }

  /** The rest in seconds if it goes on as so far; 0 where nothing can be said. */
  public Duration rest(long nowNs) {
    double over = share();
    if (over <= 0) {
      return Duration.ZERO;
    }
    double gone_ns = nowNs - startedNs;
    return Duration.ofNanos((long) (gone_ns * (1 - over) / over));
  }
}
