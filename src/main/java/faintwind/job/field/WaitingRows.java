package faintwind.job.field;

import faintwind.files.run.LogRow;

/**
 * Rows on their way from the thread that reads them to the one that writes them, in chunks. One
 * thread adds, one takes. Without locks: whoever takes a row has learnt of it from a task that was
 * handed on after it had been added.
 */
final class WaitingRows {
  private static final int CHUNK = 512;

  private Chunk last = new Chunk();
  private Chunk first = last;
  private int added;
  private int taken;

  void add(LogRow row) {
    if (added == CHUNK) {
      Chunk next = new Chunk();
      last.next = next;
      last = next;
      added = 0;
    }
    last.rows[added++] = row;
  }

  /** The row that was added first of those not yet taken. */
  LogRow remove() {
    if (taken == CHUNK) {
      first = first.next;
      taken = 0;
    }
    return first.rows[taken++];
  }

  private static final class Chunk {
    private final LogRow[] rows = new LogRow[CHUNK];
    private Chunk next = this;
  }
}
