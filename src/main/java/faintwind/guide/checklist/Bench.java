package faintwind.guide.checklist;

import java.util.List;
import java.util.Optional;

/**
 * What a step needs of the things on the bench, and what it does to them.
 *
 * @param asks what must be true, or must not be, when the step begins
 * @param during what is true, or not, while its readings are taken, where that differs from what it
 *     leaves
 * @param leaves what is true, or no longer true, when its readings are taken and afterwards
 */
public record Bench(List<Mark> asks, List<Mark> during, List<Mark> leaves) {
  private static final String NOT = "not ";

  public Bench {
    asks = List.copyOf(asks);
    during = List.copyOf(during);
    leaves = List.copyOf(leaves);
  }

  /** A fact that holds, or one that does not. */
  public record Mark(BenchFact fact, boolean holds) {
    /** The mark of a word such as {@code power-on} or {@code not power-on}. */
    public static Optional<Mark> ofWord(String word) {
      boolean not = word.startsWith(NOT);
      return BenchFact.ofWord(not ? word.substring(NOT.length()) : word)
          .map(fact -> new Mark(fact, !not));
    }

    /** The word in data files. */
    public String word() {
      return (holds ? "" : NOT) + fact.word();
    }
  }
}
