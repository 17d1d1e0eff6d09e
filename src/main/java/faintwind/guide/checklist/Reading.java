package faintwind.guide.checklist;

import faintwind.message.Amount;
import faintwind.record.ReadingVerdict;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param tips where the tips of the meter go
 * @param recorded what it is in a recording of the logger
 */
public record Reading(
    String id,
    String label,
    String unit,
    String expected,
    List<ReadingBand> bands,
    Optional<Tips> tips,
    Optional<Recorded> recorded) {
  /**
   * What stands for a number beyond every range: far above any quantity of the instrument in any
   * unit it is judged in.
   */
  public static final double BEYOND = 1e30;

  /** In a band: the reading in its unit. */
  public static final String VALUE = "value";

  /** In a band: half-width of what the meter may be wrong by at this value, in the same unit. */
  public static final String METER_ERROR = "meter_error";

  public Reading {
    bands = List.copyOf(bands);
  }

  /** The verdict with the words that go with it. */
  public record Judgement(ReadingVerdict verdict, String words) {}

  /** The name under which formulas know this reading. */
  public String name() {
    return "reading_" + id.replace('-', '_');
  }

  /** The name under which remedies know what the meter may be wrong by in this reading. */
  public String errorName() {
    return "error_" + id.replace('-', '_');
  }

  /** The name under which remedies know the least it can be, where it showed over range. */
  public String leastName() {
    return "least_" + id.replace('-', '_');
  }

  /** Every name its bands use, without {@code value} and {@code meter_error}. */
  public Set<String> names() {
    Set<String> names = new TreeSet<>();
    bands.forEach(band -> names.addAll(band.when().names()));
    names.remove(VALUE);
    names.remove(METER_ERROR);
    return names;
  }

  /**
   * Judges an amount as if the meter were never wrong and had no end.
   *
   * @param values of the design and the other readings, by name
   * @return empty where a band needs a value that is not known
   */
  public Optional<Judgement> judge(Amount amount, Map<String, Double> values) {
    return judge(amount, values, Optional.empty());
  }

  /**
   * Judges an amount. A limit ({@code > 20 M}) is judged at both ends of what it allows and the
   * worse verdict counts. Over range is a limit too: more than the meter's largest range, and no
   * more is known. An amount that no band speaks of is a stop.
   *
   * @param values of the design and the other readings, by name
   * @param meter the meter that showed it
   * @return empty where a band needs a value that is not known
   */
  public Optional<Judgement> judge(
      Amount amount, Map<String, Double> values, Optional<MeterClass> meter) {
    double value =
        amount.bound() == Amount.Bound.OVER_RANGE
            ? meter.map(m -> m.top(unit).orElse(BEYOND)).orElse(BEYOND)
            : amount.value();
    double other =
        switch (amount.bound()) {
          case EXACT -> value;
          case AT_LEAST, OVER_RANGE -> BEYOND;
          case AT_MOST -> 0;
        };
    Optional<Judgement> here = judgeAt(value, values, meter);
    Optional<Judgement> there = other == value ? here : judgeAt(other, values, meter);
    if (here.isEmpty() || there.isEmpty()) {
      return Optional.empty();
    }
    return there.get().verdict().compareTo(here.get().verdict()) > 0 ? there : here;
  }

  /**
   * Whether no number is too large to be good, as of an insulation: there, ohms that are taken for
   * megohms would pass.
   */
  public boolean isOpenAbove(Map<String, Double> values) {
    return judgeAt(BEYOND, values, Optional.empty())
        .map(judged -> judged.verdict() == ReadingVerdict.GOOD)
        .orElse(true);
  }

  private Optional<Judgement> judgeAt(
      double value, Map<String, Double> values, Optional<MeterClass> meter) {
    double error = meterError(value, meter);
    Condition.Values named =
        name ->
            switch (name) {
              case VALUE -> value;
              case METER_ERROR -> error;
              default -> values.get(name);
            };
    for (ReadingBand band : bands) {
      Optional<Boolean> holds = band.when().holds(named);
      if (holds.isEmpty()) {
        return Optional.empty();
      }
      if (holds.get()) {
        return Optional.of(new Judgement(band.verdict(), band.words()));
      }
    }
    return Optional.of(new Judgement(ReadingVerdict.STOP, ""));
  }

  /** Half-width of what a meter may be wrong by at a value; 0 where it is not one of its units. */
  public double meterError(double value, Optional<MeterClass> meter) {
    return meter.map(m -> m.halfWidth(value, unit)).orElse(OptionalDouble.empty()).orElse(0);
  }
}
