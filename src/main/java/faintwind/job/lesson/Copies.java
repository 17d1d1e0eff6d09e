package faintwind.job.lesson;

import faintwind.message.Messages;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Folders that were copied: two with the same beginning. */
final class Copies {
  private final Messages words;

  Copies(Messages words) {
    this.words = words;
  }

  /** Of two folders with the same beginning one is a copy: both are told, and neither is judged. */
  List<PairLook> told(List<PairLook> pairs, List<PairLook> strangers) {
    Map<String, List<PairLook>> byOrigin = new HashMap<>();
    List<PairLook> all = Stream.concat(pairs.stream(), strangers.stream()).toList();
    for (PairLook pair : all) {
      pair.known()
          .ifPresent(k -> byOrigin.computeIfAbsent(k.origin(), o -> new ArrayList<>()).add(pair));
    }
    return all.stream().map(pair -> told(pair, byOrigin)).toList();
  }

  private PairLook told(PairLook pair, Map<String, List<PairLook>> byOrigin) {
    List<String> others =
        pair
            .known()
            .map(known -> Objects.requireNonNull(byOrigin.get(known.origin())))
            .orElse(List.of())
            .stream()
            .filter(other -> !other.equals(pair))
            .map(other -> other.pair().folder())
            .toList();
    boolean original =
        pair.pair().number() > 0 && others.stream().allMatch(o -> isStranger(o, byOrigin));
    return others.isEmpty() || original
        ? pair
        : new PairLook(
            pair.pair(),
            pair.label(),
            Optional.of(words.text("class.copy", String.join(", ", others))),
            pair.remarks(),
            pair.known());
  }

  private static boolean isStranger(String folder, Map<String, List<PairLook>> byOrigin) {
    return byOrigin.values().stream()
        .flatMap(List::stream)
        .anyMatch(p -> p.pair().folder().equals(folder) && p.pair().number() == 0);
  }
}
