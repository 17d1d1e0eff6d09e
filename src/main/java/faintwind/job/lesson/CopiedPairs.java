package faintwind.job.lesson;

import faintwind.job.bench.Copies;
import faintwind.message.Messages;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Pairs whose folders are copies: both are told, and neither is judged. A pair that was copied to a
 * folder that is none of the class stays as it is.
 */
final class CopiedPairs {
  private CopiedPairs() {}

  static List<PairLook> told(List<PairLook> pairs, List<PairLook> strangers, Messages words) {
    List<PairLook> all = Stream.concat(pairs.stream(), strangers.stream()).toList();
    Map<PairLook, List<PairLook>> copies =
        Copies.of(all, pair -> pair.known().map(PairLook.Known::origin).orElse(""));
    return all.stream()
        .map(pair -> told(pair, copies.getOrDefault(pair, List.of()), words))
        .toList();
  }

  private static PairLook told(PairLook pair, List<PairLook> others, Messages words) {
    boolean original =
        pair.pair().number() > 0 && others.stream().allMatch(other -> other.pair().number() == 0);
    if (others.isEmpty() || original) {
      return pair;
    }
    String folders =
        others.stream().map(other -> other.pair().folder()).collect(Collectors.joining(", "));
    return new PairLook(
        pair.pair(),
        pair.label(),
        Optional.of(words.text("class.copy", folders)),
        pair.remarks(),
        pair.known());
  }
}
