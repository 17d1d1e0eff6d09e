package faintwind.report.card;

import faintwind.guide.Situation;
import faintwind.message.NumberText;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.Drilling;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event.ReadingEntered;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Masses to expect, and what a wrong one means. */
final class WeighingCard {
  private static final double CLOSE_M = 0.5e-3; // as the bands of the readings
  private static final double WIDER_M = 0.1e-3; // step to which drills are bought

  private WeighingCard() {}

  static StepCard of(Design design, Situation situation, CardWords words) {
    BallDesign ball = design.ball();
    double wider_kg =
        ball.metal().density_kg_m3().nominal()
            * Math.PI
            / 4
            * (Math.pow(ball.bore().diameter_m() + WIDER_M, 2)
                - Math.pow(ball.bore().diameter_m(), 2))
            * ball.diameter_m().nominal();
    List<StepCard.Row> rows = new ArrayList<>();
    rows.add(words.row(OutcomeId.BALL_MASS));
    rows.add(words.row(OutcomeId.BLANK_MASS_AGREEMENT));
    rows.add(words.row(OutcomeId.HEATED_BALL_MASS));
    rows.add(words.row(OutcomeId.REFERENCE_BALL_MASS));
    rows.add(words.row(OutcomeId.BORE_MASS_PER_MM));
    rows.add(words.explained("card.weighing.wider", words.figure(1e3 * wider_kg, "g")));
    List<String> remarks = new ArrayList<>();
    meaning("heated-mass", ball, ball.bore().heatedDepth_m(), situation, words)
        .ifPresent(remarks::add);
    meaning("reference-mass", ball, ball.bore().referenceDepth_m(), situation, words)
        .ifPresent(remarks::add);
    remarks.add(words.text("card.weighing.heavy"));
    remarks.add(words.text("card.weighing.light"));
    remarks.add(words.text("card.weighing.far"));
    return new StepCard(words.text("card.weighing"), List.of(), rows, remarks);
  }

  private static Optional<String> meaning(
      String reading,
      BallDesign ball,
      OptionalDouble depth_m,
      Situation situation,
      CardWords words) {
    return situation.state().standing(ReadingEntered.class).stream()
        .map(line -> line.event())
        .filter(entered -> entered.reading().equals(reading))
        .reduce((first, second) -> second)
        .filter(entered -> Double.isFinite(entered.amount().value()))
        .map(
            entered -> {
              double kg =
                  NumberText.convert(entered.amount().value(), entered.amount().unit(), "kg");
              String ball_is = words.text("card.weighing." + reading);
              return ball_is + ": " + says(ball, depth_m, kg, words);
            });
  }

  private static String says(
      BallDesign ball, OptionalDouble depth_m, double measured_kg, CardWords words) {
    double extra_m = Drilling.extraDepth_m(ball, depth_m, measured_kg);
    double off_g = 1e3 * (measured_kg - ball.drilled_kg(depth_m).nominal());
    // to the hundredth of a gram that the scale shows
    String off = words.figure(Math.round(100 * Math.abs(off_g)) / 100.0, "g");
    if (Math.abs(extra_m) <= CLOSE_M) {
      return words.text("card.weighing.close", off);
    }
    String depth = words.figure(1e3 * Math.abs(extra_m), "mm");
    OptionalDouble wide_m = Drilling.asDiameter_m(ball, depth_m, measured_kg);
    String wide =
        wide_m.isPresent()
            ? words.figure(1e3 * wide_m.getAsDouble(), "mm")
            : words.text("card.weighing.none");
    String key = extra_m > 0 ? "card.weighing.too-light" : "card.weighing.too-heavy";
    return words.text(depth_m.isPresent() ? key : key + "-through", off, depth, wide);
  }
}
