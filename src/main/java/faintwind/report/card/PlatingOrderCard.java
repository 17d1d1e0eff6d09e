package faintwind.report.card;

import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.part.Metal;
import faintwind.physics.plating.Deposit;
import faintwind.physics.plating.PlatingPlan;
import faintwind.physics.sheet.OutcomeId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a licensed plater needs to know to do the job without asking back. */
final class PlatingOrderCard {
  private PlatingOrderCard() {}

  static StepCard of(Design design, CardWords words) {
    BallDesign ball = design.ball();
    double d = ball.diameter_m().nominal();
    double area_m2 = Math.PI * d * d;
    List<StepCard.Row> rows = new ArrayList<>();
    rows.add(words.row("card.order.pieces", words.text("card.order.pieces-are")));
    rows.add(words.row("card.order.metal", ball.metal().label().name()));
    rows.add(words.row("card.order.diameter", words.value(OutcomeId.BALL_DIAMETER)));
    rows.add(
        words.row(
            "card.order.area",
            words.text(
                "card.order.area-is",
                words.figure(1e4 * area_m2, "cm²"),
                words.figure(2e4 * area_m2, "cm²"))));
    rows.add(words.row("card.order.first", words.text("card.order.first." + first(ball.metal()))));
    rows.add(words.row("card.order.nickel", nickel(ball.plating(), words)));
    rows.add(words.row("card.order.gold", gold(ball.plating(), area_m2, words)));
    rows.add(
        words.row(
            "card.order.masking",
            words.text(
                "card.order.masking-is", words.figure(1e3 * ball.bore().diameter_m(), "mm"))));
    rows.add(words.row("card.order.finish", words.text("card.order.finish-is")));
    rows.add(words.row("card.order.state", words.text("card.order.state-is")));
    return new StepCard(
        words.text("card.order"),
        List.of(),
        rows,
        List.of(words.text("card.order.sources"), words.text("card.order.blank")));
  }

  private static String first(Metal metal) {
    return metal.firstBath().name().toLowerCase(Locale.ROOT);
  }

  private static String nickel(Optional<PlatingPlan> plan, CardWords words) {
    return plan.map(PlatingPlan::nickel)
        .filter(layer -> layer.thickness_m() > 0)
        .map(layer -> words.figure(1e6 * layer.thickness_m(), "µm"))
        .orElseGet(() -> words.range(3, 5, "µm"));
  }

  private static String gold(Optional<PlatingPlan> plan, double area_m2, CardWords words) {
    double thickness_m =
        plan.map(PlatingPlan::gold).map(PlatingPlan.Layer::thickness_m).orElse(0.5e-6);
    if (thickness_m <= 0) {
      return words.text("card.order.no-gold");
    }
    double charge_C = Deposit.GOLD.charge_C(thickness_m, 1, 2 * area_m2);
    double milligrams = 1e6 * Deposit.GOLD.mass_kg(charge_C, 1);
    return words.text(
        "card.order.gold-is",
        words.figure(1e6 * thickness_m, "µm"),
        words.figure(milligrams, "mg"));
  }
}
