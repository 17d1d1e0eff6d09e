package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.StepClock;
import faintwind.message.Amount;
import faintwind.message.NumberText;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the entered readings are judged to be now, with the design and the other readings as now.
 */
public final class Verdicts {
  private Verdicts() {}

  /** The judgement of the entry that counts; empty where there is none or it cannot be judged. */
  public static Optional<Reading.Judgement> of(
      Checklist checklist, Step step, Reading reading, Situation situation) {
    return situation
        .state()
        .reading(step.id(), reading.id())
        .flatMap(line -> of(reading, line, situation, values(checklist, reading, situation)));
  }

  private static Map<String, Double> values(
      Checklist checklist, Reading reading, Situation situation) {
    return reading.names().stream().allMatch(Situation::isSheetName)
        ? situation.sheetValues()
        : situation.values(checklist);
  }

  /**
   * The judgement of one entry, also of one that is struck through, by the meter that was in use
   * when it was made.
   *
   * @param values those of the situation, worked out once for many readings
   */
  public static Optional<Reading.Judgement> of(
      Reading reading,
      Standing<ReadingEntered> line,
      Situation situation,
      Map<String, Double> values) {
    return judge(reading, line.event().amount(), line.at(), situation, values);
  }

  /**
   * The judgement of an amount typed at a time. Over range that would be good stays doubtful as
   * long as nobody wrote down the range: on a low one it shows nothing of a leak.
   *
   * @param values those of the situation, worked out once for many readings
   */
  public static Optional<Reading.Judgement> judge(
      Reading reading,
      Amount amount,
      OffsetDateTime at,
      Situation situation,
      Map<String, Double> values) {
    Optional<Reading.Judgement> judged =
        reading.judge(inUnit(amount, reading.unit()), values, situation.meterAt(at));
    return isWithoutRange(amount, at, situation) && isGood(judged)
        ? Optional.of(new Reading.Judgement(ReadingVerdict.DOUBTFUL, ""))
        : judged;
  }

  /** Whether an entry shows over range and nobody wrote down on which range. */
  public static boolean isWithoutRange(Standing<ReadingEntered> line, Situation situation) {
    return isWithoutRange(line.event().amount(), line.at(), situation);
  }

  private static boolean isWithoutRange(Amount amount, OffsetDateTime at, Situation situation) {
    return amount.bound() == Amount.Bound.OVER_RANGE
        && !situation.meters().knowsRange(situation.state(), at);
  }

  /**
   * Whether an over-range entry falls short of good only because its meter ends too early: another
   * meter could show that it is good.
   *
   * @param values those of the situation, worked out once for many readings
   */
  public static boolean isShortOfRange(
      Reading reading,
      Standing<ReadingEntered> line,
      Situation situation,
      Map<String, Double> values) {
    Amount amount = inUnit(line.event().amount(), reading.unit());
    boolean open =
        amount.bound() == Amount.Bound.OVER_RANGE || amount.bound() == Amount.Bound.AT_LEAST;
    return open
        && !isGood(of(reading, line, situation, values))
        && isGood(reading.judge(Amount.overRange(reading.unit()), values));
  }

  private static boolean isGood(Optional<Reading.Judgement> judged) {
    return judged.filter(j -> j.verdict() == ReadingVerdict.GOOD).isPresent();
  }

  /** An amount in another unit. */
  static Amount inUnit(Amount amount, String unit) {
    return amount.bound() == Amount.Bound.OVER_RANGE
        ? Amount.overRange(unit)
        : new Amount(
            NumberText.convert(amount.value(), amount.unit(), unit),
            unit,
            amount.bound(),
            OptionalDouble.empty());
  }

  /** The clock of a step, where it was started. */
  public static Optional<StepClock> clock(Step step, Situation situation) {
    return step.asks()
        .clock()
        .flatMap(spec -> situation.state().clock(step.id(), spec.id()))
        .map(line -> ClockEvidence.clock(line, situation));
  }
}
