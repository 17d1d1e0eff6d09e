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

  /** Ends a part of a job with the whole, and says nothing of its own progress. */
  static JobWatch endedBy(JobWatch whole) {
    return new JobWatch() {
      @Override
      public void progress(String stage, long done, long total) {}

      @Override
      public boolean cancelled() {
        return whole.cancelled();
      }
    };
  }

  /**
   * Says how far the job has come.
   *
   * @param stage bundle key of what is going on, under {@code stage.}
   * @param done units finished
   * @param total units in all, 0 where not known
   */
  void progress(String stage, long done, long total);

  /**
   * Says how much of the whole job is over as far as can be told, whatever the stages count.
   *
   * @param share 0 to 1
   */
  default void share(double share) {}

  /**
   * A number that settles while the job goes on.
   *
   * @param done units finished
   * @param value the number by them
   */
  default void settles(long done, double value) {}

  /** Whether the job should stop as soon as it can. */
  boolean cancelled();
}
