package faintwind.job.formula;

import faintwind.job.JobWatch;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Tells from the first seconds on how much of a calibration is over: by its steps while the models
 * are fitted, by its refits after that.
 */
final class FitSteps implements JobWatch {
  /**
   * Steps of the fit of all models: half of the sample benches need fewer (274 to 1247, ten
   * benches).
   */
  private static final double USUAL_STEPS = 480;

  /** A refit takes as long as so many steps of the fit: three and a half, on two threads. */
  private static final double STEPS_A_REFIT = 1.75;

  /** However long the fit takes, it is not over before it is. */
  private static final double NEARLY = 0.95;

  private final JobWatch watch;
  private final double fitShare;
  private final AtomicLong steps = new AtomicLong();
  private volatile boolean fitting;

  FitSteps(JobWatch watch, int refits) {
    this.watch = watch;
    this.fitShare = USUAL_STEPS / (USUAL_STEPS + STEPS_A_REFIT * refits);
  }

  @Override
  public void progress(String stage, long done, long total) {
    fitting = stage.equals("fit");
    if (stage.equals("refits") && total > 0) {
      watch.share(fitShare + (1 - fitShare) * done / total);
    }
    watch.progress(stage, done, total);
  }

  @Override
  public void settles(long done, double value) {
    watch.settles(done, value);
  }

  @Override
  public boolean cancelled() {
    if (fitting) {
      double part = steps.incrementAndGet() / USUAL_STEPS;
      watch.share(fitShare * (part < NEARLY ? part : 1 - (1 - NEARLY) * NEARLY / part));
    }
    return watch.cancelled();
  }
}
