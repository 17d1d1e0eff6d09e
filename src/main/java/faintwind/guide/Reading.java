package faintwind.guide;

import faintwind.message.Amount;
import faintwind.record.ReadingVerdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A number that a step asks for.
 *
 * @param id unique in the checklist
 * @param label what is measured, and between what
 * @param unit symbol of the unit it is judged in
 * @param expected what to expect, in words; may hold {@code {values}}
 * @param bands verdicts, the first that holds counts
 */
public record Reading(
    String id, String label, String unit, String expected, List<ReadingBand> bands) {
  /**
   * What stands for a number beyond every range: far above any quantity of the instrument in any
   * unit it is judged in.
   */
  public static final double BEYOND = 1e30;

  public Reading {
    bands = List.copyOf(bands);
  }

  /** The verdict with the words that go with it. */
  public record Judgement(ReadingVerdict verdict, String words) {}

  /** The name under which formulas know this reading. */
  public String name() {
    return "reading_" + id.replace('-', '_');
  }

  /** Every name its bands use, without {@code value}. */
  public Set<String> names() {
    Set<String> names = new TreeSet<>();
    bands.forEach(band -> names.addAll(band.when().names()));
    names.remove("value");
    return names;
  }

  /**
   * Judges an amount. A limit ({@code > 20 M}) is judged at both ends of what it allows and the
   * worse verdict counts. An amount that no band speaks of is a stop.
   *
   * @param values of the design and the other readings, by name
   * @return empty where a band needs a value that is not known
   */
  public Optional<Judgement> judge(Amount amount, Map<String, Double> values) {
    double value = Math.min(amount.value(), BEYOND);
    double other =
        switch (amount.bound()) {
          case EXACT, OVER_RANGE -> value;
          case AT_LEAST -> BEYOND;
          case AT_MOST -> 0;
        };
    Optional<Judgement> here = judge(value, values);
    Optional<Judgement> there = judge(other, values);
    if (here.isEmpty() || there.isEmpty()) {
      return Optional.empty();
    }
    return there.get().verdict().compareTo(here.get().verdict()) > 0 ? there : here;
  }

  private Optional<Judgement> judge(double value, Map<String, Double> values) {
    Map<String, Double> all = new HashMap<>(values);
    all.put("value", value);
    for (ReadingBand band : bands) {
      Optional<Boolean> holds = band.when().holds(all);
      if (holds.isEmpty()) {
        return Optional.empty();
      }
      if (holds.get()) {
        return Optional.of(new Judgement(band.verdict(), band.words()));
      }
    }
    return Optional.of(new Judgement(ReadingVerdict.STOP, ""));
  }
}
