package faintwind.job.turntable;

import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanChoice;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.Promise;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A plan in lines of text: both forms side by side, then the steps of one. */
public final class PlanText {
  private final Messages words;

  public PlanText(Messages words) {
    this.words = words;
  }

  /** The lines. */
  public List<String> lines(PlanChoice choice, Plan.Form form) {
    List<String> lines = new ArrayList<>();
    lines.add(sum(choice.staircase()));
    choice.separate().ifPresent(separate -> lines.add(sum(separate)));
    Plan plan = choice.of(form).orElse(choice.staircase());
    lines.add("");
    lines.add(words.text("plan.steps.head"));
    plan.steps().forEach(step -> lines.add(step(step)));
    lines.add("");
    lines.add(words.text("plan.speeds.head"));
    for (Promise.AtSpeed at : plan.promise().speeds()) {
      lines.add(String.format(Locale.ROOT, "%9.3f  %8.2f", at.speed_m_s(), 100 * at.u()));
    }
    lines.add("");
    lines.add(words.text("plan.budget.head"));
    plan.promise().budget().forEach(share -> lines.add(share(share)));
    lines.add(words.text("plan.digits"));
    return lines;
  }

  /** Such as "Staircase: 7 speeds, 2:15 h, expected standard uncertainty 1.0 % over the range". */
  public String sum(Plan plan) {
    return words.text(
        plan.form() == Plan.Form.STAIRCASE ? "plan.sum.staircase" : "plan.sum.separate",
        plan.spins().size(),
        Numerals.clock(plan.total_s()),
        Numerals.places(100 * plan.promise().mean(), 1),
        plan.lessons());
  }

  private String step(PlannedStep step) {
    String what = words.text("plan.step." + step.kind().name().toLowerCase(Locale.ROOT));
    String line =
        String.format(
            Locale.ROOT,
            "%3d  %8s  %8s  %-24s",
            step.lesson(),
            Numerals.clock(step.start_s()),
            Numerals.clock(step.duration_s()),
            what);
    return (line + step.spin().map(this::spin).orElse("")).stripTrailing();
  }

  private String spin(PlannedSpin spin) {
    return words.text(
        "plan.spin",
        Numerals.places(spin.speed_m_s(), 3),
        Numerals.places(1000 * spin.radius_m().value(), 0),
        String.valueOf(spin.beat().perMinute()),
        spin.beat().aTurn(),
        spin.turns(),
        spin.direction().word());
  }

  private String share(BudgetShare share) {
    return String.format(
        Locale.ROOT, "%8.2f  %s", 100 * share.u_m_s(), words.text("plan.budget." + share.source()));
  }
}
