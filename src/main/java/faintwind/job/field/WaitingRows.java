package faintwind.job.field;

import faintwind.files.run.LogRow;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * Rows of a log that wait for their speeds, in order. One thread adds them and hands them over many
 * at a time, another takes them.
 */
final class WaitingRows {
  private final Queue<List<LogRow>> handedOver = new ConcurrentLinkedQueue<>();
  private List<LogRow> added = new ArrayList<>();
  private Iterator<LogRow> taken = Collections.emptyIterator();

  void add(LogRow row) {
    added.add(row);
  }

  /** Those added so far may be taken. */
  void handOver() {
    handedOver.add(added);
    added = new ArrayList<>(added.size());
  }

  /** The next of those handed over. */
  LogRow take() {
    while (!taken.hasNext()) {
      taken = handedOver.remove().iterator();
    }
    return taken.next();
  }
}
