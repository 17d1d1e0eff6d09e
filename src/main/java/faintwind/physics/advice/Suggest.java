package faintwind.physics.advice;

import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.HeatSheet;
import faintwind.physics.sheet.OutcomeId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Two or three designs for a wish: one that keeps all wishes in balance, one that reads the slowest
 * air, one that answers quickest. All combinations of metals, ball sizes, surfaces, thermocouples
 * and powers that are safe to touch and go together are tried at their nominals, the smallest speed
 * at the pessimistic end of its range; the ranking is a judgement of this program.
 */
public final class Suggest {
  private final Wish wish;
  private final List<Trial> trials;

  private Suggest(Wish wish, List<Trial> trials) {
    this.wish = wish;
    this.trials = trials;
  }

  /**
   * The designs, the balanced one first; empty where nothing that is safe to touch can be made with
   * what is on hand.
   *
   * @param wish what is wanted
   * @param catalogue the parts to choose from
   */
  public static List<Suggestion> designs(Wish wish, Catalogue catalogue) {
    return new Suggest(wish, Trials.of(wish, catalogue)).best();
  }

  private List<Suggestion> best() {
    Map<Trial, List<String>> chosen = new LinkedHashMap<>();
    choose(chosen, "suggest.balanced", Comparator.comparingDouble(this::shortfall));
    choose(
        chosen,
        "suggest.slow-end",
        Comparator.comparingDouble(t -> t.smallest_m_s() * hiding(t) + 1e-6 * t.tau_s()));
    choose(chosen, "suggest.quick", Comparator.comparingDouble(this::slowness));
    return chosen.entrySet().stream().map(e -> suggestion(e.getKey(), e.getValue())).toList();
  }

  private void choose(Map<Trial, List<String>> chosen, String reason, Comparator<Trial> order) {
    trials.stream()
        .min(order)
        .ifPresent(t -> chosen.computeIfAbsent(t, x -> new ArrayList<>()).add(reason));
  }

  /** Its numbers are those of its sheet, as the table beside it shows them. */
  private Suggestion suggestion(Trial trial, List<String> reasons) {
    DesignSheet sheet = DesignSheet.of(trial.design());
    List<Problem> all = new ArrayList<>();
    for (String reason : reasons) {
      all.add(
          Problem.warning(
              reason,
              Where.NOWHERE,
              digits(sheet, OutcomeId.SMALLEST_SPEED),
              digits(sheet, OutcomeId.TIME_CONSTANT_AT_1),
              digits(sheet, OutcomeId.STILL_DELTA)));
    }
    if (trial.smallest_m_s() > wish.use().slowest_m_s()) {
      all.add(
          missed(
              "suggest.misses-slow-end",
              Numerals.digits(trial.smallest_m_s()),
              Numerals.digits(wish.use().slowest_m_s())));
    }
    if (trial.tau_s() > wish.response_s()) {
      all.add(
          missed(
              "suggest.misses-response",
              Numerals.digits(trial.tau_s()),
              Numerals.digits(wish.response_s())));
    }
    if (trial.leads() > HeatSheet.MOST_LEAD_SHARE) {
      all.add(missed("suggest.leads", Numerals.digits(100 * trial.leads()), ""));
    }
    return new Suggestion(trial.design(), sheet, all);
  }

  private static String digits(DesignSheet sheet, OutcomeId id) {
    return sheet.quantity(id).map(q -> Numerals.digits(q.value().nominal())).orElse("–");
  }

  private static Problem missed(String id, String found, String wanted) {
    return Problem.warning(id, Where.NOWHERE, found, wanted);
  }

  /** How far a trial is from the wish: each wish missed counts by its ratio, each kept a little. */
  private double shortfall(Trial t) {
    double slow = Math.log(t.smallest_m_s() / wish.use().slowest_m_s());
    double late = Math.log(t.tau_s() / wish.response_s());
    return 3 * Math.max(0, slow) + Math.max(0, late) + 0.15 * (slow + late) + Math.log(hiding(t));
  }

  /** Time constant, longer by what the slow end misses. */
  private double slowness(Trial t) {
    double missed = Math.max(1, t.smallest_m_s() / (1.5 * wish.use().slowest_m_s()));
    return t.tau_s() * missed * missed * hiding(t);
  }

  /**
   * What hides a share of the speed makes a design that much worse, five times over; what the leads
   * take beyond a fifth of the power three times over.
   */
  private static double hiding(Trial t) {
    return 1 + 5 * t.hidden() + 3 * Math.max(0, t.leads() - HeatSheet.MOST_LEAD_SHARE);
  }
}
