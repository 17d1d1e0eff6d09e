package faintwind.report.card;

import faintwind.guide.Situation;
import faintwind.physics.arm.Turning;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event;
import faintwind.record.Event.FileAdded;
import faintwind.report.figure.ArmDrawing;
import java.util.ArrayList;
import java.util.List;

/**
 * What the arm has to hold: as planned; before that at the radius that was measured, or the
 * shortest one for the design.
 */
final class ArmCard {
  private static final double COUNTER_SHARE = 0.5;

  /** More than this share of the radius is more than a calibration bears. */
  private static final double MUCH = 0.01;

  private static final List<OutcomeId> SIZES =
      List.of(
          OutcomeId.ARM_PULL,
          OutcomeId.ARM_PULL_GRAMS,
          OutcomeId.ARM_HOLDER_GROWTH,
          OutcomeId.ARM_THREAD_GROWTH,
          OutcomeId.ARM_SAG,
          OutcomeId.ARM_COUNTERWEIGHT,
          OutcomeId.ARM_FOOT,
          OutcomeId.ARM_DRAG,
          OutcomeId.ARM_DRIVING_WEIGHT,
          OutcomeId.ARM_CLEAR);

  private ArmCard() {}

  static StepCard of(Design design, Situation situation, CardWords words) {
    double radius_mm = size(OutcomeId.ARM_RADIUS, words);
    ArmDrawing drawing =
        ArmDrawing.of(
            new ArmDrawing.Arm(
                radius_mm, COUNTER_SHARE * radius_mm, size(OutcomeId.ARM_CLEAR, words)),
            words.messages());
    return new StepCard(
        words.text("card.arm"),
        List.of(drawing),
        rows(radius_mm, design, radiusKey(situation), words),
        remarks(radius_mm, words));
  }

  private static double size(OutcomeId id, CardWords words) {
    return words.sheet().quantity(id).orElseThrow().value().nominal();
  }

  private static String radiusKey(Situation situation) {
    boolean planned =
        situation.state().standing(FileAdded.class).stream()
            .anyMatch(line -> line.event().kind() == Event.FileRole.PLAN);
    if (planned) {
      return "card.arm.radius-planned";
    }
    return situation.state().reading("set-up-arm", "radius").isPresent()
        ? "card.arm.radius-measured"
        : "card.arm.radius-least";
  }

  private static List<StepCard.Row> rows(
      double radius_mm, Design design, String radiusKey, CardWords words) {
    List<StepCard.Row> rows = new ArrayList<>();
    rows.add(words.row(radiusKey, words.figure(radius_mm, "mm")));
    rows.add(words.row(OutcomeId.ARM_FASTEST));
    rows.add(words.row(OutcomeId.ARM_TURNS));
    Turning slowest = new Turning(1e-3 * radius_mm, Math.max(0.01, design.use().slowest_m_s()));
    rows.add(
        new StepCard.Row(
            words.text("card.arm.slowest"),
            words.figure(60 * slowest.turns_1_s(), "1/min"),
            words.text("card.arm.slowest.why")));
    SIZES.forEach(id -> rows.add(words.row(id)));
    return rows;
  }

  private static List<String> remarks(double radius_mm, CardWords words) {
    List<String> remarks = new ArrayList<>();
    double thread = size(OutcomeId.ARM_THREAD_GROWTH, words) / radius_mm;
    double holder = size(OutcomeId.ARM_HOLDER_GROWTH, words) / radius_mm;
    remarks.add(words.text("card.arm.thread", words.figure(100 * thread, "%")));
    if (holder > MUCH) {
      remarks.add(words.text("card.arm.holder", words.figure(100 * holder, "%")));
    }
    remarks.add(words.text("card.arm.twice"));
    return remarks;
  }
}
