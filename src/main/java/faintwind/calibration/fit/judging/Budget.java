package faintwind.calibration.fit.judging;

import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FormAllowance;
import faintwind.calibration.response.AirPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Where the uncertainty of a speed comes from. With every prior a standard normal one, the
 * covariance C of a fit is the sum over all that went in; the share of one prior r in the variance
 * of a speed with gradient g is (gᵀ C e_r)². What is left is the recordings' own. What the carried
 * <<<<<<< HEAD air was given beyond the curvature (see {@link CarriedSharePosterior}) is its own.
 * ======= air was given beyond the curvature (see {@link CarriedSharePosterior}) is its own; where
 * it was given less, the recordings tell more of it than their curvature, and every prior has a
 * lesser share. >>>>>>> rooms
 */
final class Budget {
  private final FitResult fit;
  private final double[][] unit;
  private final double[] slopes;
  private final double[] beyond;

  Budget(FitResult fit) {
    this.fit = fit;
    this.unit = fit.solution().optimum().lesserCovariance();
    this.beyond = fit.solution().optimum().beyondCurvature();
    this.slopes = fit.setup().unknowns().slopes(fit.solution().optimum().point());
  }

  /** The shares at one speed, largest first; those below a thousandth of the largest fall away. */
  List<BudgetShare> at(double speed_m_s) {
    double[] gradient =
        fit.formula()
            .steadySpeedGradient(
                speed_m_s, fit.signal().supply_V(), AirPoint.of(fit.setting().referenceAir()));
    double[] through = new double[unit.length];
    double total = 0;
    double more = 0;
    for (int i = 0; i < unit.length; i++) {
      for (int j = 0; j < gradient.length; j++) {
        through[i] += unit[i][j] * gradient[j] * slopes[j];
      }
    }
    for (int j = 0; j < gradient.length; j++) {
      total += gradient[j] * slopes[j] * through[j];
      more += gradient[j] * slopes[j] * beyond[j];
    }
    int losses = fit.setup().layout().losses();
    double radius = of(through, 0, name -> name.startsWith("radius "));
    double runs = of(through, 0, name -> name.startsWith("speed "));
    double carried = of(through, 0, name -> name.startsWith("carried_"));
    double delays = of(through, 0, Budget::isTiming);
    double direction = of(through, 0, name -> name.equals("asymmetry"));
    double draught = of(through, 0, name -> name.startsWith("draught"));
    double published = 0;
    for (int i = 0; i < losses; i++) {
      published += through[i] * through[i];
    }
    double chain = of(through, losses, name -> name.equals("offset") || name.contains("slope"));
    double known = radius + runs + carried + delays + direction + draught + published + chain;
    List<BudgetShare> shares = new ArrayList<>();
    add(shares, "budget.radius", radius);
    add(shares, "budget.runs", runs);
    add(
        shares,
        "budget.carried",
        carried + more * more + allowance(gradient, FormAllowance::carried));
    add(shares, "budget.delays", delays);
    add(shares, "budget.direction", direction);
    add(shares, "budget.draught", draught);
    add(shares, "budget.published", published);
    add(shares, "budget.chain", chain);
    add(shares, "budget.recordings", Math.max(0, total - known));
    add(shares, "budget.form", allowance(gradient, FormAllowance::form));
    shares.sort(Comparator.comparingDouble(BudgetShare::u_m_s).reversed());
    double least = shares.get(0).u_m_s() * 0.03;
    return shares.stream().filter(s -> s.u_m_s() >= least).toList();
  }

  /** One share at one speed; 0 where it falls away. */
  double of(String source, double speed_m_s) {
    return at(speed_m_s).stream()
        .filter(s -> s.source().equals(source))
        .mapToDouble(BudgetShare::u_m_s)
        .findFirst()
        .orElse(0);
  }

  private double of(double[] through, int from, Predicate<String> which) {
    double sum = 0;
    for (int i = from; i < through.length; i++) {
      if (which.test(fit.setup().unknowns().get(i).name())) {
        sum += through[i] * through[i];
      }
    }
    return sum;
  }

  private static boolean isTiming(String name) {
    return name.contains("_delay ")
        || name.startsWith("run_")
        || name.equals("counted_from_rest")
        || name.equals("clock");
  }

  private double allowance(double[] gradient, Allowance allowance) {
    double sum = 0;
    double[] values = fit.values();
    for (int i = 0; i < fit.setup().layout().losses(); i++) {
      sum += gradient[i] * gradient[i] * allowance.variance(fit.setup(), values, i);
    }
    return sum;
  }

  private interface Allowance {
    double variance(Setup setup, double[] values, int index);
  }

  private static void add(List<BudgetShare> shares, String source, double variance) {
    shares.add(new BudgetShare(source, Math.sqrt(variance)));
  }
}
