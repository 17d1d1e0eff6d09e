package faintwind.job.live;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/**
 * Lets the first few of a kind of news through, then one in ten seconds: a source that garbles
 * every line must not flood whoever listens.
 */
final class NewsGate {
  private static final int FREE = 3;
  private static final Duration EVERY = Duration.ofSeconds(10);

  private final Map<String, Integer> told = new HashMap<>();
  private final Map<String, Instant> last = new HashMap<>();

  /** Whether news of this kind may be told now. */
  boolean opens(String kind, Instant at) {
    int count = told.merge(kind, 1, (a, b) -> Math.min(a + b, FREE + 1));
    Instant before = last.getOrDefault(kind, Instant.MIN);
    if (count <= FREE || !at.isBefore(before.plus(EVERY))) {
      last.put(kind, at);
      return true;
    }
    return false;
  }
}
