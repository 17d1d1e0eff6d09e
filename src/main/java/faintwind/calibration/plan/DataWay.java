package faintwind.calibration.plan;

import faintwind.message.Field;
import java.util.OptionalDouble;

/**
 * How data and power come off the spinning arm.
 *
 * @param kind the way
 * @param turnBudget turns that a twisting cable takes to either side of untwisted; only for {@link
 *     Kind#CABLE}
 * @param battery_s how long what rides on the arm lasts, s, where known
 */
public record DataWay(Kind kind, OptionalDouble turnBudget, OptionalDouble battery_s) {

  /** The ways. */
  public enum Kind {
    /** Logger and battery ride on the arm, balanced. */
    RIDING_LOGGER,
    /** The logger on the arm sends its rows by radio. */
    WIRELESS,
    /** A plain meter on the arm is filmed, its readings are typed from the film. */
    FILMED_METER,
    /** Rings and brushes. */
    SLIP_RINGS,
    /** A cable from the middle that twists and has to be unwound. */
    CABLE;

    /** The word on the command line and in files. */
    public String word() {
      return Field.word(this);
    }
  }

  public DataWay {
    if (turnBudget.isPresent() != (kind == Kind.CABLE)) {
      throw new IllegalArgumentException("turnBudget = " + turnBudget + " for " + kind);
    }
    if (turnBudget.isPresent() && !(turnBudget.getAsDouble() > 0)) {
      throw new IllegalArgumentException("turnBudget = " + turnBudget + ", allowed above 0");
    }
  }

  /** A way without stated limits. */
  public static DataWay of(Kind kind) {
    return new DataWay(kind, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** A cable that takes so many turns to either side. */
  public static DataWay cable(double turnBudget) {
    return new DataWay(Kind.CABLE, OptionalDouble.of(turnBudget), OptionalDouble.empty());
  }
}
