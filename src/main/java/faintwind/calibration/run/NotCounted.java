package faintwind.calibration.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What of a run does not count in a fit, because a person said so: the whole run, or stretches of
 * its recording. The arm's motion counts either way, since a later run begins where it ended.
 *
 * @param stretches on the recording's clock; {@link #ALL} is one without ends
 */
public record NotCounted(List<Stretch> stretches) {
  /** The word for a whole run in a runs table. */
  public static final String WORD_ALL = "all";

  private static final String REASON = "left out: ";
  private static final String BETWEEN = "; ";

  public static final NotCounted NOTHING = new NotCounted(List.of());

  /** The whole run. */
  public static final NotCounted ALL =
      new NotCounted(List.of(new Stretch(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)));

  public NotCounted {
    stretches = List.copyOf(stretches);
  }

  /** From a time to a later one, s. */
  public record Stretch(double from_s, double to_s) {
    boolean covers(double time_s) {
      return time_s >= from_s && time_s <= to_s;
    }
  }

  public boolean isNothing() {
    return stretches.isEmpty();
  }

  public boolean isAll() {
    return stretches.stream().anyMatch(s -> Double.isInfinite(s.from_s));
  }

  /** The note of a run with the reason in it, or without one where nothing is left out. */
  public String noted(String note, String reason) {
    List<String> parts = new ArrayList<>(List.of(note.split(BETWEEN, -1)));
    parts.removeIf(part -> part.isBlank() || part.startsWith(REASON));
    if (!isNothing()) {
      parts.add(REASON + reason.replace(';', ','));
    }
    return String.join(BETWEEN, parts);
  }

  /** The reason that a note gives; empty where it gives none. */
  public static String reasonIn(String note) {
    return Arrays.stream(note.split(BETWEEN, -1))
        .filter(part -> part.startsWith(REASON))
        .map(part -> part.substring(REASON.length()))
        .findFirst()
        .orElse("");
  }

  /** With one stretch more. */
  public NotCounted with(Stretch more) {
    List<Stretch> all = new ArrayList<>(stretches);
    all.add(more);
    return new NotCounted(all);
  }

  /** The readings that count; empty where none are left. */
  public Optional<Series> of(Series signal) {
    double[] times = new double[signal.size()];
    double[] values = new double[signal.size()];
    int count = 0;
    for (int i = 0; i < signal.size(); i++) {
      double time_s = signal.time_s(i);
      if (stretches.stream().noneMatch(s -> s.covers(time_s))) {
        times[count] = time_s;
        values[count++] = signal.value(i);
      }
    }
    return count == 0
        ? Optional.empty()
        : Optional.of(Series.of(Arrays.copyOf(times, count), Arrays.copyOf(values, count)));
  }
}
