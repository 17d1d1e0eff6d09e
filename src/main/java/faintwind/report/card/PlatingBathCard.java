package faintwind.report.card;

import faintwind.physics.design.Design;
import faintwind.physics.plating.Deposit;
import faintwind.physics.plating.Hydrogen;
import faintwind.physics.plating.PlatingBath;
import faintwind.physics.plating.PlatingPlan;
import faintwind.physics.plating.PlatingPlan.Layer;
import java.util.ArrayList;
import java.util.List;

/** Current, time and charge of both layers on one ball, hydrogen of both balls. */
final class PlatingBathCard {
  private PlatingBathCard() {}

  static StepCard of(Design design, CardWords words) {
    PlatingPlan plan = design.ball().plating().orElse(PlatingPlan.USUAL);
    double d = design.ball().diameter_m().nominal();
    double area_m2 = Math.PI * d * d;
    List<StepCard.Row> rows = new ArrayList<>();
    rows.add(words.row("card.bath.area", words.figure(1e4 * area_m2, "cm²")));
    double charge_C = layer("nickel", Deposit.NICKEL, plan.nickel(), area_m2, rows, words);
    charge_C += layer("gold", Deposit.GOLD, plan.gold(), area_m2, rows, words);
    double hydrogen_m3 =
        Hydrogen.volume_m3(
            2 * charge_C, 0, design.air().temperature_K(), design.air().pressure_Pa());
    rows.add(words.explained("card.bath.hydrogen", words.figure(1e6 * hydrogen_m3, "mL")));
    double of_pct = 100 * hydrogen_m3 / plan.room_m3() / Hydrogen.FLAMMABLE_SHARE;
    rows.add(
        words.explained(
            "card.bath.room",
            words.text(
                "card.bath.room-is",
                words.figure(of_pct, "%"),
                words.figure(plan.room_m3(), "m³"))));
    String source = design.ball().plating().isPresent() ? "card.bath.design" : "card.bath.usual";
    return new StepCard(
        words.text("card.bath"),
        List.of(),
        rows,
        List.of(words.text(source), words.text("card.bath.tolerance")));
  }

  private static double layer(
      String metal,
      Deposit deposit,
      Layer layer,
      double area_m2,
      List<StepCard.Row> rows,
      CardWords words) {
    if (layer.thickness_m() <= 0) {
      return 0;
    }
    PlatingBath bath = new PlatingBath(deposit, area_m2, layer.current_A_m2(), 1);
    double charge_C = bath.charge_C(layer.thickness_m());
    String key = "card.bath." + metal;
    rows.add(
        words.explained(
            key,
            words.text(
                "card.bath.layer",
                words.figure(1e6 * layer.thickness_m(), "µm"),
                words.figure(layer.current_A_m2() / 100, "A/dm²"),
                words.figure(1e3 * bath.current_A(), "mA"))));
    rows.add(
        words.row(
            key + "-time",
            words.text(
                "card.bath.time-is",
                words.figure(bath.time_s(layer.thickness_m()) / 60, "min"),
                words.figure(charge_C, "C"))));
    return charge_C;
  }
}
