package faintwind.report.card;

import faintwind.guide.Situation;
import faintwind.message.NumberText;
import faintwind.physics.AirProperties;
import faintwind.physics.arm.PlannedArm;
import faintwind.physics.arm.Turning;
import faintwind.physics.design.Design;
import faintwind.record.Event.ReadingEntered;
import faintwind.report.figure.ArmDrawing;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the arm has to hold, at the radius that was measured or, before that, the shortest one. */
final class ArmCard {
  private static final String RADIUS = "radius";
  private static final double COUNTER_SHARE = 0.5;

  /** A radius that nobody builds is a slip of the hand: the card then keeps to the design. */
  private static final double LEAST_M = 0.1;

  private static final double MOST_M = 5;

  /** More than this share of the radius is more than a calibration bears. */
  private static final double MUCH = 0.01;

  private ArmCard() {}

  static StepCard of(Design design, Situation situation, CardWords words) {
    double fastest = Math.max(0.1, design.use().fastest_m_s());
    OptionalDouble measured = measured_m(situation);
    PlannedArm arm =
        measured.isPresent()
            ? new PlannedArm(new Turning(measured.getAsDouble(), fastest))
            : PlannedArm.forSpeed(fastest);
    double radius_mm = 1e3 * arm.tip().radius_m();
    ArmDrawing drawing =
        ArmDrawing.of(
            new ArmDrawing.Arm(radius_mm, COUNTER_SHARE * radius_mm, 1e3 * arm.clear_m()),
            words.messages());
    return new StepCard(
        words.text("card.arm"),
        List.of(drawing),
        rows(arm, design, words, measured.isPresent()),
        remarks(arm, words));
  }

  private static List<StepCard.Row> rows(
      PlannedArm arm, Design design, CardWords words, boolean measured) {
    double density = AirProperties.of(design.air()).density_kg_m3();
    List<StepCard.Row> rows = new ArrayList<>();
    rows.add(
        words.row(
            measured ? "card.arm.radius-measured" : "card.arm.radius-planned",
            words.figure(1e3 * arm.tip().radius_m(), "mm")));
    rows.add(words.row("card.arm.fastest", words.figure(arm.tip().speed_m_s(), "m/s")));
    rows.add(quantity("arm_turns_1_min", words.figure(60 * arm.tip().turns_1_s(), "1/min"), words));
    rows.add(
        new StepCard.Row(
            words.text("card.arm.slowest"),
            words.figure(
                60 * new Turning(arm.tip().radius_m(), slowest(design)).turns_1_s(), "1/min"),
            words.text("card.arm.slowest.why")));
    rows.add(quantity("arm_pull_N", words.figure(arm.pull_N(), "N"), words));
    rows.add(
        quantity("arm_holder_growth_mm", words.figure(1e3 * arm.holderGrowth_m(), "mm"), words));
    rows.add(
        quantity("arm_thread_growth_mm", words.figure(1e3 * arm.threadGrowth_m(), "mm"), words));
    rows.add(quantity("arm_sag_mm", words.figure(1e3 * arm.sag_m(), "mm"), words));
    rows.add(
        quantity("arm_counterweight_g", words.figure(1e3 * arm.counterweight_kg(), "g"), words));
    rows.add(quantity("arm_foot_kg", words.figure(arm.foot_kg(), "kg"), words));
    rows.add(quantity("arm_drag_W", words.figure(arm.drag_W(density), "W"), words));
    rows.add(
        quantity(
            "arm_driving_weight_g", words.figure(1e3 * arm.drivingWeight_kg(density), "g"), words));
    rows.add(quantity("arm_clear_mm", words.figure(1e3 * arm.clear_m(), "mm"), words));
    return rows;
  }

  private static double slowest(Design design) {
    return Math.max(0.01, design.use().slowest_m_s());
  }

  private static List<String> remarks(PlannedArm arm, CardWords words) {
    List<String> remarks = new ArrayList<>();
    double radius = arm.tip().radius_m();
    remarks.add(
        words.text("card.arm.thread", words.figure(100 * arm.threadGrowth_m() / radius, "%")));
    if (arm.holderGrowth_m() > MUCH * radius) {
      remarks.add(
          words.text("card.arm.holder", words.figure(100 * arm.holderGrowth_m() / radius, "%")));
    }
    remarks.add(words.text("card.arm.twice"));
    return remarks;
  }

  private static StepCard.Row quantity(String id, String value, CardWords words) {
    return new StepCard.Row(
        words.text("quantity." + id), value, words.text("quantity." + id + ".why"));
  }

  private static OptionalDouble measured_m(Situation situation) {
    return situation.state().standing(ReadingEntered.class).stream()
        .map(line -> line.event())
        .filter(entered -> entered.reading().equals(RADIUS))
        .filter(entered -> Double.isFinite(entered.amount().value()))
        .mapToDouble(
            entered -> NumberText.convert(entered.amount().value(), entered.amount().unit(), "m"))
        .filter(radius -> radius >= LEAST_M && radius <= MOST_M)
        .reduce((first, second) -> second);
  }
}
