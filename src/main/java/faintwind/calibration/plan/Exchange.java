package faintwind.calibration.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Chooses some of many so that a cost is least: begins evenly spread and exchanges one at a time
 * while that helps (Fedorov's exchange, in its coordinate form, from memory). It may stop at a
 * choice that no single exchange betters; a test compares it with trying every choice.
 */
final class Exchange {
  private Exchange() {}

  /**
   * The choice.
   *
   * @param many how many there are to choose from
   * @param some how many to choose, from 1 to {@code many}
   * @param cost of a choice of indices, rising
   */
  static List<Integer> choose(int many, int some, ToDoubleFunction<List<Integer>> cost) {
    if (some < 1 || some > many) {
      throw new IllegalArgumentException("some = " + some + ", allowed 1 to " + many);
    }
    List<Integer> best = new ArrayList<>();
    for (int i = 0; i < some; i++) {
      best.add(some == 1 ? many / 2 : (int) Math.round(i * (many - 1.0) / (some - 1)));
    }
    double least = cost.applyAsDouble(best);
    boolean better = true;
    while (better) {
      better = false;
      for (int place = 0; place < some; place++) {
        for (int other = 0; other < many; other++) {
          List<Integer> next = exchanged(best, place, other);
          double now = next.isEmpty() ? Double.POSITIVE_INFINITY : cost.applyAsDouble(next);
          if (now < least * (1 - 1e-9)) {
            least = now;
            best = next;
            better = true;
          }
        }
      }
    }
    return best;
  }

  /** Empty where the other is chosen already. */
  private static List<Integer> exchanged(List<Integer> chosen, int place, int other) {
    if (chosen.contains(other)) {
      return List.of();
    }
    List<Integer> next = new ArrayList<>(chosen);
    next.set(place, other);
    next.sort(null);
    return next;
  }
}
