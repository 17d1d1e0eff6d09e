package faintwind.job;

/** How a long job tells its progress and learns that it should stop. */
public interface JobWatch {

  /** Nobody watches; never cancelled. */
  JobWatch NOBODY =
      new JobWatch() {
        @Override
        public void progress(String stage, long done, long total) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  /**
   * Says how far the job has come.
   *
   * @param stage bundle key of what is going on, under {@code stage.}
   * @param done units finished
   * @param total units in all, 0 where not known
   */
  void progress(String stage, long done, long total);

  /** Whether the job should stop as soon as it can. */
  boolean cancelled();
}
