package faintwind.files.air;

import faintwind.calibration.flow.InTheWay;
import faintwind.calibration.flow.Opening;
import faintwind.calibration.flow.Opening.Shape;
import faintwind.calibration.flow.PointRule;
import faintwind.calibration.flow.Traverse;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An opening, its points and what is put into it, from what a person said under the keys of the
 * points' table or as options of the command line.
 *
 * @param traverse the opening with its points
 * @param instrument how much room it takes
 * @param u_position_m standard uncertainty of a point's distance from the wall
 */
public record FlowSetup(Traverse traverse, InTheWay instrument, double u_position_m) {
  /** What the opening looks like. */
  public static final Field SHAPE = Field.word("opening.shape", Shape.values()).needed();

  /** How the points are laid. */
  public static final Field RULE =
      Field.word("opening.rule", PointRule.values()).usually("log-tchebycheff");

  /** Points a radius, lines each way, or points along a slot. */
  public static final Field COUNT = Field.whole("opening.count", 2, 12);

  /** Diameter of the balls. */
  public static final Field BALL = Field.number("opening.ball_mm", 1, 60).needed();

  /** Area of balls and holder, seen along the flow. */
  public static final Field FRONT = Field.number("opening.front_cm2", 0.01, 500);

  /** How well a point's depth is met. */
  public static final Field U_POSITION = Field.number("opening.u_position_mm", 0, 50).usually("2");

  /** All keys, in the order of the table. */
  public static final List<Field> FIELDS =
      List.of(
          SHAPE,
          Opening.WIDTH.needed(),
          Opening.HEIGHT,
          Opening.U_SIZE.usually("1"),
          RULE,
          COUNT,
          BALL,
          FRONT,
          U_POSITION);

  /** Judges what was said by key, such as {@code width_mm}; refused with all that is wrong. */
  public static Checked<FlowSetup> of(Map<String, String> said, Where where) {
    List<Problem> problems = new ArrayList<>();
    for (Field field : FIELDS) {
      String text = said.getOrDefault(field.key(), "");
      field.trouble(text, where.atColumn(field.key())).ifPresent(problems::add);
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    Shape shape = Shape.named(said.getOrDefault(SHAPE.key(), "")).orElseThrow();
    if (shape != Shape.ROUND && said(said, Opening.HEIGHT).isEmpty()) {
      Where there = where.atColumn(Opening.HEIGHT.key());
      return Checked.refused(Problem.error("field.missing", there, "", Opening.HEIGHT.nameKey()));
    }
    InTheWay instrument = instrument(said);
    double u_position_m = number(said, U_POSITION, 2) / 1000;
    return traverse(said, opening(said, shape), where)
        .then(
            traverse ->
                instrument
                    .suits(traverse.opening(), where)
                    .map(suited -> new FlowSetup(traverse, instrument, u_position_m)));
  }

  private static Opening opening(Map<String, String> said, Shape shape) {
    double width_m = number(said, Opening.WIDTH, 0) / 1000;
    double height_m = shape == Shape.ROUND ? width_m : number(said, Opening.HEIGHT, 0) / 1000;
    return new Opening(shape, width_m, height_m, number(said, Opening.U_SIZE, 1) / 1000);
  }

  private static Checked<Traverse> traverse(
      Map<String, String> said, Opening opening, Where where) {
    String word = said(said, RULE).orElse(RULE.usual());
    boolean equal = Field.word(PointRule.EQUAL_AREAS).equals(word);
    PointRule rule = equal ? PointRule.EQUAL_AREAS : PointRule.LOG_TCHEBYCHEFF;
    int least = rule.fewest(opening.shape());
    int most = rule.most(opening.shape());
    int count = (int) number(said, COUNT, opening.shape() == Shape.ROUND ? 4 : 5);
    return count < least || count > most
        ? Checked.refused(
            Problem.error(
                "flow.count-outside",
                where.atColumn(COUNT.key()),
                String.valueOf(count),
                String.valueOf(least),
                String.valueOf(most)))
        : Checked.ok(new Traverse(opening, rule, count));
  }

  private static InTheWay instrument(Map<String, String> said) {
    InTheWay balls = InTheWay.balls(number(said, BALL, 0) / 1000);
    return said(said, FRONT)
        .map(text -> new InTheWay(balls.ball_m(), Double.parseDouble(text.strip()) / 1e4))
        .orElse(balls);
  }

  private static Optional<String> said(Map<String, String> said, Field field) {
    return Optional.ofNullable(said.get(field.key())).filter(text -> !text.isBlank());
  }

  private static double number(Map<String, String> said, Field field, double usual) {
    return said(said, field).map(text -> Double.parseDouble(text.strip())).orElse(usual);
  }
}
