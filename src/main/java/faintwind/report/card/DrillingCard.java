package faintwind.report.card;

import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.Drilling;
import faintwind.physics.design.HeaterDesign;
import faintwind.physics.sheet.OutcomeId;
import faintwind.report.figure.BallDrawing;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The drilling card: everything one needs to know at the drill. */
final class DrillingCard {
  private DrillingCard() {}

  static StepCard of(Design design, CardWords words) {
    BallDesign ball = design.ball();
    List<StepCard.Row> rows = new ArrayList<>();
    double diameter_mm = 1e3 * ball.diameter_m().nominal();
    rows.add(
        words.row(
            "card.drilling.ball",
            words.text(
                "card.drilling.ball-is",
                ball.metal().label().name(),
                words.figure(diameter_mm, "mm"))));
    String bore = words.figure(1e3 * ball.bore().diameter_m(), "mm");
    rows.add(
        new StepCard.Row(
            words.text("card.drilling.flat"),
            words.text("card.drilling.flat-is", bore, words.value(OutcomeId.FLAT_DEPTH)),
            words.text("card.drilling.flat-why")));
    rows.add(words.row("card.drilling.drill", bore));
    rows.add(speed(ball, words));
    rows.add(words.row(OutcomeId.PECK_DEPTH));
    rows.add(hole("card.drilling.heated", ball, ball.bore().heatedDepth_m(), words));
    rows.add(hole("card.drilling.reference", ball, ball.bore().referenceDepth_m(), words));
    rows.add(words.row(OutcomeId.BALL_MASS));
    rows.add(words.row(OutcomeId.HEATED_BALL_MASS));
    rows.add(words.row(OutcomeId.REFERENCE_BALL_MASS));
    return new StepCard(
        words.text("card.drilling"),
        List.of(heated(design, words), reference(design, words)),
        rows,
        List.of(
            words.text("card.drilling.slower"),
            words.text("card.drilling.stop"),
            words.text("card.drilling.mass", words.figure(1e3 * ball.perMillimetre_kg(), "g"))));
  }

  private static StepCard.Row speed(BallDesign ball, CardWords words) {
    String low = words.figure(60 * ball.metal().cutting_m_s().low(), "m/min");
    String high = words.figure(60 * ball.metal().cutting_m_s().high(), "m/min");
    return new StepCard.Row(
        words.text("card.drilling.speed"),
        words.value(OutcomeId.DRILL_SPEED),
        words.text("card.drilling.speed-why", low, high, ball.metal().label().name()));
  }

  private static StepCard.Row hole(
      String key, BallDesign ball, OptionalDouble depth_m, CardWords words) {
    Drilling drilling = Drilling.of(ball, depth_m);
    String depth = words.figure(1e3 * drilling.fromFlat_m(), "mm");
    String is =
        depth_m.isEmpty()
            ? words.text("card.drilling.through", drilling.pecks())
            : words.text("card.drilling.blind", depth, drilling.pecks());
    return new StepCard.Row(words.text(key), is, words.text("card.drilling.travel-why"));
  }

  private static BallDrawing heated(Design design, CardWords words) {
    HeaterDesign heater = design.heater();
    return drawing(
        design,
        design.ball().bore().heatedDepth_m(),
        1e3 * heater.style().body().diameter_m().nominal(),
        1e3 * heater.style().body().length_m(),
        words);
  }

  private static BallDrawing reference(Design design, CardWords words) {
    return drawing(design, design.ball().bore().referenceDepth_m(), 0, 0, words);
  }

  private static BallDrawing drawing(
      Design design, OptionalDouble depth_m, double body_mm, double length_mm, CardWords words) {
    BallDesign ball = design.ball();
    return BallDrawing.of(
        new BallDrawing.Ball(
            1e3 * ball.diameter_m().nominal(),
            1e3 * ball.bore().diameter_m(),
            1e3 * ball.length_m(depth_m),
            body_mm,
            length_mm),
        words.messages());
  }
}
