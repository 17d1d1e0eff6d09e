package faintwind.calibration.plan;

import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.FieldTexts;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a session should bring, and what it may cost.
 *
 * @param least_m_s slowest speed wanted, m/s
 * @param most_m_s fastest speed wanted, m/s
 * @param beats the beats that a person can follow
 * @param directions whether the arm may turn both ways
 * @param time time there is
 */
public record PlanWish(
    double least_m_s, double most_m_s, Beats beats, Directions directions, Time time) {
  static final Field SLOWEST = Field.number("plan.from_m_s", 0.02, 10).usually("0.1");
  static final Field FASTEST = Field.number("plan.to_m_s", 0.02, 10).usually("2.5");
  static final Field LEAST_BEATS = Field.whole("plan.least_beats", 1, 1000).usually("40");
  static final Field MOST_BEATS = Field.whole("plan.most_beats", 1, 1000).usually("120");
  static final Field BEATS_A_TURN =
      Field.whole("plan.beats_a_turn", 1, 1000).usually("1,2,4,8,12,24");
  static final Field DIRECTIONS =
      Field.word("plan.directions", Directions.values()).usually("both-ways");
  static final Field MINUTES = Field.number("plan.time_min", 10, 100_000);
  static final Field LESSONS = Field.whole("plan.lessons", 1, 100);
  static final Field LESSON_LENGTH =
      Field.number("plan.lesson_min", 15, 600).usually(Field.plain(Lesson.SCHOOL_S / 60));

  private static final List<Field> FIELDS =
      List.of(
          SLOWEST,
          FASTEST,
          LEAST_BEATS,
          MOST_BEATS,
          BEATS_A_TURN,
          DIRECTIONS,
          MINUTES,
          LESSONS,
          LESSON_LENGTH);

  /** Which way the arm may turn. */
  public enum Directions {
    /** All clockwise. */
    ONE_WAY,
    /** Clockwise and counter-clockwise by turns. */
    BOTH_WAYS
  }

  /**
   * Beats that a person can follow.
   *
   * @param least slowest comfortable beat, a minute
   * @param most quickest comfortable beat, a minute
   * @param aTurn beats a turn to choose from: the marks round the circle, or fewer
   */
  public record Beats(int least, int most, List<Integer> aTurn) {
    public Beats {
      aTurn = aTurn.stream().sorted().distinct().toList();
      if (least < 1 || most < least || aTurn.isEmpty() || aTurn.get(0) < 1) {
        throw new IllegalArgumentException(
            "least = " + least + ", most = " + most + ", aTurn = " + aTurn);
      }
    }

    /** 40 to 120 a minute; 1 to 24 marks round the circle (common practice, no source). */
    public static Beats usual() {
      return new Beats(
          Integer.parseInt(LEAST_BEATS.usual()),
          Integer.parseInt(MOST_BEATS.usual()),
          Arrays.stream(BEATS_A_TURN.usual().split(",", -1)).map(Integer::valueOf).toList());
    }
  }

  /**
   * Time there is.
   *
   * @param available_s in all, s; empty: as long as it needs
   * @param lesson where the session is split into lessons
   */
  public record Time(OptionalDouble available_s, Optional<Lesson> lesson) {
    /** No limit, not split. */
    public static Time free() {
      return new Time(OptionalDouble.empty(), Optional.empty());
    }
  }

  /**
   * One lesson: the heater is switched on beforehand, so that the difference is flat when it
   * begins.
   *
   * @param length_s its length, s
   * @param most how many there are at most
   */
  public record Lesson(double length_s, int most) {
    /** A school lesson of 45 minutes. */
    public static final double SCHOOL_S = 2700;
  }

  public PlanWish {
    SLOWEST.require(least_m_s);
    FASTEST.require(most_m_s);
    time.available_s().ifPresent(s -> MINUTES.require(s / 60));
    if (!(least_m_s > 0) || !(most_m_s > least_m_s)) {
      throw new IllegalArgumentException(
          "least_m_s = " + least_m_s + ", most_m_s = " + most_m_s + "; allowed 0 < least < most");
    }
  }

  /** The wish, of what was given for its fields; refused with everything that cannot be. */
  public static Checked<PlanWish> of(FieldTexts texts) {
    List<Problem> problems = new ArrayList<>(texts.problems(FIELDS));
    if (problems.isEmpty()) {
      problems.addAll(contradictions(texts));
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    OptionalDouble lessons = texts.optional(LESSONS);
    return Checked.ok(
        new PlanWish(
            texts.number(SLOWEST),
            texts.number(FASTEST),
            new Beats(
                (int) texts.number(LEAST_BEATS),
                (int) texts.number(MOST_BEATS),
                texts.numbers(BEATS_A_TURN).stream().map(n -> (int) n.orElseThrow()).toList()),
            texts.word(DIRECTIONS, Directions.class),
            new Time(
                texts.optional(MINUTES, 60),
                lessons.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                        new Lesson(
                            60 * texts.number(LESSON_LENGTH), (int) lessons.getAsDouble())))));
  }

  private static List<Problem> contradictions(FieldTexts texts) {
    List<Problem> problems = new ArrayList<>();
    String slowest = texts.text(SLOWEST);
    String fastest = texts.text(FASTEST);
    if (!(Double.parseDouble(fastest) > OwnChoices.NARROWEST * Double.parseDouble(slowest))) {
      Where where = texts.where(FASTEST);
      problems.add(Problem.error("plan.narrow", where, fastest, slowest));
    }
    String least = texts.text(LEAST_BEATS);
    String most = texts.text(MOST_BEATS);
    if (Double.parseDouble(most) < Double.parseDouble(least)) {
      Where where = texts.where(MOST_BEATS);
      problems.add(Problem.error("plan.beats-reversed", where, most, least));
    }
    return problems;
  }
}
