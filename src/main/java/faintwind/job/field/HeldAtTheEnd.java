package faintwind.job.field;

/**
 * Finds a logger's end of range in a log: the largest signal stands for many rows to the last
 * digit, while smaller ones tremble. In still air a signal trembles about its largest value, too;
 * where a logger's steps are coarse, smaller values stand as well; and a made-up log without noise
 * trembles nowhere. For one log and one thread.
 */
final class HeldAtTheEnd {
  /** Rows that the largest signal stands for without a break, and others beside (own choice). */
  private static final int LONG = 20;

  /** No other stands for so many (own choice). */
  private static final int SHORT = 5;

  /** Share of the other rows at which the signal turns round (own choice; noise alone: 2/3). */
  private static final double TREMBLES = 0.2;

  private double last = Double.NEGATIVE_INFINITY;
  private double largest = Double.NEGATIVE_INFINITY;
  private long stands;
  private long longest;
  private long longestOther;
  private long others;
  private long rows;
  private boolean rising;
  private long turns;

  /** The next signal, larger in still air than in wind. */
  void add(double signal) {
    stands = signal == last ? stands + 1 : 1;
    if (signal != last) {
      turns += rising == signal > last ? 0 : 1;
      rising = signal > last;
    }
    last = signal;
    if (signal > largest) {
      longestOther = Math.max(longestOther, longest);
      others += rows;
      largest = signal;
      longest = 0;
      rows = 0;
    }
    if (signal == largest) {
      longest = Math.max(longest, stands);
      rows++;
    } else {
      others++;
      longestOther = Math.max(longestOther, stands);
    }
  }

  boolean isThere() {
    boolean trembles = others >= LONG && turns >= TREMBLES * others;
    return longest >= LONG && longestOther < SHORT && trembles;
  }

  /** Rows with the largest signal. */
  long rows() {
    return rows;
  }

  /** The largest signal. */
  double largest() {
    return largest;
  }
}
