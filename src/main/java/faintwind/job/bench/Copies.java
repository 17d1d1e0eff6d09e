package faintwind.job.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Folders that were copied: two with the same beginning. Nobody can tell which one goes on. */
public final class Copies {
  private Copies() {}

  /**
   * The others with the same beginning, for each that has some.
   *
   * @param beginning of one of them; blank where it is not known, and like that of none
   */
  public static <T> Map<T, List<T>> of(List<T> all, Function<T, String> beginning) {
    Map<String, List<T>> same = new HashMap<>();
    for (T one : all) {
      String begins = beginning.apply(one);
      if (!begins.isBlank()) {
        same.computeIfAbsent(begins, line -> new ArrayList<>()).add(one);
      }
    }
    Map<T, List<T>> others = new HashMap<>();
    for (List<T> alike : same.values()) {
      if (alike.size() > 1) {
        alike.forEach(
            one -> others.put(one, alike.stream().filter(other -> !other.equals(one)).toList()));
      }
    }
    return others;
  }
}
