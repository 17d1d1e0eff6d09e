package faintwind.ui.work;

import faintwind.job.JobWatch;
import java.io.IOException;

/** A job as {@link Background} runs it, off the JavaFX thread. */
@FunctionalInterface
public interface Work<T> {
  T run(JobWatch watch) throws IOException;
}
